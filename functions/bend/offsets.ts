import { readBendForm, readCornerForm, readTableWord } from "../../src/bends/shapes/bendForm";
import { BOX_OFFSET_MARKS, boxOffset } from "../../src/bends/shapes/boxOffset";
import { compareOffset, comparisonTable } from "../../src/bends/handbook/compare";
import { offsetMultiplier, offsetShrink, offsetSpacing, readOffsetAngle } from "../../src/bends/shapes/offset";
import { offsetAngle } from "../../src/bends/shapes/offsetAngle";
import { parallelOffsets } from "../../src/bends/groups/parallel";
import { rollingOffset } from "../../src/bends/shapes/rollingOffset";
import { stagger } from "../../src/bends/groups/stagger";
import { toAngle } from "../../src/units/angle";
import { toInches } from "../../src/units/length";
import { toNumber } from "../../src/units/number";
import { optional } from "../../src/units/limits";
import { answer } from "../cell/answer";

/**
 * What the rise is multiplied by for the spacing of an offset's marks: the cosecant of the angle, or the printed constant.
 *
 * Example: =CONDUIT.OFFSET.MULTIPLIER(22.5) //=> 2.6131
 * Source: derived, 1/sin A; "table": NAVEDTRA 14026 table 5-3 (22.5°, 30°, 60°), openly published trade notes and quizzes (5°, 10°, 15°, 45°).
 * @customfunction OFFSET.MULTIPLIER
 * @helpurl https://raceway-ledger.example/help/offset.multiplier.html
 * @param {any} angle [°] of each bend, above 0 to 90
 * @param {any} [table] the word table for the printed, rounded constant; omitted: the cosecant
 * @returns {number} spacing per inch of rise
 */
export function offsetMultiplierOf(angle: any, table?: any): number {
  return answer([angle, table], (angle, table) => offsetMultiplier(readOffsetAngle(angle), readTableWord(table)));
}

/**
 * Distance between the two marks of an offset, along the conduit.
 *
 * Example: =CONDUIT.OFFSET.SPACING(6,30,4) //=> 11.9508
 * Source: derived, rise/sin A − g with g = 2R·tan(A/2) − R·A; "table": NAVEDTRA 14026 table 5-3, others as in OFFSET.MULTIPLIER.
 * @customfunction OFFSET.SPACING
 * @helpurl https://raceway-ledger.example/help/offset.spacing.html
 * @param {any} rise [in] above 0
 * @param {any} angle [°] of each bend, above 0 to 90
 * @param {any} [radius] [in] on the centerline; omitted: sharp corners; the word table: printed constants
 * @returns {number} spacing [in]
 */
export function offsetSpacingOf(rise: any, angle: any, radius?: any): number {
  return answer([rise, angle, radius], (rise, angle, radius) =>
    offsetSpacing(toInches(rise, "rise", { above: 0 }), readOffsetAngle(angle), readBendForm(radius)),
  );
}

/**
 * By how much an offset shortens the reach of the conduit.
 *
 * Example: =CONDUIT.OFFSET.SHRINK(6,30,4) //=> 1.5093
 * Source: derived, rise·tan(A/2) − 2g with g = 2R·tan(A/2) − R·A; "table": NAVEDTRA 14026 table 5-3, others as in OFFSET.MULTIPLIER.
 * @customfunction OFFSET.SHRINK
 * @helpurl https://raceway-ledger.example/help/offset.shrink.html
 * @param {any} rise [in] above 0
 * @param {any} angle [°] of each bend, above 0 to 90
 * @param {any} [radius] [in] on the centerline; omitted: sharp corners; the word table: printed constants
 * @returns {number} shrink [in]
 */
export function offsetShrinkOf(rise: any, angle: any, radius?: any): number {
  return answer([rise, angle, radius], (rise, angle, radius) =>
    offsetShrink(toInches(rise, "rise", { above: 0 }), readOffsetAngle(angle), readBendForm(radius)),
  );
}

/**
 * Angle of the two bends of an offset whose marks stand a spacing apart: the inverse of OFFSET.SPACING.
 *
 * Example: =CONDUIT.OFFSET.ANGLE(6,12) //=> 30
 * Source: derived, rise/sin A − g = spacing solved for A; "table": the printed multiplier that fits.
 * @customfunction OFFSET.ANGLE
 * @helpurl https://raceway-ledger.example/help/offset.angle.html
 * @param {any} rise [in] above 0
 * @param {any} spacing [in] between the marks
 * @param {any} [radius] [in] on the centerline; omitted: sharp corners; the word table: printed constants
 * @returns {number} angle [°] of each bend, above 0 to 90
 */
export function offsetAngleOf(rise: any, spacing: any, radius?: any): number {
  return answer([rise, spacing, radius], (rise, spacing, radius) =>
    offsetAngle(toInches(rise, "rise", { above: 0 }), toInches(spacing, "spacing", { above: 0 }), readBendForm(radius)),
  );
}

/**
 * How far the marks of side-by-side conduits are shifted, one to the next, so that equal bends stay evenly spaced.
 *
 * Example: =CONDUIT.OFFSET.STAGGER(4,30) //=> 1.0718
 * Source: derived, spacing·tan(A/2): the corners lie on the line that halves the bend.
 * @customfunction OFFSET.STAGGER
 * @helpurl https://raceway-ledger.example/help/offset.stagger.html
 * @param {any} spacing [in] from center to center of neighbors
 * @param {any} angle [°] of the bend, above 0 and below 180
 * @returns {number} shift [in]
 */
