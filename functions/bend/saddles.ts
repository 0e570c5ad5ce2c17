import { readBendForm } from "../../src/bends/shapes/bendForm";
import { comparisonTable } from "../../src/bends/handbook/compare";
import { compareSaddle } from "../../src/bends/handbook/compareSaddle";
import { fourBendSaddle } from "../../src/bends/shapes/fourBendSaddle";
import { readOffsetAngle } from "../../src/bends/shapes/offset";
import { readHeightTo, saddleShrink, saddleSpacing } from "../../src/bends/shapes/saddle";
import { toAngle } from "../../src/units/angle";
import { toInches } from "../../src/units/length";
import { optional } from "../../src/units/limits";
import { answer } from "../cell/answer";

/**
 * Distance from the center mark of a three-bend saddle to either outer mark, along the conduit.
 *
 * With a radius it runs from the middle of the center bend to the outer end of the outer bend. The crest of the center
 * bend clears the height; its corner stands higher, by R·(1/cos(A/2) − 1).
 * Example: =CONDUIT.SADDLE.SPACING(4,45,4) //=> 12.0028
 * Source: derived from true arcs; "table": NAVEDTRA 14026 table 5-4 (45°), openly published trade notes (60°).
 * @customfunction SADDLE.SPACING
 * @helpurl https://raceway-ledger.example/help/saddle.spacing.html
 * @param {any} height [in] of the obstacle, above 0: the crest of the center bend clears it
 * @param {any} angle [°] of the center bend, above 0 and below 180; each outer bend has half of it
 * @param {any} [radius] [in] on the centerline; omitted: sharp corners; the word table: printed constants
 * @param {any} [heightTo] crest or corner: what the height is measured to; omitted: crest
 * @returns {number} spacing [in]
 */
export function saddleSpacingOf(height: any, angle: any, radius?: any, heightTo?: any): number {
  return answer([height, angle, radius, heightTo], (height, angle, radius, heightTo) =>
    saddleSpacing(
      toInches(height, "height", { above: 0 }),
      toAngle(angle, "angle"),
      readBendForm(radius),
      readHeightTo(heightTo),
    ),
  );
}

/**
 * How far the center mark of a three-bend saddle moves ahead of the obstacle's center: the shrink of one half.
 *
 * The whole saddle shortens the conduit's reach by twice as much.
 * Example: =CONDUIT.SADDLE.SHRINK(4,45,"table") //=> 0.75
 * Source: derived from true arcs; "table": NAVEDTRA 14026 table 5-4 (45°), openly published trade notes (60°).
 * @customfunction SADDLE.SHRINK
 * @helpurl https://raceway-ledger.example/help/saddle.shrink.html
 * @param {any} height [in] of the obstacle, above 0: the crest of the center bend clears it
 * @param {any} angle [°] of the center bend, above 0 and below 180; each outer bend has half of it
 * @param {any} [radius] [in] on the centerline; omitted: sharp corners; the word table: printed constants
 * @param {any} [heightTo] crest or corner: what the height is measured to; omitted: crest
 * @returns {number} shrink up to the center [in]
 */
export function saddleShrinkOf(height: any, angle: any, radius?: any, heightTo?: any): number {
  return answer([height, angle, radius, heightTo], (height, angle, radius, heightTo) =>
    saddleShrink(
      toInches(height, "height", { above: 0 }),
      toAngle(angle, "angle"),
      readBendForm(radius),
      readHeightTo(heightTo),
    ),
  );
}

/**
 * Marks of a four-bend saddle: two equal offsets over an obstacle, straight over its whole width; spills with a header row.
 *
 * Marks are counted from the first and lined up the same way. Shrink is what the bends up to that mark shorten.
 * Example: =CONDUIT.SADDLE.FOUR(3,12,30) //=> Mark, From first, Angle, Shrink
 * Source: derived, two offsets; marks 2 and 3 a width apart (and one arc, with a radius): common practice, no source.
 * @customfunction SADDLE.FOUR
 * @helpurl https://raceway-ledger.example/help/saddle.four.html
 * @param {any} height [in] of the obstacle with its clearance, above 0
 * @param {any} width [in] of the obstacle with its clearance, 0 or more
 * @param {any} angle [°] of each bend, above 0 to 90
 * @param {any} [radius] [in] on the centerline; omitted: sharp corners; the word table: printed constants
 * @returns {any[][]} a row for each of four marks, with a header row
 */
export function saddleFour(height: any, width: any, angle: any, radius?: any): any[][] {
  return answer([height, width, angle, radius], (height, width, angle, radius) => {
    const bend = readOffsetAngle(angle);
    const saddle = fourBendSaddle(
      toInches(height, "height", { above: 0 }),
      toInches(width, "width", { min: 0 }),
      bend,
      readBendForm(radius),
    );
    const rows = saddle.map(({ at, shrink }, place) => [place + 1, at, bend, shrink]);
    return [["Mark", "From first", "Angle", "Shrink"], ...rows];
  });
}

/**
 * A three-bend saddle by the handbook, with sharp corners and with true arcs, and the crest each makes; spills with a header row.
 *
 * Outer marks are for the arrow, with the hook toward the center mark or away from it: the handbook does not say which,
 * and it matters. The center mark is for the notch.
 * Example: =CONDUIT.SADDLE.COMPARE(4,45,4,0.647) //=> Quantity, Handbook, Sharp corners, True arcs, Handbook off by
 * Source: SADDLE.SPACING and SADDLE.SHRINK; the crest derived, height + error of the spacing·sin(A/2).
 * @customfunction SADDLE.COMPARE
 * @helpurl https://raceway-ledger.example/help/saddle.compare.html
 * @param {any} height [in] of the obstacle, above 0: the crest of the center bend is to clear it
 * @param {any} angle [°] of the center bend, above 0 and below 180
 * @param {any} radius [in] on the centerline, above 0
 * @param {any} [arrowLead] [in] from the arrow to the start of the bend; omitted: 0
 * @returns {any[][]} each quantity [in] the three ways, with a header row
 */
export function saddleCompare(height: any, angle: any, radius: any, arrowLead?: any): any[][] {
  return answer([height, angle, radius, arrowLead], (height, angle, radius, arrowLead) =>
    comparisonTable(
      compareSaddle(
        toInches(height, "height", { above: 0 }),
        toAngle(angle, "angle"),
        toInches(radius, "radius", { above: 0 }),
        optional(arrowLead, (lead) => toInches(lead, "arrow lead")) ?? 0,
      ),
    ),
  );
}
