import { nearestOf } from "../../geometry/nearest";
import { samplePath } from "../../geometry/span";
import { norm, subtract, type Vec3 } from "../../geometry/vector";
import { pullPath } from "../../route/problems";
import { ROUNDING } from "../../units/tolerances";
import type { BuiltRun } from "../run/builtRun";
import type { Finding } from "../code/finding";

/** Arcs are followed in chords of at most this turn [°]: 0.03 in. from an arc of 10 in. */
const CHORD = 9;
/** Conduit this many diameters further on is no longer its own neighbor. */
const NEIGHBOR = 2;

/** A straight bit of the centerline, and where it begins along the run [in]. */
interface Bit {
  readonly ends: readonly [Vec3, Vec3];
  readonly from: number;
  readonly pull: number;
}

/** A run whose conduit crosses or touches itself; the first place is told. Pulls that meet at a box may come near there. */
export function meetsItself(built: BuiltRun): Finding[] {
  const thick = built.shoe.outsideDiameter;
  const bits = bitsOf(built);
  for (const [index, first] of bits.entries()) {
    for (const second of bits.slice(index + 1)) {
      if (Math.abs(first.pull - second.pull) === 1 || farApart(first, second, thick)) continue;
      const { onFirst, onSecond, apart } = nearestOf(first.ends, second.ends);
      const [one, other] = [first.from + onFirst, second.from + onSecond];
      if (apart < thick - ROUNDING && other - one > NEIGHBOR * thick) return [finding(built, one, other, apart)];
    }
  }
  return [];
}

function bitsOf({ pulls }: BuiltRun): Bit[] {
  let from = 0;
  return pulls.flatMap(({ pull }, number) => {
    const points = samplePath(pullPath(pull), CHORD);
    return points.slice(1).flatMap((point, index): Bit[] => {
      const ends: [Vec3, Vec3] = [points[index]!, point];
      const length = norm(subtract(...ends));
      const bit = { ends, from, pull: number };
      from += length;
      return length > ROUNDING ? [bit] : [];
    });
  });
}

/** True when the boxes around two bits are farther apart than the conduit is thick. */
const farApart = ({ ends: [a, b] }: Bit, { ends: [c, d] }: Bit, thick: number): boolean =>
  ([0, 1, 2] as const).some(
    (axis) =>
      Math.min(a[axis], b[axis]) - Math.max(c[axis], d[axis]) > thick ||
      Math.min(c[axis], d[axis]) - Math.max(a[axis], b[axis]) > thick,
  );

const finding = (
  { run, shoe, lengths: { show, tape } }: BuiltRun,
  one: number,
  other: number,
  apart: number,
): Finding => ({
  run: run.name,
  weight: "stop",
  rule: "a run must not cross or touch itself",
  finding:
    `at ${tape(one)} and ${tape(other)} along it the run comes within ${show(apart, 2)} of itself, center to ` +
    `center; the conduit is ${show(shoe.outsideDiameter)} thick.`,
  fix: "Move one of the legs, or put a box where they meet.",
});
