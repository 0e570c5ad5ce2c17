/** Random runs for properties: legs long enough for their bends, all turns in three dimensions. */
import fc from "fast-check";
import type { PathBend } from "../../src/geometry/path";

export interface RandomParts {
  legs: number[];
  bends: PathBend[];
}

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** One to six bends, 5° to 120°, radius 3 to 7 in., legs 40 to 200 in. The first rotation is 0, as pathParts tells it. */
export const randomParts: fc.Arbitrary<RandomParts> = fc
  .array(fc.record({ angle: number(5, 120), radius: number(3, 7), rotation: number(-179, 179) }), {
    minLength: 1,
    maxLength: 6,
  })
  .chain((bends) =>
    fc.record({
      legs: fc.array(number(40, 200), { minLength: bends.length + 1, maxLength: bends.length + 1 }),
      bends: fc.constant(bends.map((bend, index) => (index === 0 ? { ...bend, rotation: 0 } : bend))),
    }),
  );
