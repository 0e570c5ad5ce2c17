import { cutList } from "../../../src/takeoff/cuts/cutList";
import { records, rowWhere } from "../tables";

const column = (...cells: (string | number | null)[]) => cells.map((cell) => [cell]);
const plan = (
  lengths: unknown,
  quantities: unknown = null,
  stock: unknown = null,
  kerf: unknown = null,
  keep: unknown = null,
) => cutList(lengths, quantities, stock, kerf, keep);

test("pieces that fill their sticks to the end: 2 x 60 and 3 x 40 from 120", () => {
  const table = plan(column(60, 40), column(2, 3));
  expect(table[0]).toEqual(["Sticks", "Stick", "Cut", "Left over", "Note", "Drop", "Drop to"]);
  expect(rowWhere(table, { Stick: "all" })).toEqual({
    Sticks: 2,
    Stick: "all",
    Cut: "2 sticks to buy; at least 2 needed: proven least",
    "Left over": "",
    Note: "waste 0 ft, 0 %; stop set 2 times in this order",
    ...{ Drop: "", "Drop to": "" },
  });
  const patterns = records(table).slice(1);
  expect(patterns.map((row) => [row["Sticks"], row["Cut"], row["Left over"]]).sort()).toEqual([
    [1, '2 × 60"', "none"],
    [1, '3 × 40"', "none"],
  ]);
});

test("the saw takes its cut between pieces: 3 x 40 do not come from 120 with a kerf", () => {
  const table = plan(column(40), column(3), 120, 1 / 16);
  // 2 x 40 and two cuts leave 39-7/8 in.; 40 and one cut leave 79-15/16 in.
  expect(
    records(table)
      .slice(1)
      .map((row) => [row["Cut"], row["Left over"]]),
  ).toEqual([
    ['2 × 40"', '39-7/8"'],
    ['40"', '79-15/16"'],
  ]);
  expect(rowWhere(table, { Stick: "all" })).toMatchObject({ Sticks: 2, "Left over": 'longest 79-15/16"' });
});

test("offcuts shorter than what is kept are waste", () => {
  const note = (keep: number) => rowWhere(plan(column(100), null, 120, 0, keep), { Stick: "all" })["Note"];
  expect(note(20)).toMatch(/^waste 0 ft, 0 %; 1.67 ft kept/);
  expect(note(20.5)).toBe("waste 1.67 ft, 16.7 %");
});

test("lengths may be text, in a row or a column, with empty cells; without quantities there is one of each", () => {
  const table = plan([[`3' 4"`, null, `40-1/2"`, ""]]);
  expect(records(table)[1]!["Cut"]).toBe('40-1/2", 40"');
});

test("offcuts on hand are used where they save a stick, never more often than they are there", () => {
  const stock = [
    ["Length", "On hand"],
    [120, null],
    [70, 1],
  ];
  const table = plan(column(65), column(3), stock);
  expect(rowWhere(table, { Stick: "all" })).toMatchObject({ Sticks: 3 });
  expect(rowWhere(table, { Stick: "all" })["Note"]).toContain("1 of the sticks on hand, 2 to buy");
  expect(rowWhere(table, { Stick: '70" on hand' })).toMatchObject({ Sticks: 1, Cut: '65"' });
});

test("with prices the plan is the cheapest, not the one with the fewest sticks", () => {
  const stock = (long: number) => [
    ["Length", "Price"],
    [120, 10],
    [240, long],
  ];
  const cut = (long: number) => rowWhere(plan(column(100), column(2), stock(long)), { Stick: "all" })["Cut"];
  expect(cut(20.5)).toBe("2 sticks to buy for 20.00; at least 20.00 needed: proven least");
  expect(cut(19.25)).toBe("1 stick to buy for 19.25; at least 19.25 needed: proven least");
});

test("when only what is on hand may be used, the pieces without a stick are named", () => {
  const stock = [
    ["Length", "On hand"],
    [120, 1],
  ];
  const table = plan(column(80), column(2), stock);
  expect(rowWhere(table, { Stick: "no stick left" })).toMatchObject({
    Cut: '80"',
    Note: "not cut: add sticks to Stock",
  });
});

test("millimeters are planned in millimeters", () => {
  const table = plan(column("1028 mm", "990 mm"), null, "3000 mm", "2 mm");
  expect(records(table)[1]).toMatchObject({ Stick: "3000 mm", Cut: "1028 mm, 990 mm", "Left over": "978 mm" });
});

