/** The sheet for the saw, from plans written by hand: a stick of 100 sixteenths is 6-1/4 in. long. */
import type { CutPlan } from "../../../src/cutting/checking/plan";
import { showSteps } from "../../../src/cutting";
import { DropNames } from "../../../src/takeoff/saw/drops";
import { CutLabels } from "../../../src/takeoff/saw/cutLabels";
import { cutSheet, wordsRow, type CutView } from "../../../src/takeoff/cuts/cutSheet";

const kind = { length: 100, cost: 1, quantity: Infinity, labels: [] };
const plan = (change: Partial<CutPlan>): CutPlan => ({
  stocks: [kind, { ...kind, length: 64, cost: 0, quantity: 2 }],
  patterns: [],
  used: [0, 0],
  ...{ sticks: 0, onHand: 0, missing: [], missingSticks: 0, missingPatterns: [], cost: 0, bound: 0, proven: true },
  ...{ longestRemnant: 0, longestProven: false, remnants: [], stockLength: 0, pieceLength: 0, waste: 0, wasteShare: 0 },
  certificate: { pairs: [], prices: [], rest: { pairs: [], prices: [] } },
  ...{ stopped: "proven", steps: 0 },
  ...change,
});
const view = (change: Partial<CutView> = {}): CutView => ({
  ...{
    grid: "1/16",
    told: (steps) => showSteps(steps, "1/16"),
    priced: false,
    keep: 0,
    labels: new CutLabels([]),
    drops: new DropNames(),
  },
  ...change,
});

test("a plan that is not proven says how far it may be from the least", () => {
  const open = plan({ sticks: 7, onHand: 2, cost: 7, bound: 5, proven: false });
  expect(cutSheet(open, view())[0]).toMatchObject({
    Sticks: 9,
    Cut: "7 sticks to buy; at least 5 needed: within 2 of it",
    Note: "waste 0 ft, 0 %; 2 of the sticks on hand, 7 to buy",
  });
  // Money is planned in thousandths.
  const money = plan({ sticks: 1, cost: 12_500, bound: 12_250, proven: false });
  expect(cutSheet(money, view({ priced: true }))[0]!.Cut).toBe(
    "1 stick to buy for 12.50; at least 12.25 needed: within 0.25 of it",
  );
});

test("what is kept is added up; that the longest rest is proven is said only where it is", () => {
  // 384 + 192 sixteenths are 3 ft, 96 of 960 are a tenth.
  const rests = { remnants: [384, 192], longestRemnant: 384, waste: 96, wasteShare: 0.1 };
  expect(cutSheet(plan({ ...rests, longestProven: true }), view())[0]).toMatchObject({
    "Left over": 'longest 24"',
    For: "",
    Note: "waste 0.5 ft, 10 %; 3 ft kept, longest rest proven",
  });
  expect(cutSheet(plan(rests), view())[0]!.Note).toBe("waste 0.5 ft, 10 %; 3 ft kept");
  expect(cutSheet(plan({ longestProven: true }), view())[0]).toMatchObject({
    "Left over": "",
    Note: "waste 0 ft, 0 %",
  });
});

test("what is left is a drop with a name of its own that goes to Stock, or scrap without one", () => {
  const pattern = (remnant: number, count = 1) => ({
    ...{ stock: 0, count, remnant },
    cuts: [{ length: 100 - remnant, count: 1 }],
  });
  const patterns = [pattern(0), pattern(15), pattern(16, 3), pattern(17)];
  const drops = (keep: number) =>
    cutSheet(plan({ patterns }), view({ keep }))
      .slice(1)
      .map((row) => [row["Left over"], row.Drop, row["Drop to"]]);
  expect(drops(16)).toEqual([
    ["none", "", ""],
    ['15/16"', "", "scrap"],
    ['1"', "drop 1 to 3", "Stock"],
    ['1-1/16"', "drop 4", "Stock"],
  ]);
  expect(drops(0).map(([, name]) => name)).toEqual(["", "drop 1", "drop 2 to 4", "drop 5"]);
});

const SCRAP = { Note: "", Drop: "", "Drop to": "scrap" };

test("a line says what it is cut from, and for which pieces, each named once", () => {
  const labels = new CutLabels([
    { length: 30, quantity: 3, run: "A", piece: 1 },
    { length: 30, quantity: 2, run: "B", piece: 1 },
    { length: 20, quantity: 1, run: "C", piece: 1 },
    { length: 30, quantity: 1, run: "D", piece: 1 },
  ]);
  const patterns = [
    { stock: 0, count: 2, cuts: [{ length: 30, count: 2 }], remnant: 40 },
    {
      ...{ stock: 1, count: 1, remnant: 14 },
      cuts: [
        { length: 30, count: 1 },
        { length: 20, count: 1 },
      ],
    },
  ];
  expect(
    cutSheet(plan({ patterns, missing: [{ length: 30, count: 1 }] }), view({ labels, keep: 99 })).slice(1),
  ).toEqual([
    { Sticks: 2, Stick: '6-1/4"', Cut: '2 × 1-7/8"', "Left over": '2-1/2"', For: "A/1 ×3, B/1", ...SCRAP },
    { Sticks: 1, Stick: '4" on hand', Cut: '1-7/8", 1-1/4"', "Left over": '7/8"', For: "B/1; C/1", ...SCRAP },
    {
      ...{ Sticks: 0, Stick: "no stick left", Cut: '1-7/8"', "Left over": "", For: "D/1" },
      ...{ Note: "not cut: add sticks to Stock", Drop: "", "Drop to": "" },
    },
  ]);
});

test("pieces that nothing was asked for have no name", () => {
  expect(new CutLabels([]).take(30, 2)).toEqual([]);
});

test("words stand in two columns, the others stay empty", () => {
  expect(wordsRow("not read", "why")).toEqual({
    ...{ Sticks: "", Stick: "not read", Cut: "", "Left over": "", For: "", Note: "why" },
    ...{ Drop: "", "Drop to": "" },
  });
});
