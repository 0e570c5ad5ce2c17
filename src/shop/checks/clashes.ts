import { boxPairs, roomsMeet, type Room3 } from "../../geometry/boxPairs";
import { nearestSpans, stretchOf, type NearestPlace, type Stretch } from "../../geometry/nearestSpans";
import { pathSpans } from "../../geometry/span";
import { along, norm, subtract, type Vec3 } from "../../geometry/vector";
import { remember } from "../../memory/remember";
import { rememberPairs } from "../../memory/rememberPairs";
import { formatLength } from "../../units/length";
import { showInches } from "../../units/show";
import type { Finding } from "../code/finding";
import { builtRows, type Job } from "../job/job";
import type { BuiltRun } from "../run/builtRun";
import { placedPulls } from "../run/placed";

/** Conduits that touch do not clash: nearer than touching by less than this is not told [in]. A sixty-fourth, our choice. */
const TOUCHING = 1 / 64;
/** Ends that meet, at a box or at each other, are left out for so many diameters along both. Our choice. */
const AT_A_BOX = 2;
/** Most clashes of a job that are told. */
export const MOST_CLASHES = 500;
/** A slanting stretch is looked at in rooms that reach no farther across than this [in], but in no more than so many. */
const [ROOM, MOST_ROOMS] = [24, 50];

/** Two runs that take the same place. */
export interface Clash {
  readonly one: BuiltRun;
  readonly other: BuiltRun;
  /** How far along each run from its datum end [in]. */
  readonly alongOne: number;
  readonly alongOther: number;
  /** Center to center, and what both conduits need [in]. */
  readonly apart: number;
  readonly needed: number;
  /** East, north and up of the job's zero [in]. */
  readonly point: Vec3;
}

/** A run where it stands: the stretches of its centerline, how far along the run each begins, and the rooms they take. */
interface Standing {
  readonly stretches: readonly (Stretch | undefined)[];
  readonly from: readonly number[];
  /** Ends of its pulls, the stretch there, and whether that begins or ends there. */
  readonly ends: readonly { readonly point: Vec3; readonly stretch: number; readonly isStart: boolean }[];
  readonly rooms: readonly Room3[];
  readonly radius: number;
}

const standing: (built: BuiltRun) => Standing = remember((built) => {
  const stretches: Stretch[] = [];
  const from: number[] = [];
  const ends: { point: Vec3; stretch: number; isStart: boolean }[] = [];
  let reached = 0;
  for (const path of placedPulls(built)) {
    ends.push({ point: path.points[0]!, stretch: stretches.length, isStart: true });
    for (const span of pathSpans(path)) {
      const stretch = stretchOf(span);
      if (stretch) {
        stretches.push(stretch);
        from.push(reached);
      }
      reached += span.length;
    }
    ends.push({ point: path.points.at(-1)!, stretch: stretches.length - 1, isStart: false });
  }
  const radius = built.shoe.outsideDiameter / 2;
  return { stretches, from, ends, rooms: stretches.flatMap((stretch) => roomsOf(stretch, radius)), radius };
});

/** The rooms around a stretch and the conduit on it: a long slanting one has several, which hold less air than one. */
function roomsOf({ ends: [a, b], bulge }: Stretch, radius: number): Room3[] {
  const sides = [0, 1, 2].map((axis) => Math.abs(b[axis as 0] - a[axis as 0])).sort((x, y) => x - y);
  const count = Math.min(MOST_ROOMS, Math.max(1, Math.ceil(sides[1]! / ROOM)));
  const at = (part: number): Vec3 => along(a, subtract(b, a), part / count);
  return Array.from({ length: count }, (_, part): Room3 => {
    const [from, to] = [at(part), at(part + 1)];
    const edge = (pick: (x: number, y: number) => number, by: number): Vec3 => [
      pick(from[0], to[0]) + by,
      pick(from[1], to[1]) + by,
      pick(from[2], to[2]) + by,
    ];
    return { low: edge(Math.min, -radius - bulge), high: edge(Math.max, radius + bulge) };
  });
}

