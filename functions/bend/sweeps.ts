import { concentricGroup } from "../../src/bends/groups/concentricGroup";
import { sweepError, sweepLayout, sweepMarks } from "../../src/bends/groups/sweep";
import { toAngle } from "../../src/units/angle";
import { toInches } from "../../src/units/length";
import { toNumber } from "../../src/units/number";
import { optional } from "../../src/units/limits";
import { answer } from "../cell/answer";

/**
 * Marks of a sweep bent in equal shots, each mark the middle of its shot; spills with a header row.
 *
 * Without the shoe's radius the sweep's arc is parted into equal lengths, as the handbook has it. With it, the marks end
 * exactly on the tangents of the ideal arc.
 * Example: =CONDUIT.SWEEP.MARKS(90,24,9) //=> Shot, Mark, Angle, Total angle
 * Source: arc over shots: NJATC Conduit Fabrication, level II, lesson 4; with the shoe's radius derived.
 * @customfunction SWEEP.MARKS
 * @helpurl https://raceway-ledger.example/help/sweep.marks.html
 * @param {any} angle [°] of the whole sweep, above 0 and below 180
 * @param {any} radius [in] of the sweep on the centerline, above 0
 * @param {any} shots bends of equal angle, 2 to 180
 * @param {any} [firstMark] [in] where the first mark stands; omitted: half a spacing past the start of the sweep
 * @param {any} [shoeRadius] [in] on the centerline, at most the sweep's; omitted: the handbook's equal parts
 * @returns {any[][]} a row for each shot, with a header row
 */
export function sweepMarksOf(angle: any, radius: any, shots: any, firstMark?: any, shoeRadius?: any): any[][] {
  return answer([angle, radius, shots, firstMark, shoeRadius], (angle, radius, shots, firstMark, shoeRadius) => {
    const layout = sweepLayout(
      toAngle(angle, "angle"),
      toInches(radius, "radius", { above: 0 }),
      readShots(shots),
      optional(shoeRadius, (shoe) => toInches(shoe, "shoe radius", { above: 0 })),
    );
    const first = optional(firstMark, (mark) => toInches(mark, "first mark", { min: 0 }));
    return [
      ["Shot", "Mark", "Angle", "Total angle"],
      ...sweepMarks(layout, first).map(({ shot, mark, angle: turn, total }) => [shot, mark, turn, total]),
    ];
  });
}

/**
 * What a sweep bent in shots makes of the ideal arc: radius touched, reach, bulge and spacing; spills with a header row.
 *
 * Example: =CONDUIT.SWEEP.ERROR(90,24,9,4) //=> Quantity, Inches, Meaning
 * Source: derived, a polygon of straights and true arcs of the shoe's radius, marked at equal parts of the ideal arc.
 * @customfunction SWEEP.ERROR
 * @helpurl https://raceway-ledger.example/help/sweep.error.html
 * @param {any} angle [°] of the whole sweep, above 0 and below 180
 * @param {any} radius [in] of the sweep on the centerline, above 0
 * @param {any} shots bends of equal angle, 2 to 180
 * @param {any} shoeRadius [in] on the centerline, at most the sweep's
 * @returns {any[][]} each difference [in] and what it means, with a header row
 */
export function sweepErrorOf(angle: any, radius: any, shots: any, shoeRadius: any): any[][] {
  return answer([angle, radius, shots, shoeRadius], (angle, radius, shots, shoeRadius) => {
    const error = sweepError(
      toAngle(angle, "angle"),
      toInches(radius, "radius", { above: 0 }),
      readShots(shots),
      toInches(shoeRadius, "shoe radius", { above: 0 }),
    );
    return [
      ["Quantity", "Inches", "Meaning"],
      ["Radius touched", error.radius, "of the circle that the finished sweep touches between its shots"],
      [
        "Short of the tangent",
        error.shortOfTangent,
        "how much nearer to the corner each end lies than the ideal arc's",
      ],
      ["Bulge", error.bulge, "how far each shot stands out of the circle touched"],
      ["Spacing to add", error.spacingError, "on each spacing, to end on the tangents of the ideal arc"],
    ];
  });
}

/**
 * Radii and arcs of conduits that turn side by side around one center; spills with a header row.
 *
 * Example: =CONDUIT.SWEEP.PARALLEL(24,3,3) //=> Conduit, Radius, Arc
 * Source: derived, radius + spacing for each next conduit outward.
 * @customfunction SWEEP.PARALLEL
 * @helpurl https://raceway-ledger.example/help/sweep.parallel.html
 * @param {any} radius [in] of the innermost conduit on the centerline, above 0
 * @param {any} spacing [in] from center to center of neighbors
 * @param {any} count conduits, 1 to 100
 * @param {any} [angle] [°] of the sweep, above 0 to 180; omitted: 90
 * @returns {any[][]} a row for each conduit from the inside out, with a header row
 */
export function sweepParallel(radius: any, spacing: any, count: any, angle?: any): any[][] {
  return answer([radius, spacing, count, angle], (radius, spacing, count, angle) => [
    ["Conduit", "Radius", "Arc"],
    ...concentricGroup(
      toInches(radius, "radius", { above: 0 }),
      toInches(spacing, "spacing", { above: 0 }),
      toNumber(count, "count", { min: 1, max: 100, integer: true }),
      optional(angle, (turn) => toAngle(turn, "angle", { above: 0, max: 180 })),
    ).map(({ conduit, radius: own, arc }) => [conduit, own, arc]),
  ]);
}

const readShots = (shots: unknown): number => toNumber(shots, "shots", { min: 2, max: 180, integer: true });
