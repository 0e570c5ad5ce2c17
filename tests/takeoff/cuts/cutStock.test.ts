/** The user's stock: which rows are read, which are told. */
import { isPriced, readStock } from "../../../src/takeoff/cuts/cutStock";

const stockOf = (...rows: (string | number | null)[][]) =>
  readStock([["Raceway", "Size", "Length", "On hand", "Price"], ...rows]);

test("no stock has nothing and no problems", () => {
  for (const none of [null, undefined]) {
    expect(readStock(none).problems).toEqual([]);
    expect(readStock(none).sticksFor("EMT", "1/2")).toEqual([]);
  }
});

test("an empty cell and the word buy are sticks to be bought, a number is on hand", () => {
  const stock = stockOf(
    ["EMT", "1/2", "10'", " Buy ", 4.5],
    ["EMT", "1/2", 240, null, null],
    ["EMT", "1/2", 70, 3, null],
  );
  expect(stock.problems).toEqual([]);
  expect(stock.sticksFor("EMT", "1/2")).toEqual([
    { length: 120, onHand: null, price: 4.5 },
    { length: 240, onHand: null, price: null },
    { length: 70, onHand: 3, price: null },
  ]);
  expect(stock.sticksFor("EMT", "3/4")).toEqual([]);
  expect(stock.sticksFor("IMC", "1/2")).toEqual([]);
});

test("columns go by their other names", () => {
  const range = [
    ["Raceway", "Size", "Stick", "Quantity"],
    ["EMT", "1/2", 70, 2],
  ];
  expect(readStock(range).sticksFor("EMT", "1/2")).toEqual([{ length: 70, onHand: 2, price: null }]);
});

test("rows that cannot be read are told by their number, and hide no other", () => {
  const stock = stockOf(
    ["tin", "1/2", 120, null, null],
    ["EMT", "9", 120, null, null],
    ["EMT", "1/2", 0, null, 1],
    ["EMT", "1/2", 481, null, null],
    ["EMT", "1/2", 120, 1.5, null],
    ["EMT", "1/2", 120, -1, null],
    ["EMT", "1/2", 120, "some", null],
    ["EMT", "1/2", 120, 2, -1],
    ["EMT", "1/2", 120, 0, null],
    ["EMT", "1/2", 480, 1, null],
  );
  expect(stock.problems).toEqual([
    expect.stringMatching(/^stock row 2: Raceway must be /),
    expect.stringMatching(/^stock row 3: Size must be /),
    expect.stringMatching(/^stock row 4: Length must be /),
    "stock row 5: Length must be above 0 in. and at most 480 in.; got 481 in.",
    "stock row 6: On hand must be a whole number at least 0; got 1.5.",
    "stock row 7: On hand must be a whole number at least 0; got -1.",
    'stock row 8: On hand must be a number; got "some".',
    "stock row 9: Price must be at least 0 and at most 10000; got -1.",
    "stock row 10: On hand is 0, so none is taken; for sticks to be bought write buy, since an empty cell may be " +
      "handed over as 0.",
  ]);
  expect(stock.sticksFor("EMT", "1/2")).toEqual([
    { length: 120, onHand: 0, price: null },
    { length: 480, onHand: 1, price: null },
  ]);
});

test("a stock without a needed column is refused", () => {
  expect(() => readStock([["Price"]])).toThrow('stock must have the columns "Raceway", "Size", "Length"');
});

test("a plan is by money when sticks to be bought have a price, whatever is on hand", () => {
  const [bought, priced] = [
    { length: 120, onHand: null, price: null },
    { length: 120, onHand: null, price: 4 },
  ];
  const offcut = { length: 60, onHand: 1, price: null };
  expect([isPriced([priced, offcut]), isPriced([bought, offcut]), isPriced([bought, { ...offcut, price: 1 }])]).toEqual(
    [...[true, false, false]],
  );
});
