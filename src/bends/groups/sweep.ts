import { cos, tan, toRadians, type Degrees } from "../../geometry/angle";
import { arcLength, gain, setback } from "../../geometry/arc";
import { InputError } from "../../units/errors";
import { show, showInches } from "../../units/show";

/** A bend of large radius made in equal shots of a smaller shoe. Lengths [in], angle [°]. */
export interface SweepLayout {
  /** What each shot turns. */
  readonly anglePerShot: number;
  readonly shots: number;
  /** From one mark to the next; each mark is the middle of its shot. */
  readonly spacing: number;
  /** From the start of the sweep to its first mark: half a spacing. */
  readonly firstMark: number;
}

/**
 * Marks of a segmented sweep.
 *
 * Without a shoe's radius, as the handbook has it: the sweep's arc parted into equal lengths, each bent in its middle.
 * With it, the spacing at which the true arcs and straights touch the ideal arc between shots and end on its tangent:
 * derived, side `2R·tan(θ/2)` of the polygon around the arc less the gain of one shot.
 *
 * @param angle [°] of the whole sweep @param radius [in] of the ideal arc @param shots 2 or more
 * @param shoeRadius [in] on the centerline, not above the sweep's
 * @throws InputError when the shoe's radius is above the sweep's
 * @example sweepLayout(90, 24, 9) //=> { anglePerShot: 10, shots: 9, spacing: 4.1888, firstMark: 2.0944 }
 */
export function sweepLayout(angle: Degrees, radius: number, shots: number, shoeRadius?: number): SweepLayout {
  const anglePerShot = angle / shots;
  if (shoeRadius !== undefined) needSmallerShoe(radius, shoeRadius);
  const spacing =
    shoeRadius === undefined
      ? arcLength(angle, radius) / shots
      : 2 * setback(anglePerShot, radius) - gain(anglePerShot, shoeRadius);
  return { anglePerShot, shots, spacing, firstMark: spacing / 2 };
}

/**
 * The marks of a sweep.
 *
 * @param firstMark [in] where the first stands; omitted: half a spacing past the start of the sweep, which is at 0
 * @returns mark [in], what the shot turns and what has been turned with it [°]
 */
export function sweepMarks(
  { anglePerShot, shots, spacing, firstMark: half }: SweepLayout,
  firstMark = half,
): { shot: number; mark: number; angle: Degrees; total: number }[] {
  return Array.from({ length: shots }, (_, place) => ({
    shot: place + 1,
    mark: firstMark + place * spacing,
    angle: anglePerShot,
    total: anglePerShot * (place + 1),
  }));
}

/** How a sweep in shots differs from the ideal arc between the same legs. All [in]. */
export interface SweepError {
  /** Radius of the circle that the finished sweep touches between its shots, for marks at the handbook's spacing. */
  readonly radius: number;
  /** By how much each end of the handbook's sweep lies nearer to the corner than the ideal arc's. */
  readonly shortOfTangent: number;
  /** How far each shot stands out of the circle touched between the shots. */
  readonly bulge: number;
  /** Spacing that would end on the ideal arc's tangents, less the handbook's. */
  readonly spacingError: number;
}

/**
 * What marks at the handbook's equal parts of the arc make of a sweep, with true arcs of the shoe's radius.
 *
 * Derived: half a spacing on either side of a shot and the shot's own corner give `c = (S + g)/2` from the middle
 * between shots to the corner; equal corners go around a circle of radius `c / tan(θ/2)`; the shot's crest stands out
 * of it by `(radius − r)·(1/cos(θ/2) − 1)`.
 *
 * @param shoeRadius [in] on the centerline, not above the sweep's
 * @throws InputError when the shoe's radius is above the sweep's
 */
export function sweepError(angle: Degrees, radius: number, shots: number, shoeRadius: number): SweepError {
  const handbook = sweepLayout(angle, radius, shots);
  const exact = sweepLayout(angle, radius, shots, shoeRadius);
  const shot = handbook.anglePerShot;
  const touched = (handbook.spacing + gain(shot, shoeRadius)) / 2 / tan(toRadians(shot / 2));
  return {
    radius: touched,
    shortOfTangent: setback(angle, radius) - setback(angle, touched),
    bulge: (touched - shoeRadius) * (1 / cos(toRadians(shot / 2)) - 1),
    spacingError: exact.spacing - handbook.spacing,
  };
}

function needSmallerShoe(radius: number, shoeRadius: number): void {
  if (shoeRadius <= radius) return;
  throw new InputError(`shoe radius must be at most the sweep's ${showInches(radius)}; got ${show(shoeRadius)} in.`);
}
