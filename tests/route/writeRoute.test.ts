import fc from "fast-check";
import { readRoute } from "../../src/route/text/readRoute";
import { DIRECTIONS, type RouteStep } from "../../src/route/text/types";
import { writeRoute } from "../../src/route/text/writeRoute";

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true, minExcluded: true });
const length = double(0.001, 120000);
const coordinate = fc.oneof(
  length,
  length.map((value) => -value),
  fc.constant(0),
);
const direction = fc.constantFrom(...DIRECTIONS);
const rise = fc.record({ rise: length, toward: direction });
const slant = double(1e-6, 90);
const step: fc.Arbitrary<RouteStep> = fc.oneof(
  fc.record({ kind: fc.constant("leg" as const), direction, length }),
  fc.record({ kind: fc.constant("leg" as const), direction, length, back: fc.constant(true as const) }),
  fc.record({ kind: fc.constant("ahead" as const), length }),
  fc.record({ kind: fc.constant("to" as const), point: fc.tuple(coordinate, coordinate, coordinate) }),
  fc.record({ kind: fc.constant("bend" as const), angle: double(1e-6, 179), toward: direction }),
  fc.record({
    kind: fc.constant("offset" as const),
    rises: fc.array(rise, { minLength: 1, maxLength: 2 }),
    angle: slant,
  }),
  fc.record({ kind: fc.constant("box offset" as const), rise, angle: slant }),
  fc.record({
    kind: fc.constant("saddle" as const),
    height: length,
    toward: direction,
    over: fc.option(length),
    angle: slant,
  }),
  fc.record({ kind: fc.constant("elbow" as const), radius: fc.option(length) }),
  fc.record({ kind: fc.constant("sweep" as const), radius: length, shots: fc.option(fc.integer({ min: 2, max: 90 })) }),
  fc.constant({ kind: "box" as const }),
);

test("what is written reads back as the same steps, to the last digit", () => {
  fc.assert(
    fc.property(fc.array(step, { minLength: 1, maxLength: 12 }), (steps) => {
      expect(readRoute(writeRoute(steps))).toEqual(steps);
    }),
  );
});

test("a route is written in the words it is read in", () => {
  const text = `UP 4'; east 12' 6", sweep 24 in 9, offset 8 up and 12 east at 45, box offset 1/2 up, saddle 3 up over 12 at 30, stub 10 down`;
  expect(writeRoute(readRoute(text))).toBe(
    "up 48, east 150, sweep 24 in 9 shots, offset 8 up 12 east at 45, box offset 0.5 up at 5, " +
      "saddle 3 up over 12 at 30, down 10 to back",
  );
});

test("a very small length is written without an exponent", () => {
  expect(writeRoute([{ kind: "to", point: [-1.5e-7, 2, 0] }])).toBe("to -0.00000015 2 0");
});
