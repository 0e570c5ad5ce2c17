import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";
import fc from "fast-check";
import { noteResultsQuickly } from "../../../workbench/engine/patches/quickIndex";

type Index = typeof CELL_INVERTED_INDEX_CACHE;

/** What an index holds of one column: rows by value, empty rows left out. */
function held(index: Index, column: number): [string, number[]][] {
  const rows = [...(index.getCellValuePositions("book", "sheet", column) ?? [])];
  return rows
    .filter(([, at]) => at.size > 0)
    .map(([value, at]): [string, number[]] => [`${typeof value} ${String(value)}`, [...at].sort()])
    .sort();
}

const value = fc.constantFrom<(string | number | boolean | null)[]>(
  "a",
  "A",
  "b",
  1,
  "1",
  0,
  -0,
  "",
  null,
  true,
  "#N/A",
);
/** A formula's result in a cell; no value stands for a formula that looks through the whole column. */
const event = fc.record({ column: fc.nat(1), row: fc.nat(3), value: fc.option(value, { nil: undefined }) });

test("of columns looked through, the quick index holds what the engine's own would, whatever comes in whatever order", () => {
  noteResultsQuickly();
  fc.assert(
    fc.property(fc.array(event, { maxLength: 40 }), (events) => {
      CELL_INVERTED_INDEX_CACHE.clear();
      const own = new (CELL_INVERTED_INDEX_CACHE.constructor as new () => Index)();
      const cells = [0, 1].map(() => Array<typeof value extends fc.Arbitrary<infer T> ? T : never>(4).fill(null));
      const lookedThrough = new Set<number>();
      for (const { column, row, value } of events) {
        for (const index of [own, CELL_INVERTED_INDEX_CACHE]) {
          if (value !== undefined) index.set("book", "sheet", column, value, row, true);
          else {
            cells[column]!.forEach((cell, at) => index.set("book", "sheet", column, cell, at));
            index.setContinueBuildingCache("book", "sheet", column, 0, 3);
          }
        }
        if (value === undefined) lookedThrough.add(column);
        else cells[column]![row] = value;
      }
      for (const column of lookedThrough) {
        expect(held(CELL_INVERTED_INDEX_CACHE, column)).toEqual(held(own, column));
      }
    }),
  );
});
