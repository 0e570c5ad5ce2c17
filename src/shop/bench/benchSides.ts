import { toRadians, type Degrees } from "../../geometry/angle";
import { arcLength } from "../../geometry/arc";
import { along, cross, ORIGIN, rotate, scale, type Vec3 } from "../../geometry/vector";
import type { Piece, PieceBend } from "../run/builtRun";
import { azimuths } from "../schedule/usualStrokes";

/** The conduit on both sides of a bend: rigid through its stroke, so worked out once. */
export interface Sides {
  /** From the start of the bend to the datum end. */
  readonly datum: readonly Vec3[];
  /** From the end of the bend to the far end. */
  readonly far: readonly Vec3[];
}

interface Frame {
  readonly at: Vec3;
  readonly ahead: Vec3;
  /** Where a bend in the same plane as the stroke's curls toward. */
  readonly curl: Vec3;
}

/** A made bend as met on the way out from the stroke's own bend. */
interface Met {
  /** Straight before it [in]. */
  readonly straight: number;
  readonly angle: Degrees;
  readonly radius: number;
  /** Turn round the conduit from the stroke's plane [°], right-handed about the way out. */
  readonly azimuth: number;
}

/** Largest step along an arc [°]. Between two points a bend of radius 10 in. is 0.09 in. off its chord. */
const ARC_STEP = 15;

/**
 * Both sides of bend `index` with the bends in `done` made, each in the frame of the bend's own end: x toward the far
 * end of the conduit, y where the bend curls toward, z square to both [in].
 */
export function sidesOf(piece: Piece, done: readonly boolean[], index: number): Sides {
  const turn = azimuths(piece);
  const bend = piece.bends[index];
  if (!bend) throw new RangeError(`piece ${piece.number} has no bend ${index + 1}`);
  const made = piece.bends.flatMap((_, place) => (done[place] ? [place] : []));
  const met = (place: number, straight: number, way: 1 | -1): Met => {
    const { angle, radius } = piece.bends[place]!;
    return { straight, angle, radius, azimuth: way * (turn[place]! - turn[index]!) };
  };
  const endOf = ({ start, angle, radius }: PieceBend) => start + arcLength(angle, radius);

  let reached = endOf(bend);
  const ahead = made.filter((place) => place > index);
  const beyond = ahead.map((place) => {
    const straight = piece.bends[place]!.start - reached;
    reached = endOf(piece.bends[place]!);
    return met(place, straight, 1);
  });
  const far = outward(beyond, piece.cutLength - reached);

  reached = bend.start;
  const behind = made.filter((place) => place < index).reverse();
  const back = behind.map((place) => {
    const straight = reached - endOf(piece.bends[place]!);
    reached = piece.bends[place]!.start;
    return met(place, straight, -1);
  });
  // Walked outward, x and z point the other way round.
  return { far, datum: outward(back, reached).map(([x, y, z]): Vec3 => [-x, y, -z]) };
}

/** The points of one side, walked out from the stroke's bend. */
function outward(bends: readonly Met[], lastStraight: number): Vec3[] {
  let frame: Frame = { at: ORIGIN, ahead: [1, 0, 0], curl: [0, 1, 0] };
  const points: Vec3[] = [frame.at];
  const straight = (length: number): void => {
    frame = { ...frame, at: along(frame.at, frame.ahead, length) };
    points.push(frame.at);
  };
  for (const { straight: length, angle, radius, azimuth } of bends) {
    straight(length);
    const toward = rotate(frame.curl, frame.ahead, toRadians(azimuth));
    const axis = cross(frame.ahead, toward);
    const center = along(frame.at, toward, radius);
    const from = frame;
    const steps = Math.max(1, Math.ceil(angle / ARC_STEP));
    for (let step = 1; step <= steps; step++) {
      const turned = toRadians((angle * step) / steps);
      const arm = rotate(scale(toward, -radius), axis, turned);
      frame = {
        at: along(center, arm, 1),
        ahead: rotate(from.ahead, axis, turned),
        curl: rotate(from.curl, axis, turned),
      };
      points.push(frame.at);
    }
  }
  straight(lastStraight);
  return points;
}