function clashOf(one: BuiltRun, other: BuiltRun): Clash | undefined {
  const [a, b] = [standing(one), standing(other)];
  if (!a.rooms.some((room) => b.rooms.some((beside) => roomsMeet(room, beside)))) return undefined;
  const needed = a.radius + b.radius;
  const [first, second] = clearOfCommonEnds(a, b, needed);
  const nearest: NearestPlace | undefined = nearestSpans(first, second, needed - TOUCHING);
  if (!nearest) return undefined;
  const alongRun = ({ from }: Standing, place: NearestPlace["first"]) => from[place.stretch]! + place.along;
  return {
    ...{ one, other, needed, apart: nearest.apart, point: nearest.point },
    ...{ alongOne: alongRun(a, nearest.first), alongOther: alongRun(b, nearest.second) },
  };
}

type Stretches = (Stretch | undefined)[];

/** The stretches of two runs without what lies at ends that meet. */
function clearOfCommonEnds(a: Standing, b: Standing, needed: number): [Stretches, Stretches] {
  const [first, second] = [[...a.stretches], [...b.stretches]];
  const cut = (stretches: Stretches, { stretch, isStart }: Standing["ends"][number]) => {
    const whole = stretches[stretch];
    const off = AT_A_BOX * needed;
    if (!whole) return;
    const { span, from, to } = whole;
    stretches[stretch] = isStart
      ? stretchOf(span, Math.max(from, off), to)
      : stretchOf(span, from, Math.min(to, span.length - off));
  };
  for (const end of a.ends) {
    for (const beside of b.ends) {
      if (norm(subtract(end.point, beside.point)) >= needed) continue;
      cut(first, end);
      cut(second, beside);
    }
  }
  return [first, second];
}

const pairsOf = rememberPairs<BuiltRun, Clash>({
  compare: clashOf,
  candidates: (runs) => boxPairs(runs.map((run) => standing(run).rooms)),
  most: MOST_CLASHES,
});

/** The runs of a job that say where they begin. */
export const placedRuns = (job: Job): BuiltRun[] =>
  builtRows(job).flatMap(({ built }) => (built.run.start ? [built] : []));

/**
 * Runs that come nearer to each other than their conduits are thick, each two of them where they are nearest. Only runs
 * that say under Start where they begin are compared. Of a run with a Quantity the one that stands there.
 */
export function clashesOf(job: Job): { clashes: readonly Clash[]; isAll: boolean } {
  const { pairs, isAll } = pairsOf(placedRuns(job));
  return { clashes: pairs.map(({ found }) => found), isAll };
}

/** The clashes of a job as findings. */
export function clashFindings(job: Job): Finding[] {
  const { clashes, isAll } = clashesOf(job);
  return [...clashes.map(finding), ...(isAll ? [] : [tooMany])];
}

const finding = ({ one, other, alongOne, alongOther, apart, needed, point }: Clash): Finding => ({
  run: one.run.name,
  weight: "stop",
  rule: "two runs must not take the same place",
  finding:
    `${formatLength(alongOne)} along it, at ${point.map((value) => showInches(value, 2)).join(", ")} east, north and up, it comes within ` +
    `${showInches(apart, 2)} of ${other.run.name} (${formatLength(alongOther)} along that), center to center; the two conduits need ` +
    `${showInches(needed, 2)}: ${showInches(needed - apart, 2)} too near.`,
  fix: "Move one of them: its legs, or its Start.",
});

const tooMany: Finding = {
  run: "Runs",
  weight: "stop",
  rule: "two runs must not take the same place",
  finding: `More than ${MOST_CLASHES} pairs of runs take the same place; ${MOST_CLASHES} are named.`,
  fix: "See whether the Starts are in the same unit and from the same zero.",
};