export function offsetStagger(spacing: any, angle: any): number {
  return answer([spacing, angle], (spacing, angle) =>
    stagger(toInches(spacing, "spacing", { above: 0 }), toAngle(angle, "angle")),
  );
}

/**
 * Marks of side-by-side offsets that stay evenly spaced; spills with a header row.
 *
 * Conduit 1 is on the side that the first bend turns toward; marks are counted from its first mark.
 * Example: =CONDUIT.OFFSET.PARALLEL(6,30,4,3) //=> Conduit, First mark, Second mark
 * Source: derived, stagger spacing·tan(A/2) and the spacing of OFFSET.SPACING.
 * @customfunction OFFSET.PARALLEL
 * @helpurl https://raceway-ledger.example/help/offset.parallel.html
 * @param {any} rise [in] above 0
 * @param {any} angle [°] of each bend, above 0 to 90
 * @param {any} spacing [in] from center to center of neighbors
 * @param {any} count conduits, 1 to 100
 * @param {any} [radius] [in] on the centerline; omitted: sharp corners; the word table: printed constants
 * @returns {any[][]} a row for each conduit, with a header row
 */
export function offsetParallel(rise: any, angle: any, spacing: any, count: any, radius?: any): any[][] {
  return answer([rise, angle, spacing, count, radius], (rise, angle, spacing, count, radius) => [
    ["Conduit", "First mark", "Second mark"],
    ...parallelOffsets(
      toInches(rise, "rise", { above: 0 }),
      readOffsetAngle(angle),
      toInches(spacing, "spacing", { above: 0 }),
      toNumber(count, "count", { min: 1, max: 100, integer: true }),
      readBendForm(radius),
    ).map(({ conduit, first, second }) => [conduit, first, second]),
  ]);
}

/**
 * The plain offset that a rolling offset is, and the plane it lies in; spills with a header row.
 *
 * Example: =CONDUIT.OFFSET.ROLLING(8,12) //=> True offset, Plane
 * Source: derived, √(rise² + roll²) and atan2(roll, rise).
 * @customfunction OFFSET.ROLLING
 * @helpurl https://raceway-ledger.example/help/offset.rolling.html
 * @param {any} rise [in] square to the run; negative the other way
 * @param {any} roll [in] square to the run and to the rise; negative the other way
 * @returns {any[][]} true offset [in] and plane [°] from the rise toward the roll, with a header row
 */
export function offsetRolling(rise: any, roll: any): any[][] {
  return answer([rise, roll], (rise, roll) => {
    const { trueOffset, plane } = rollingOffset(toInches(rise, "rise"), toInches(roll, "roll"));
    return [
      ["True offset", "Plane"],
      [trueOffset, plane],
    ];
  });
}

/**
 * Angle, marks and shrink of the small offset that brings a conduit into a box; spills with a header row.
 *
 * Example: =CONDUIT.OFFSET.BOX(0.523) //=> Angle, First mark, Second mark, Shrink
 * Source: marks 2 and 8 in. from the end: Modern Residential Wiring (2015), p. 91; the angle is derived from the rise.
 * @customfunction OFFSET.BOX
 * @helpurl https://raceway-ledger.example/help/offset.box.html
 * @param {any} rise [in] from the conduit on the surface to the knockout, above 0
 * @param {any} [firstMark] [in] from the end of the conduit; omitted: 2
 * @param {any} [secondMark] [in] from the end of the conduit, above the first; omitted: 6 past the first
 * @param {any} [radius] [in] on the centerline; omitted: sharp corners
 * @returns {any[][]} angle [°], marks and shrink [in], with a header row
 */
export function offsetBox(rise: any, firstMark?: any, secondMark?: any, radius?: any): any[][] {
  return answer([rise, firstMark, secondMark, radius], (rise, firstMark, secondMark, radius) => {
    const first = optional(firstMark, (mark) => toInches(mark, "first mark", { min: 0 })) ?? BOX_OFFSET_MARKS.first;
    const second =
      optional(secondMark, (mark) => toInches(mark, "second mark", { above: first })) ?? first + BOX_OFFSET_MARKS.apart;
    const box = boxOffset(toInches(rise, "rise", { above: 0 }), first, second, readCornerForm(radius));
    return [
      ["Angle", "First mark", "Second mark", "Shrink"],
      [box.angle, first, second, box.shrink],
    ];
  });
}

/**
 * An offset by the handbook, with sharp corners and with true arcs, and the rise each makes; spills with a header row.
 *
 * Example: =CONDUIT.OFFSET.COMPARE(6,30,4) //=> Quantity, Handbook, Sharp corners, True arcs, Handbook off by
 * Source: OFFSET.SPACING and OFFSET.SHRINK; the rise derived, rise + error of the spacing·sin A.
 * @customfunction OFFSET.COMPARE
 * @helpurl https://raceway-ledger.example/help/offset.compare.html
 * @param {any} rise [in] above 0
 * @param {any} angle [°] of each bend, above 0 to 90
 * @param {any} radius [in] on the centerline, above 0
 * @returns {any[][]} each quantity [in] the three ways, with a header row
 */
export function offsetCompare(rise: any, angle: any, radius: any): any[][] {
  return answer([rise, angle, radius], (rise, angle, radius) =>
    comparisonTable(
      compareOffset(
        toInches(rise, "rise", { above: 0 }),
        readOffsetAngle(angle),
        toInches(radius, "radius", { above: 0 }),
      ),
    ),
  );
}
