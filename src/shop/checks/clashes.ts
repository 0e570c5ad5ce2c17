import { nearestSpans, type NearestPlace, type Stretch } from "../../geometry/nearestSpans";
import { pathSpans } from "../../geometry/span";
import { norm, subtract, type Vec3 } from "../../geometry/vector";
import { remember } from "../../memory/remember";
import { rememberPairs } from "../../memory/rememberPairs";
import { formatLength } from "../../units/length";
import { showInches } from "../../units/show";
import { ROUNDING } from "../../units/tolerances";
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

/** A run where it stands: the stretches of its centerline, how far along the run each begins, and the box around it. */
interface Standing {
  readonly stretches: readonly Stretch[];
  readonly from: readonly number[];
  /** Ends of its pulls, and whether the stretch begins or ends there. */
  readonly ends: readonly { readonly point: Vec3; readonly stretch: number; readonly isStart: boolean }[];
  readonly low: Vec3;
  readonly high: Vec3;
  readonly radius: number;
}

const standing: (built: BuiltRun) => Standing = remember((built) => {
  const stretches: Stretch[] = [];
  const from: number[] = [];
  const ends: { point: Vec3; stretch: number; isStart: boolean }[] = [];
  let reached = 0;
  for (const path of placedPulls(built)) {
    const spans = pathSpans(path).filter(({ length }) => length > ROUNDING);
    ends.push({ point: path.points[0]!, stretch: stretches.length, isStart: true });
    for (const span of spans) {
      stretches.push({ span, from: 0, to: span.length });
      from.push(reached);
      reached += span.length;
    }
    ends.push({ point: path.points.at(-1)!, stretch: stretches.length - 1, isStart: false });
  }
  // An arc lies inside the corners of its path.
  const corners = placedPulls(built).flatMap(({ points }) => points);
  const radius = built.shoe.outsideDiameter / 2;
  const edge = (pick: (...values: number[]) => number, by: number): Vec3 => {
    const at = (axis: 0 | 1 | 2) => corners.reduce((most, corner) => pick(most, corner[axis]), corners[0]![axis]) + by;
    return [at(0), at(1), at(2)];
  };
  return { stretches, from, ends, low: edge(Math.min, -radius), high: edge(Math.max, radius), radius };
});

const boxesMeet = (a: Standing, b: Standing): boolean =>
  a.low[0] < b.high[0] && b.low[0] < a.high[0] &&
  a.low[1] < b.high[1] && b.low[1] < a.high[1] &&
  a.low[2] < b.high[2] && b.low[2] < a.high[2]; // prettier-ignore

function clashOf(one: BuiltRun, other: BuiltRun): Clash | undefined {
  const [a, b] = [standing(one), standing(other)];
  if (!boxesMeet(a, b)) return undefined;
  const needed = a.radius + b.radius;
  const [first, second] = clearOfCommonEnds(a, b, needed);
  const nearest: NearestPlace | undefined = nearestSpans(first, second, needed - TOUCHING);
  if (!nearest) return undefined;
  const along = ({ from }: Standing, place: NearestPlace["first"]) => from[place.stretch]! + place.along;
  return {
    ...{ one, other, needed, apart: nearest.apart, point: nearest.point },
    ...{ alongOne: along(a, nearest.first), alongOther: along(b, nearest.second) },
  };
}

/** The stretches of two runs without what lies at ends that meet. */
function clearOfCommonEnds(a: Standing, b: Standing, needed: number): [Stretch[], Stretch[]] {
  const [first, second] = [[...a.stretches], [...b.stretches]];
  const cut = (stretches: Stretch[], { stretch, isStart }: Standing["ends"][number]) => {
    const { span, from, to } = stretches[stretch]!;
    const off = AT_A_BOX * needed;
    stretches[stretch] = isStart
      ? { span, from: Math.max(from, off), to }
      : { span, from, to: Math.min(to, span.length - off) };
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

const pairsOf = rememberPairs(clashOf, MOST_CLASHES);

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
  finding: `More than ${MOST_CLASHES} pairs of runs take the same place; the first ${MOST_CLASHES} are named.`,
  fix: "See whether the Starts are in the same unit and from the same zero.",
};
