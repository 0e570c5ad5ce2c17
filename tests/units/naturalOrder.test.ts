import fc from "fast-check";
import { naturalOrder } from "../../src/units/names/naturalOrder";

test("labels are sorted by the value of their digits, whatever their case", () => {
  const labels = ["R10", "r2", "R2", "Area 12", "area 3", "R1-B", "R1"];
  expect([...labels].sort(naturalOrder)).toEqual(["area 3", "Area 12", "R1", "R1-B", "R2", "r2", "R10"]);
});

test("the order does not depend on the order before", () => {
  const label = fc.string({ unit: fc.constantFrom("a", "B", "1", "0", "9", " ", "-"), maxLength: 5 });
  fc.assert(
    fc.property(fc.array(label, { maxLength: 8 }), (labels) => {
      const forward = [...labels].sort(naturalOrder);
      expect([...labels].reverse().sort(naturalOrder)).toEqual(forward);
    }),
  );
});

test("an empty label comes first", () => {
  expect(["5", "", "a"].sort(naturalOrder)).toEqual(["", "5", "a"]);
});
