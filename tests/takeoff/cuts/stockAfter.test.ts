/** Stock once a plan is cut, by hand. */
import { stockAfter, type StockChange } from "../../../src/takeoff/cuts/stockAfter";

const STOCK = [
  ["Rack", "Raceway", "Size", "Length", "On hand", "Price", "Note"],
  ["", "EMT", "1/2", "10'", "", 7.4, ""],
  ["B2", "EMT", "1/2", `4' 2"`, 3, "", "painted"],
  ["B3", "EMT", "1/2", 50, 1, "", ""],
  ["B4", "EMT", "3/4", 50, 2, "", ""],
];
const drop = (length: number, count: number, names: string) => ({ length, cell: length, count, names });
const change = (more: Partial<StockChange>): StockChange => ({
  ...{ raceway: "EMT", size: "1/2", used: [], drops: [] },
  ...more,
});
/** Stock with the cells written over it. */
const after = (range: (string | number)[][], ...changes: StockChange[]) => {
  const cells: unknown[][] = range.map((row) => [...row]);
  for (const { row, column, cell } of stockAfter(range, changes)) (cells[row] ??= [])[column] = cell;
  return cells;
};

test("sticks used come off the rows of their raceway, size and length, however that is written; no other is touched", () => {
  const cells = after(STOCK, change({ used: [{ length: 50, count: 2 }] }));
  expect(cells[2]).toEqual(["B2", "EMT", "1/2", `4' 2"`, 1, "", "painted"]);
  expect([cells[1], cells[3], cells[4]]).toEqual([STOCK[1], STOCK[3], STOCK[4]]);
});

test("a row that runs out is emptied, the next one gives the rest; columns of other people's stay", () => {
  const cells = after(STOCK, change({ used: [{ length: 50, count: 4 }] }));
  expect([cells[2], cells[3]]).toEqual([
    ["B2", "", "", "", "", "", ""],
    ["B3", "", "", "", "", "", ""],
  ]);
});

test("a drop joins the row of its length; others stand under the last row, named", () => {
  const drops = [drop(50, 2, "drop 1 to 2"), drop(19.875, 1, "drop 3")];
  const cells = after(STOCK, change({ drops }));
  expect(cells[2]).toEqual(["B2", "EMT", "1/2", `4' 2"`, 5, "", "painted; drop 1 to 2"]);
  expect(cells[5]).toEqual([undefined, "EMT", "1/2", 19.875, 1, undefined, "drop 3"]);
});

test("a drop as long as a row that this very plan uses up has a row of its own", () => {
  const one = [STOCK[0]!, STOCK[3]!];
  const cells = after(one, change({ used: [{ length: 50, count: 1 }], drops: [drop(50, 1, "drop 1")] }));
  expect(cells.slice(1)).toEqual([
    ["B3", "", "", "", "", "", ""],
    [undefined, "EMT", "1/2", 50, 1, undefined, "drop 1"],
  ]);
});

test("a drop as long as a stick that is bought is not bought: it has a row of its own", () => {
  const cells = after(STOCK, change({ drops: [drop(120, 1, "drop 1")] }));
  expect(cells[1]).toEqual(STOCK[1]);
  expect(cells[5]).toEqual([undefined, "EMT", "1/2", 120, 1, undefined, "drop 1"]);
});

test("equal drops of two sizes do not mix", () => {
  const drops = [drop(50, 1, "drop 1")];
  const cells = after(STOCK, change({ size: "3/4", drops }), change({ size: "1", drops: [drop(50, 1, "drop 2")] }));
  expect(cells.slice(2)).toEqual([
    STOCK[2],
    STOCK[3],
    ["B4", "EMT", "3/4", 50, 3, "", "drop 1"],
    [undefined, "EMT", "1", 50, 1, undefined, "drop 2"],
  ]);
});

test("empty rows at the end of the range are filled first", () => {
  const cells = after([...STOCK, ["", "", "", "", "", "", ""]], change({ drops: [drop(30, 1, "drop 1")] }));
  expect(cells[5]).toEqual(["", "EMT", "1/2", 30, 1, "", "drop 1"]);
});
