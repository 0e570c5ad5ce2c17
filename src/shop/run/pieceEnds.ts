import { InputError } from "../../units/errors";
import type { Lengths } from "../../units/formatLength";
import { ROUNDING } from "../../units/tolerances";
import { dividePull, type JoinZone } from "./couplings";

/** A zone that a coupling may stand in; `parting`: it would part an offset, a saddle, or a kick and its return. */
export interface CouplingZone extends JoinZone {
  readonly parting: boolean;
}

/** A shorter piece is a pup: made only where it saves a piece [in]. Our choice, no source. */
export const NO_PUP = 12;

/**
 * Where the pieces of a length end, its end left out: the fewest pieces; among as few, none that parts an offset, a saddle
 * or a kick and its return; among those, none shorter than a foot; then none shorter than `shortest`.
 *
 * @returns the joints, or the stretch without a place for one that no stick spans
 */
export function jointsOf(
  length: number,
  stick: number,
  zones: readonly CouplingZone[],
  shortest: number,
): readonly number[] | { readonly tooLong: JoinZone } {
  const fewest = dividePull(length, stick, zones, shortest);
  if (!("joints" in fewest)) return fewest;
  const whole = zones.filter(({ parting }) => !parting);
  for (const places of [whole, zones]) {
    for (const least of [Math.max(NO_PUP, shortest), shortest]) {
      const division = dividePull(length, stick, places, least);
      if (
        "joints" in division &&
        division.joints.length === fewest.joints.length &&
        noneBelow(division.joints, length, least)
      )
        return division.joints;
    }
  }
  const kept = dividePull(length, stick, whole, shortest);
  return "joints" in kept && kept.joints.length === fewest.joints.length ? kept.joints : fewest.joints;
}

const noneBelow = (joints: readonly number[], length: number, least: number): boolean =>
  [...joints, length].every((end, index) => end - (joints[index - 1] ?? 0) >= least - ROUNDING);

/**
 * The same where the run's row says where it is coupled.
 *
 * @param joints from the start of the length [in] @param start where that is along the run [in], for messages, as are `lengths`
 * @throws InputError naming a joint that cannot be, or a piece that no stick gives
 */
export function fixedJoints(
  joints: readonly number[],
  length: number,
  stick: number,
  zones: readonly JoinZone[],
  start: number,
  { show, tape }: Lengths,
): readonly number[] {
  const at = (place: number): string => tape(start + place);
  for (const joint of joints) {
    if (zones.some(({ from, to }) => joint >= from - ROUNDING && joint <= to + ROUNDING)) continue;
    const [near] = [...zones].sort((a, b) => awayFrom(a, joint) - awayFrom(b, joint));
    const instead = near ? `; the nearest place is from ${at(near.from)} to ${at(near.to)}` : "";
    throw new InputError(
      `Joints: ${at(joint)} stands in a bend or too near to one or to an end for a coupling${instead}.`,
    );
  }
  [...joints, length].forEach((end, index) => {
    const from = joints[index - 1] ?? 0;
    if (end - from <= stick + ROUNDING) return;
    throw new InputError(
      `Joints: the piece from ${at(from)} to ${at(end)} is ${show(end - from, 2)} long; a stick gives ${show(stick, 2)}`,
    );
  });
  return joints;
}

const awayFrom = ({ from, to }: JoinZone, place: number): number => Math.max(from - place, place - to);