test.each([
  ["a length off the grid", () => plan(column(40.01)), "got 40.01 in. among them. Round it first."],
  ["inches beside millimeters", () => plan(column("1028 mm", "3/16")), "or all of 0.1 mm; got 0.1875 in. among them"],
  ["a length of nothing", () => plan(column(40, 0), column(1, 1)), "length 2 must be above 0 in.; got 0 in."],
  ["words", () => plan(column("long")), "length 1 must be"],
  ["no lengths", () => plan(column(null, null)), "lengths must have at least one length; got an empty range."],
  [
    "a missing quantity",
    () => plan(column(40, 50), column(2, null)),
    "quantity 2 must be a number; got an empty cell.",
  ],
  ["half a piece", () => plan(column(40), column(1.5)), "quantity 1 must be a whole number at least 0; got 1.5."],
  [
    "too few quantities",
    () => plan(column(40, 50, 60), column(2, 1)),
    "quantities must have as many cells as lengths, 3; got 2.",
  ],
  [
    "a piece longer than its stick",
    () => plan(column(130)),
    `piece length must be at most the longest stick, 120"; got 130".`,
  ],
  ["a wide saw", () => plan(column(40), null, 120, 2), "kerf must be at least 0 in. and at most 1 in.; got 2 in."],
  [
    "a stock without lengths",
    () => plan(column(40), null, [["Raceway", "Size"]]),
    'stock must have the column "Length"',
  ],
])("%s is refused", (_, call, message) => {
  expect(call).toThrow(message);
});

test("empty cells may be handed over as 0: passed over without a quantity, or with one of 0", () => {
  const cuts = (table: (string | number)[][]) => table.slice(2).map((row) => row[2]);
  expect(cuts(plan(column(40, 0)))).toEqual(['40"']);
  expect(cuts(plan(column(40, 0), column(1, 0)))).toEqual(['40"']);
  expect(cuts(plan(column(40, null), column(1, null)))).toEqual(['40"']);
  expect(cuts(plan(column(40, null), column(1, 0)))).toEqual(['40"']);
});

test("a length with a quantity of 0 is told as not cut, by its place", () => {
  const table = plan(column(40, 50, 60), column(1, 0, 0));
  expect(table.slice(3)).toEqual([
    ["", "not cut", "", "", "quantity 2 is 0 or empty", "", ""],
    ["", "not cut", "", "", "quantity 3 is 0 or empty", "", ""],
  ]);
});

test("a quantity that is missing in the first place is missed, too", () => {
  expect(() => plan(column(40, 50), column(null, 2))).toThrow("quantity 1 must be a number; got an empty cell.");
});

test("one cell is a stick's length, and an empty text the usual one; a range of one column is a stock", () => {
  const stick = (stock: unknown) => plan(column(40), null, stock)[2]![1];
  expect([stick([[96]]), stick(""), stick([["Length"], [84]]), stick([["Stick"], [72]])]).toEqual([
    ...['96"', '120"', '84"', '72"'],
  ]);
});

test.each([
  ["a stick of nothing", 0, "stock must be above 0 in. and at most 480 in.; got 0 in."],
  ["a stick longer than they come", [[481]], "stock must be above 0 in. and at most 480 in.; got 481 in."],
  ["a row that cannot be read", [["Length"], ["long"]], "stock row 2: Length must be"],
  [
    "a price beyond what is planned with",
    [
      ["Length", "Price"],
      [120, 10_001],
    ],
    "stock row 2: Price must be at least 0.001 and at most 10000; got 10001.",
  ],
  [
    "a price of next to nothing",
    [
      ["Length", "Price"],
      [120, 0.0004],
    ],
    "stock row 2: Price must be at least 0.001 and at most 10000; got 0.0004.",
  ],
  [
    "no stick at all",
    [
      ["Length", "On hand"],
      [120, 0],
    ],
    "stocks must have at least one stick; every quantity is 0.",
  ],
])("%s is refused", (_, stock, message) => {
  expect(() => plan(column(40), null, stock)).toThrow(message);
});

test("no stick at all is refused, too, where nothing is to be cut", () => {
  const none = [
    ["Length", "On hand"],
    [120, 0],
  ];
  expect(() => plan(column(40), column(0), none)).toThrow("stocks must have at least one stick; every quantity is 0.");
});

test("the dearest and the cheapest price that is planned with", () => {
  const cut = (price: number) =>
    plan(column(40), null, [
      ["Length", "Price"],
      [120, price],
    ])[1]![2];
  expect(cut(10_000)).toBe("1 stick to buy for 10,000.00; at least 10,000.00 needed: proven least");
  // Money is shown to the cent.
  expect(cut(0.01)).toBe("1 stick to buy for 0.01; at least 0.01 needed: proven least");
});

test("an offcut on hand may cost nothing", () => {
  const stock = [
    ["Length", "On hand", "Price"],
    [120, null, 10],
    [60, 1, 0.0001],
  ];
  expect(rowWhere(plan(column(50), null, stock), { Stick: '60" on hand' })["Cut"]).toBe('50"');
});

test("a kerf off the grid is taken on a finer one that all stand on", () => {
  expect(plan(column(40), column(2), 120, 1 / 32)[2]).toEqual([
    1,
    '120"',
    '2 × 40"',
    '39-15/16"',
    "",
    "drop 1",
    "Stock",
  ]);
});
