import { halfTurn, type Degrees } from "../../geometry/angle";
import { arcLength, setback } from "../../geometry/arc";
import { legsOf, partsToPath, pathParts, type Path } from "../../geometry/path";
import { pointAlong, samplePath } from "../../geometry/span";
import { cross, dot, scale, subtract, unit, type Vec3 } from "../../geometry/vector";
import type { Ticket } from "../../shop/ticket/ticket";
import { FIRST_BEND_UP } from "../../shop/ticket/ticketPath";
import type { Flat } from "../paper/fit";

/**
 * Conduit at the shoe as a step begins, the hook at the left and the bend curling up: x along the conduit from where the
 * bend begins on the hook's side, y up [in]. Straights that are long are shortened.
 */
export interface ConduitAtShoe {
  /** The conduit with the bends made so far, from the datum end to the far end. */
  readonly before: readonly Flat[];
  /** The same when the step is done. */
  readonly after: readonly Flat[];
  /** Where the pencil mark lies along x [in]. */
  readonly mark: number;
  readonly angle: Degrees;
  readonly radius: number;
}

/** Straights longer than this many radii are drawn so long: a picture of how it lies, not of how long it is. */
const LONGEST = 2.2;
/** What comes toward the one who looks goes so far to the left and down. */
const TOWARD = { left: 0.5, down: 0.35 };
/** Points of an arc are no more than this apart [°]. */
const FINE = 6;

/** A bend as it is met along the stick. */
interface Met {
  readonly number: number;
  readonly angle: Degrees;
  readonly radius: number;
  /** Turn round the conduit from the first bend's plane [°]. */
  readonly azimuth: number;
}

/** What is on the stick in a step: its bends, and the straights around them as they are drawn. */
interface Stick {
  readonly bends: readonly Met[];
  readonly gaps: readonly number[];
}

/** @param step place of the bend in the ticket's order, 0 for the first */
export function conduitAtShoe(ticket: Ticket, step: number): ConduitAtShoe {
  const { number, hook, mark } = ticket.bends[step]!;
  const { stick, starts } = stickIn(ticket, step);
  const place = stick.bends.findIndex((bend) => bend.number === number);
  const { angle, radius } = stick.bends[place]!;
  const arc = arcLength(angle, radius);
  const [before, after] = [pathOf(stick, place), pathOf(stick)];
  const begins = stick.gaps.slice(0, place + 1).reduce((sum, gap) => sum + gap, 0) + arcsBefore(stick, place);
  const { directions } = legsOf(after);
  const into = directions[place]!;
  const normal = unit(cross(into, directions[place + 1]!));
  const at = hook === "datum" ? begins : begins + arc;
  const still = viewFrom(pointAlong(before, at).point, into, normal, hook);
  const swung = viewFrom(pointAlong(after, at).point, hook === "datum" ? into : directions[place + 1]!, normal, hook);
  const real = starts[number - 1]!;
  return {
    before: samplePath(before, FINE).map(still),
    after: samplePath(after, FINE).map(swung),
    mark: hook === "datum" ? mark - real : real + arc - mark,
    angle,
    radius,
  };
}

/** The bends made before the step and its own, by their place on the stick; and where every bend begins on it [in]. */
function stickIn({ path, bends }: Ticket, step: number): { stick: Stick; starts: number[] } {
  const parts = pathParts(path);
  const there = new Set(bends.slice(0, step + 1).map(({ number }) => number));
  const met: Met[] = [];
  const gaps: number[] = [];
  const starts: number[] = [];
  let [along, end, azimuth] = [0, 0, 0];
  parts.bends.forEach(({ angle, radius, rotation }, index) => {
    along += parts.straights[index]!;
    starts.push(along);
    azimuth += rotation;
    if (there.has(index + 1)) {
      gaps.push(shortened(along - end, radius));
      met.push({ number: index + 1, angle, radius, azimuth });
      end = along + arcLength(angle, radius);
    }
    along += arcLength(angle, radius);
  });
  along += parts.straights.at(-1)!;
  return { stick: { bends: met, gaps: [...gaps, shortened(along - end, met.at(-1)!.radius)] }, starts };
}

const shortened = (gap: number, radius: number): number => Math.min(gap, LONGEST * radius);

const arcsBefore = ({ bends }: Stick, place: number): number =>
  bends.slice(0, place).reduce((sum, { angle, radius }) => sum + arcLength(angle, radius), 0);

/** The stick with its bends made, but for the one that is `straight`. */
function pathOf({ bends, gaps }: Stick, straight = -1): Path {
  const made = bends.filter((_, place) => place !== straight);
  const runs = [gaps[0]!];
  bends.forEach(({ angle, radius }, place) => {
    if (place === straight) runs[runs.length - 1]! += arcLength(angle, radius) + gaps[place + 1]!;
    else runs.push(gaps[place + 1]!);
  });
  const setbacks = [0, ...made.map(({ angle, radius }) => setback(angle, radius)), 0];
  return partsToPath(
    runs.map((run, leg) => run + setbacks[leg]! + setbacks[leg + 1]!),
    made.map(({ angle, radius, azimuth }, place) => ({
      ...{ angle, radius },
      rotation: halfTurn(azimuth - (made[place - 1]?.azimuth ?? 0)),
    })),
    [0, 0, 0],
    [1, 0, 0],
    FIRST_BEND_UP,
  );
}

/** Sees points from beside the shoe: from `origin` along the conduit away from the hook, up where the bend curls. */
function viewFrom(origin: Vec3, travel: Vec3, normal: Vec3, hook: "datum" | "far"): (point: Vec3) => Flat {
  const up = cross(normal, travel);
  const ahead = hook === "datum" ? travel : scale(travel, -1);
  const toward = cross(ahead, up);
  return (point) => {
    const from = subtract(point, origin);
    const near = dot(from, toward);
    return [dot(from, ahead) - TOWARD.left * near, dot(from, up) - TOWARD.down * near];
  };
}
