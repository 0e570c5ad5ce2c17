import { readBendForm, readCornerForm } from "../../src/bends/shapes/bendForm";
import { kickAngle, kickLength, kickRise } from "../../src/bends/shapes/kick";
import { kickNinety } from "../../src/bends/shapes/kickNinety";
import { readOffsetAngle } from "../../src/bends/shapes/offset";
import { parallelKicks } from "../../src/bends/groups/parallel";
import { toInches } from "../../src/units/length";
import { toNumber } from "../../src/units/number";
import { answer } from "../cell/answer";

/**
 * How far a kick moves the end of the conduit aside.
 *
 * Example: =CONDUIT.KICK.RISE(24,30) //=> 12
 * Source: derived, R·(1 − cos A) + (length − R·A)·sin A; sharp corners: length·sin A; "table": length over the multiplier.
 * @customfunction KICK.RISE
 * @helpurl https://raceway-ledger.example/help/kick.rise.html
 * @param {any} length [in] from the start of the bend to the end, along the conduit
 * @param {any} angle [°] of the kick, above 0 to 90
 * @param {any} [radius] [in] on the centerline; omitted: sharp corners; the word table: printed constants
 * @returns {number} rise [in]
 */
export function kickRiseOf(length: any, angle: any, radius?: any): number {
  return answer([length, angle, radius], (length, angle, radius) =>
    kickRise(toInches(length, "length", { above: 0 }), readOffsetAngle(angle), readBendForm(radius)),
  );
}

/**
 * How far from the end a kick starts so that it moves the end aside by a rise: an inverse of KICK.RISE.
 *
 * Example: =CONDUIT.KICK.LENGTH(12,30) //=> 24
 * Source: derived, the formula of KICK.RISE solved for the length; "table": rise times the multiplier.
 * @customfunction KICK.LENGTH
 * @helpurl https://raceway-ledger.example/help/kick.length.html
 * @param {any} rise [in] above 0
 * @param {any} angle [°] of the kick, above 0 to 90
 * @param {any} [radius] [in] on the centerline; omitted: sharp corners; the word table: printed constants
 * @returns {number} length from the start of the bend to the end, along the conduit [in]
 */
export function kickLengthOf(rise: any, angle: any, radius?: any): number {
  return answer([rise, angle, radius], (rise, angle, radius) =>
    kickLength(toInches(rise, "rise", { above: 0 }), readOffsetAngle(angle), readBendForm(radius)),
  );
}

/**
 * Angle of the kick that starts a length before the end and moves it aside by a rise: an inverse of KICK.RISE.
 *
 * Example: =CONDUIT.KICK.ANGLE(24,12) //=> 30
 * Source: derived, the formula of KICK.RISE solved for the angle.
 * @customfunction KICK.ANGLE
 * @helpurl https://raceway-ledger.example/help/kick.angle.html
 * @param {any} length [in] from the start of the bend to the end, along the conduit
 * @param {any} rise [in] above 0, at most what 90° gives
 * @param {any} [radius] [in] on the centerline; omitted: sharp corners
 * @returns {number} angle [°], above 0 to 90
 */
export function kickAngleOf(length: any, rise: any, radius?: any): number {
  return answer([length, rise, radius], (length, rise, radius) =>
    kickAngle(toInches(length, "length", { above: 0 }), toInches(rise, "rise", { above: 0 }), readCornerForm(radius)),
  );
}

/**
 * How far from the back of a finished 90 to start the kick that moves the 90 aside by a rise.
 *
 * The rise is that of the stub's centerline; the tape is hooked over the back of the 90 and lies along the conduit.
 * Example: =CONDUIT.KICK.NINETY(6,30,0.706) //=> 12.353
 * Source: derived, rise/sin A + T − g + OD/2 with the kick's setback T and gain g; sharp corners: without T and g.
 * @customfunction KICK.NINETY
 * @helpurl https://raceway-ledger.example/help/kick.ninety.html
 * @param {any} rise [in] above 0
 * @param {any} angle [°] of the kick, above 0 to 90
 * @param {any} outsideDiameter [in] of the conduit, above 0
 * @param {any} [radius] [in] on the centerline; omitted: sharp corners; the word table: printed constants
 * @returns {number} from the back of the 90 to the start of the kick, along the conduit [in]
 */
export function kickNinetyOf(rise: any, angle: any, outsideDiameter: any, radius?: any): number {
  return answer([rise, angle, outsideDiameter, radius], (rise, angle, outsideDiameter, radius) =>
    kickNinety(
      toInches(rise, "rise", { above: 0 }),
      readOffsetAngle(angle),
      toInches(outsideDiameter, "outside diameter", { above: 0 }),
      readBendForm(radius),
    ),
  );
}

/**
 * Marks of side-by-side kicks that stay evenly spaced; spills with a header row.
 *
 * Conduit 1 is on the side that the bend turns toward; marks are counted from its mark.
 * Example: =CONDUIT.KICK.PARALLEL(45,6,3) //=> Conduit, Mark
 * Source: derived, stagger spacing·tan(A/2): the corners lie on the line that halves the bend.
 * @customfunction KICK.PARALLEL
 * @helpurl https://raceway-ledger.example/help/kick.parallel.html
 * @param {any} angle [°] of the kick, above 0 to 90
 * @param {any} spacing [in] from center to center of neighbors
 * @param {any} count conduits, 1 to 100
 * @returns {any[][]} a row for each conduit, with a header row
 */
export function kickParallel(angle: any, spacing: any, count: any): any[][] {
  return answer([angle, spacing, count], (angle, spacing, count) => [
    ["Conduit", "Mark"],
    ...parallelKicks(
      readOffsetAngle(angle),
      toInches(spacing, "spacing", { above: 0 }),
      toNumber(count, "count", { min: 1, max: 100, integer: true }),
    ).map(({ conduit, mark }) => [conduit, mark]),
  ]);
}
