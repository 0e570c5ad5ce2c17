/** Test bends read from a range, where a springback of 0 may be an empty cell. [°] */
import { readSpringbackTests } from "../../src/bends/testBends/readTestBends";

const read = (...row: unknown[]) => readSpringbackTests([["Angle", "Springback", "Dial"], row]);

test("a springback of 0 beside a dial reading is an empty cell: the reading counts", () => {
  expect(read(90, 0, 93.5)).toEqual([{ angle: 90, springback: 3.5 }]);
  expect(read(90, null, 90)).toEqual([{ angle: 90, springback: 0 }]);
  expect(read(90, 2, 93.5)).toEqual([{ angle: 90, springback: 2 }]);
});

test("a springback of 0 alone is refused, with what to write instead", () => {
  expect(() => read(90, 0, null)).toThrow(
    "tests row 2: Springback is 0 or empty; for a bend that did not spring back write the Dial reading, the same as its Angle.",
  );
  expect(() => read(90, null, null)).toThrow(/^tests row 2: Dial must be /);
});
