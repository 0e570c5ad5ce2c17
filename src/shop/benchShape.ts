import { toRadians } from "../geometry/angle";
import type { Vec3 } from "../geometry/vector";
import type { Bench } from "./bench";
import { ARC_STEP, sidesOf } from "./benchSides";
import type { Piece } from "./buildRun";
import type { Hook } from "./marks";

/** A point of the conduit on the bench [in]: x away from the hook, y to the side, z up; 0 where the shoe starts to bend. */
export type BenchPoint = Vec3;

/** The conduit at one moment of a stroke. */
export interface Moment {
  readonly points: readonly BenchPoint[];
}

/**
 * Moments a stroke is looked at. Between two looks at a 90° swing a conduit that reaches 10 ft can be 0.06 in. farther
 * out: less than a hand's breadth by far.
 */
const MOMENTS = 24;

/**
 * The conduit through one stroke: the bends in `done` are made, bend `index` goes from straight to its angle.
 *
 * Derived: both sides of the bend are rigid, so a moment of the stroke only turns one of them in the plane of the bend
 * and moves it along the part that is not bent yet; the side that holds still keeps its place on the bench.
 */
export function stroke(piece: Piece, done: readonly boolean[], index: number, hook: Hook, bench: Bench): Moment[] {
  const sides = sidesOf(piece, done, index);
  const { angle = 0, radius = 0 } = piece.bends[index] ?? {};
  const turnBack = (bench.swings === "free end") !== (hook === "datum");
  return Array.from({ length: MOMENTS + 1 }, (_, step) => {
    const turned = (angle * step) / MOMENTS;
    // The shoe takes hold on the hook's side, so the part not bent yet lies on the other side.
    const rest = radius * toRadians(angle - turned);
    const { at, ahead } = arcEnd(turned, radius);
    const ownFrame: Vec3[] = [
      ...sides.datum.map(([x, y, z]): Vec3 => [x - (hook === "far" ? rest : 0), y, z]),
      ...arcPoints(turned, radius),
      ...sides.far.map(([x, y, z]): Vec3 => {
        const out = x + (hook === "datum" ? rest : 0);
        return [at[0] + out * ahead[0] - y * ahead[1], at[1] + out * ahead[1] + y * ahead[0], z];
      }),
    ];
    const still = turnBack
      ? ownFrame.map(([x, y, z]): Vec3 => {
          const [dx, dy] = [x - at[0], y - at[1]];
          return [dx * ahead[0] + dy * ahead[1], dy * ahead[0] - dx * ahead[1], z];
        })
      : ownFrame;
    return { points: still.map((point) => onBench(point, hook, bench)) };
  });
}

/** Where an arc from the origin ends, and its direction there; x along the conduit, y toward the center. */
function arcEnd(degrees: number, radius: number): { at: [number, number]; ahead: [number, number] } {
  const [cosine, sine] = [Math.cos(toRadians(degrees)), Math.sin(toRadians(degrees))];
  return { at: [radius * sine, radius * (1 - cosine)], ahead: [cosine, sine] };
}

function arcPoints(degrees: number, radius: number): Vec3[] {
  const steps = Math.max(1, Math.ceil(degrees / ARC_STEP));
  return Array.from({ length: steps - 1 }, (_, step): Vec3 => {
    const { at } = arcEnd((degrees * (step + 1)) / steps, radius);
    return [at[0], at[1], 0];
  });
}

/** From the bend's own frame to the bench's: x away from the hook, the curl where the bench bends. */
function onBench([x, curl, z]: Vec3, hook: Hook, bench: Bench): BenchPoint {
  const [away, side] = hook === "datum" ? [x, z] : [-x, -z];
  if (bench.plane === "horizontal") return [away, curl, side];
  return bench.curls === "up" ? [away, -side, curl] : [away, side, -curl];
}
