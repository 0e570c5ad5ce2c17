import { arcLength } from "../geometry/arc";
import { toRadians } from "../geometry/angle";
import { along, cross, dot, rotate, subtract, type Vec3 } from "../geometry/vector";
import type { Bench } from "./bench";
import type { Piece } from "./buildRun";
import type { Hook } from "./marks";

/** A point of the conduit on the bench [in]: x away from the hook, y to the side, z up; 0 where the shoe starts to bend. */
export type BenchPoint = Vec3;

/** The conduit at one moment of a stroke. */
export interface Moment {
  readonly points: readonly BenchPoint[];
}

interface Frame {
  readonly at: Vec3;
  readonly ahead: Vec3;
  /** Where a bend of azimuth 0 curls toward. */
  readonly curl: Vec3;
}

/**
 * Moments a stroke is looked at, and the largest step along an arc [°]. Between two looks at a 90° swing a conduit that
 * reaches 10 ft can be 0.06 in. farther out: less than a hand's breadth by far.
 */
const MOMENTS = 24;
const ARC_STEP = 15;

/** Azimuth of each bend round the straight piece [°], the first at 0: what the planes add up to. */
export function azimuths(piece: Piece): number[] {
  let sum = 0;
  return piece.bends.map((bend, index) => (sum += index === 0 ? 0 : bend.plane));
}

/**
 * The conduit through one stroke: the bends in `done` are made, bend `index` goes from straight to its angle.
 *
 * Derived: the part of the conduit that does not move keeps its place on the bench; the rest is carried round the shoe.
 */
export function stroke(piece: Piece, done: readonly boolean[], index: number, hook: Hook, bench: Bench): Moment[] {
  const moments: Moment[] = [];
  for (let step = 0; step <= MOMENTS; step++) {
    moments.push({ points: momentPoints(piece, done, index, hook, bench, step / MOMENTS) });
  }
  return moments;
}

function momentPoints(
  piece: Piece,
  done: readonly boolean[],
  index: number,
  hook: Hook,
  bench: Bench,
  part: number,
): BenchPoint[] {
  const turn = azimuths(piece);
  const points: Vec3[] = [];
  let frame: Frame = { at: [0, 0, 0], ahead: [1, 0, 0], curl: [0, 0, 1] };
  let reached = 0;
  let anchor: Frame | undefined;
  const straight = (to: number): void => {
    points.push(frame.at);
    frame = { ...frame, at: along(frame.at, frame.ahead, to - reached) };
    reached = to;
    points.push(frame.at);
  };
  const arc = (angle: number, radius: number, azimuth: number): void => {
    const steps = Math.max(1, Math.ceil(angle / ARC_STEP));
    for (let step = 0; step < steps; step++) {
      frame = bent(frame, angle / steps, radius, azimuth);
      points.push(frame.at);
    }
    reached += arcLength(angle, radius);
  };
  piece.bends.forEach((bend, place) => {
    const azimuth = turn[place] ?? 0;
    if (place === index) {
      // The shoe takes hold on the hook's side, so the part not bent yet lies on the other side.
      const angle = bend.angle * part;
      const rest = arcLength(bend.angle - angle, bend.radius);
      straight(bend.start + (hook === "far" ? rest : 0));
      const before = frame;
      arc(angle, bend.radius, azimuth);
      const holdsStill = (bench.swings === "free end") === (hook === "datum") ? before : frame;
      anchor = { ...holdsStill, curl: rotate(holdsStill.curl, holdsStill.ahead, toRadians(azimuth)) };
    } else if (done[place]) {
      straight(bend.start);
      arc(bend.angle, bend.radius, azimuth);
    }
  });
  straight(piece.cutLength);
  return onBench(points, anchor as Frame, hook, bench);
}

function bent(frame: Frame, angle: number, radius: number, azimuth: number): Frame {
  const toward = rotate(frame.curl, frame.ahead, toRadians(azimuth));
  const axis = cross(frame.ahead, toward);
  const center = along(frame.at, toward, radius);
  const turn = (vector: Vec3): Vec3 => rotate(vector, axis, toRadians(angle));
  const arm = turn(subtract(frame.at, center));
  return {
    at: [center[0] + arm[0], center[1] + arm[1], center[2] + arm[2]],
    ahead: turn(frame.ahead),
    curl: turn(frame.curl),
  };
}

/** From the conduit's own frame to the bench's: the still part lies along x, the curl points as the bench bends. */
function onBench(points: readonly Vec3[], anchor: Frame, hook: Hook, bench: Bench): BenchPoint[] {
  const x = hook === "datum" ? anchor.ahead : ([-anchor.ahead[0], -anchor.ahead[1], -anchor.ahead[2]] as Vec3);
  const side = cross(x, anchor.curl);
  return points.map((point) => {
    const seen = subtract(point, anchor.at);
    const [alongX, curl, across] = [dot(seen, x), dot(seen, anchor.curl), dot(seen, side)];
    if (bench.plane === "horizontal") return [alongX, curl, across];
    return bench.curls === "up" ? [alongX, -across, curl] : [alongX, across, -curl];
  });
}
