import { cos, sin, toRadians } from "../../geometry/angle";
import type { Bench } from "./bench";
import { sidesOf } from "./benchSides";
import type { Piece } from "../run/builtRun";
import type { Hook } from "../shoe/marks";

/**
 * Takes a point of the conduit on the bench [in]: x away from the hook, y to the side, z up; 0 where the shoe bends.
 * True when that is enough: no further point is shown.
 */
export type SeePoint = (x: number, y: number, z: number) => boolean;

/**
 * Moments a stroke is looked at. Between two looks at a 90° swing a conduit that reaches 10 ft can be 0.06 in. farther
 * out: less than a hand's breadth by far.
 */
const MOMENTS = 24;

/**
 * Shows every point of the conduit through one stroke, the last moment first (it reaches farthest as a rule): the bends
 * in `done` are made, bend `index` goes from straight to its angle.
 *
 * Derived: both sides of the bend are rigid, so a moment of the stroke only turns one of them in the plane of the bend
 * and moves it along the part that is not bent yet; the side that holds still keeps its place on the bench.
 */
export function stroke(
  piece: Piece,
  done: readonly boolean[],
  index: number,
  hook: Hook,
  bench: Bench,
  see: SeePoint,
): void {
  const sides = sidesOf(piece, done, index);
  const { angle = 0, radius = 0 } = piece.bends[index] ?? {};
  const farMoves = (bench.swings === "free end") === (hook === "datum");
  for (let step = MOMENTS; step >= 0; step--) {
    const turned = (angle * step) / MOMENTS;
    const place = placed(farMoves ? 0 : turned, radius, hook, bench, see);
    // The shoe takes hold on the hook's side, so the part not bent yet lies on the other side.
    const rest = radius * toRadians(angle - turned);
    const [before, after] = hook === "far" ? [rest, 0] : [0, rest];
    for (const [x, y, z] of sides.datum) if (place(x - before, y, z)) return;
    // The bend itself passes where one of its ends was at an earlier moment.
    const end = arcEnd(turned, radius);
    for (const [x, y, z] of sides.far) {
      const out = x + after;
      if (place(end.x + out * end.cosine - y * end.sine, end.y + out * end.sine + y * end.cosine, z)) return;
    }
  }
}

/** Where an arc from the origin ends, and its direction there; x along the conduit, y toward the center. */
function arcEnd(degrees: number, radius: number): { x: number; y: number; cosine: number; sine: number } {
  const [cosine, sine] = [cos(toRadians(degrees)), sin(toRadians(degrees))];
  return { x: radius * sine, y: radius * (1 - cosine), cosine, sine };
}

/** From the frame of the bend's start to the bench's, where the conduit holds still `turned` degrees round the shoe. */
function placed(turned: number, radius: number, hook: Hook, bench: Bench, see: SeePoint): SeePoint {
  const still = arcEnd(turned, radius);
  const away = hook === "datum" ? 1 : -1;
  const up = bench.curls === "up" ? 1 : -1;
  return (x, y, z) => {
    const [dx, dy] = [x - still.x, y - still.y];
    const along = (dx * still.cosine + dy * still.sine) * away;
    const curl = dy * still.cosine - dx * still.sine;
    const side = z * away;
    return bench.plane === "horizontal" ? see(along, curl, side) : see(along, -side * up, curl * up);
  };
}
