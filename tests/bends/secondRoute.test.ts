/** Exact formulas against a bent centerline that is integrated step by step. Lengths [in], angles [°]. */
import fc from "fast-check";
import { boxOffset } from "../../src/bends/shapes/boxOffset";
import { fourBendSaddle } from "../../src/bends/shapes/fourBendSaddle";
import { kickLength, kickRise } from "../../src/bends/shapes/kick";
import { kickNinety } from "../../src/bends/shapes/kickNinety";
import { offsetShrink, offsetSpacing } from "../../src/bends/shapes/offset";
import { leastRise } from "../../src/bends/shapes/offsetShape";
import { saddleShrink, saddleSpacing } from "../../src/bends/shapes/saddle";
import { sweepError, sweepLayout, sweepMarks } from "../../src/bends/groups/sweep";
import { placeAt, type Bend } from "../support/bentLine";

/** Exact paths are held to this [in]. */
const EXACT = 1e-9;
const near = (value: number, expected: number) => expect(Math.abs(value - expected)).toBeLessThan(EXACT);
const arc = (angle: number, radius: number) => (angle * Math.PI * radius) / 180;

const angles = fc.double({ min: 2, max: 89, noNaN: true });
const radii = fc.double({ min: 0.5, max: 30, noNaN: true });
const spare = fc.double({ min: 0.01, max: 40, noNaN: true });

test("an offset bent at its spacing rises by the rise and reaches short by the shrink", () => {
  fc.assert(
    fc.property(angles, radii, spare, (angle, radius, more) => {
      const rise = leastRise(angle, radius) + more;
      const spacing = offsetSpacing(rise, angle, radius);
      const bends: Bend[] = [
        { start: 7, angle, radius },
        { start: 7 + spacing, angle: -angle, radius },
      ];
      const length = 7 + spacing + arc(angle, radius) + 3;
      const end = placeAt(bends, length);
      near(end.y, rise);
      near(end.heading, 0);
      near(length - end.x, offsetShrink(rise, angle, radius));
    }),
    { numRuns: 60 },
  );
});

test("a three-bend saddle bent at its spacing clears the height with its crest and reaches short by the shrink", () => {
  fc.assert(
    fc.property(fc.double({ min: 4, max: 120, noNaN: true }), radii, spare, (angle, radius, more) => {
      const height = 4 * radius + more;
      const spacing = saddleSpacing(height, angle, radius);
      const bends: Bend[] = [
        { start: 5, angle: angle / 2, radius },
        { start: 5 + spacing - arc(angle, radius) / 2, angle: -angle, radius },
      ];
      const crest = placeAt(bends, 5 + spacing);
      near(crest.y, height);
      near(crest.heading, 0);
      near(5 + spacing - crest.x, saddleShrink(height, angle, radius));
    }),
    { numRuns: 60 },
  );
});

test("with the height to the corner, the tangents of the center bend meet at the height", () => {
  const spacing = saddleSpacing(4, 45, 4, "corner");
  const [bends, start] = [[{ start: 0, angle: 22.5, radius: 4 }], spacing - arc(45, 4) / 2];
  const tangent = placeAt(bends, start);
  near(tangent.y + 4 * Math.tan(Math.PI / 8) * Math.sin(Math.PI / 8), 4);
});

test("a four-bend saddle runs straight at its height over the whole width and comes back down", () => {
  const [height, width, angle, radius] = [3, 12, 37, 4];
  const marks = fourBendSaddle(height, width, angle, radius);
  const turns = [1, -1, -1, 1];
  const bends = marks.map(({ at }, index) => ({ start: 9 + at, angle: turns[index]! * angle, radius }));
  const topStart = bends[1]!.start + arc(angle, radius);
  const topEnd = bends[2]!.start;
  near(topEnd - topStart, width);
  near(placeAt(bends, topStart).y, height);
  near(placeAt(bends, topEnd).y, height);
  const length = bends[3]!.start + arc(angle, radius) + 2;
  const end = placeAt(bends, length);
  near(end.y, 0);
  near(length - end.x, marks[3]!.shrink);
  near(topStart - placeAt(bends, topStart).x, marks[1]!.shrink);
  expect(marks[0]).toEqual({ at: 0, shrink: 0 });
  expect(marks[2]!.shrink).toBe(marks[1]!.shrink);
});

test("with sharp corners and in the handbook the inner marks of a four-bend saddle stand a width apart", () => {
  const inner = (marks: readonly { at: number }[]) => marks[2]!.at - marks[1]!.at;
  near(inner(fourBendSaddle(3, 12, 30)), 12);
  near(inner(fourBendSaddle(3, 12, 30, "table")), 12);
});

test("a box offset bent at its two marks rises by the rise", () => {
  const { angle, shrink } = boxOffset(0.75, 2, 8, 4);
  const bends = [
    { start: 2, angle, radius: 4 },
    { start: 8, angle: -angle, radius: 4 },
  ];
  const end = placeAt(bends, 20);
  near(end.y, 0.75);
  near(20 - end.x, shrink);
});

test("a kick bent a length before the end moves the end aside by the rise, and back", () => {
  fc.assert(
    fc.property(angles, radii, spare, (angle, radius, more) => {
      const length = arc(angle, radius) + more;
      const rise = kickRise(length, angle, radius);
      near(placeAt([{ start: 6, angle, radius }], 6 + length).y, rise);
      near(kickLength(rise, angle, radius), length);
    }),
    { numRuns: 60 },
  );
});

test("a 90 kicked at its mark stands aside by the rise: its corner lies OD/2 inside its back", () => {
  const start = kickNinety(6, 28, 0.922, 4.5);
  near(placeAt([{ start: 0, angle: 28, radius: 4.5 }], start - 0.922 / 2).y, 6);
});

/** The conduit of a sweep whose marks are the middles of its shots. */
const shotsAt = (marks: readonly { mark: number; angle: number }[], shoe: number): Bend[] =>
  marks.map(({ mark, angle }) => ({ start: mark - arc(angle, shoe) / 2, angle, radius: shoe }));

test("a sweep spaced for its shoe ends on the ideal arc's tangent", () => {
  const layout = sweepLayout(75, 24, 7, 4);
  const end = placeAt(shotsAt(sweepMarks(layout), 4), 7 * layout.spacing);
  near(end.heading, 75);
  near(end.x, 24 * Math.sin((75 * Math.PI) / 180));
  near(end.y, 24 * (1 - Math.cos((75 * Math.PI) / 180)));
});

test("a sweep at the handbook's spacing touches the smaller circle and bulges out of it as told", () => {
  const layout = sweepLayout(75, 24, 7);
  const error = sweepError(75, 24, 7, 4);
  const bends = shotsAt(sweepMarks(layout), 4);
  const end = placeAt(bends, 7 * layout.spacing);
  near(end.x, error.radius * Math.sin((75 * Math.PI) / 180));
  const outOfCircle = Array.from({ length: 141 }, (_, step) => {
    const { x, y } = placeAt(bends, (step / 140) * 7 * layout.spacing);
    return Math.hypot(x, y - error.radius) - error.radius;
  });
  near(Math.max(...outOfCircle), error.bulge);
  expect(Math.min(...outOfCircle)).toBeGreaterThan(-EXACT);
  expect(error.bulge).toBeGreaterThan(0.05);
  near(error.spacingError, sweepLayout(75, 24, 7, 4).spacing - layout.spacing);
  near(error.shortOfTangent, (24 - error.radius) * Math.tan((37.5 * Math.PI) / 180));
});
