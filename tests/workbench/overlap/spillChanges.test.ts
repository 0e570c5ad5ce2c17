import fc from "fast-check";
import { changedSpills, copyOfSpills, withChanges } from "../../../workbench/engine/worker/spillChanges";

const cell = fc.record({ v: fc.constantFrom<string | number>(1, 2, "a", "#N/A"), t: fc.constantFrom(1, 2) });
const withMessage = fc.record({
  v: fc.constant("#N/A"),
  custom: fc.record({ message: fc.constantFrom("one", "two") }),
});
const level = <T>(inside: fc.Arbitrary<T>) => fc.dictionary(fc.constantFrom("0", "1", "2"), inside, { maxKeys: 3 });
const spills = level(level(level(level(fc.oneof(cell, withMessage)))));

/** Every cell with its place, whatever empty rows stand between. */
function cellsOf(levels: object, place = ""): string[] {
  return Object.entries(levels).flatMap(([key, inside]: [string, object | null]) =>
    place.split("/").length === 4
      ? [`${place}/${key} ${JSON.stringify(inside)}`]
      : cellsOf(inside ?? {}, `${place}/${key}`),
  );
}

test("what was held with the changes made is what there is now, and nothing given is written to", () => {
  fc.assert(
    fc.property(spills, spills, (before, now) => {
      const [first, second] = [JSON.stringify(before), JSON.stringify(now)];
      const held = copyOfSpills(before);
      expect(cellsOf(withChanges(held, structuredClone(changedSpills(held, now)))).sort()).toEqual(cellsOf(now).sort());
      expect([JSON.stringify(before), JSON.stringify(now)]).toEqual([first, second]);
    }),
  );
});

test("a cell that stayed is not sent", () => {
  const rows = { book: { sheet: { 0: { 0: { v: 1 }, 1: { v: 2 } }, 1: { 0: { v: 3 } } } } };
  const now = { book: { sheet: { 0: { 0: { v: 1 }, 1: { v: 5 } } } } };
  expect(changedSpills(rows, now)).toEqual({ book: { sheet: { 0: { 1: { v: 5 } }, 1: { 0: null } } } });
});
