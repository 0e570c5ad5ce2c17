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
const note = fc.record({ column: fc.nat(1), row: fc.nat(3), value, force: fc.boolean() });

test("the quick index holds what the engine's own would, whatever is noted in whatever order", () => {
  noteResultsQuickly();
  fc.assert(
    fc.property(fc.array(note, { maxLength: 40 }), (notes) => {
      CELL_INVERTED_INDEX_CACHE.clear();
      const own = new (CELL_INVERTED_INDEX_CACHE.constructor as new () => Index)();
      const noted = new Set<string>();
      for (const { column, row, value, force } of notes) {
        // The engine notes a row without force only once, while it reads a column for the first time.
        const first = !noted.has(`${column}/${row}`);
        noted.add(`${column}/${row}`);
        for (const index of [own, CELL_INVERTED_INDEX_CACHE]) {
          index.set("book", "sheet", column, value, row, force || !first);
        }
      }
      for (const column of [0, 1]) expect(held(CELL_INVERTED_INDEX_CACHE, column)).toEqual(held(own, column));
    }),
  );
});
