import { sizedItem, stickItem } from "../../../src/takeoff/amounts/item";
import { readPrices } from "../../../src/takeoff/lists/prices";
import { readPriceUnit } from "../../../src/takeoff/lists/priceUnit";

const EMT = { raceway: "EMT", size: "3/4" } as const;
const strap = sizedItem(EMT, "strap");
const stick = stickItem(EMT, 240);
const pricesOf = (...rows: (string | number | null)[][]) => readPrices([["Item", "Unit", "Price"], ...rows]);

test.each([
  ["each", "each", 1],
  ["EA", "each", 1],
  ["ft", "ft", 1],
  ["LF", "ft", 1],
  ["C", null, 100],
  ["C ft", "ft", 100],
  ["100 ft", "ft", 100],
  ["per 1000 ft", "ft", 1000],
  ["M", null, 1000],
  ["", null, 1],
])("a price for %s", (text, of, per) => {
  expect(readPriceUnit(text)).toEqual({ of, per });
});

test("a unit that the trade does not price by is refused", () => {
  expect(() => readPriceUnit("bundle")).toThrow('Unit must be each, ft, C, M, C ft or M ft; got "bundle".');
});

test("an item is found whatever its case and punctuation, and C divides by a hundred", () => {
  expect(pricesOf(["emt 3/4  Strap", "C", 48.5]).priceOf(strap)).toEqual({ unitPrice: 0.485, note: "" });
});

test.each(["free", "By others"])("what costs nothing is %s", (words) => {
  expect(pricesOf(["EMT 3/4 strap", "each", words]).priceOf(strap)).toEqual({ unitPrice: 0, note: "costs nothing" });
});

test("a missing price is named", () => {
  expect(pricesOf(["EMT 1/2 strap", "each", 1]).priceOf(strap)).toEqual({
    unitPrice: null,
    note: "no price for EMT 3/4 strap",
  });
});

test("a price per foot does not price pieces", () => {
  expect(pricesOf(["EMT 3/4 strap", "ft", 1]).priceOf(strap)).toEqual({
    unitPrice: null,
    note: "no price for EMT 3/4 strap per each: prices has it per ft",
  });
});

test("a stick takes the price of its feet, 20 ft at 95 a hundred, unless it has its own", () => {
  const foot = ["EMT 3/4 conduit", "C ft", 95];
  expect(pricesOf(foot).priceOf(stick)).toEqual({ unitPrice: 19, note: "priced by the foot" });
  expect(pricesOf(foot, ["EMT 3/4 conduit, 20 ft stick", "each", 21]).priceOf(stick).unitPrice).toBe(21);
});

test("bad rows are told and hide no good one", () => {
  const prices = pricesOf(
    ["EMT 3/4 strap", "each", "?"],
    ["Box", "each", null],
    ["", "each", 4],
    ["locknut", "each", 1],
    ["Locknut", "each", 2],
    ["EMT 3/4 bushing", "each", 0.3],
  );
  expect(prices.problems).toEqual([
    'prices row 2: Price must be a number; got "?".',
    "prices row 4: Item is empty.",
    'prices row 6: "Locknut" stands twice; keep one row for each item.',
  ]);
  expect(prices.priceOf(strap).unitPrice).toBeNull();
  expect(prices.priceOf(sizedItem(EMT, "bushing")).unitPrice).toBe(0.3);
});

test.each([0, null])("a price of %s waits to be filled in, since an empty cell may be handed over as 0", (blank) => {
  const prices = pricesOf(["EMT 3/4 strap", "each", blank]);
  expect(prices.priceOf(strap)).toEqual({ unitPrice: null, note: "no price for EMT 3/4 strap" });
  expect(prices.names).toEqual([{ name: "EMT 3/4 strap", rowNumber: 2 }]);
  expect(prices.problems).toEqual([]);
});

test("a stick whose own row waits takes the price of its feet", () => {
  const prices = pricesOf(["EMT 3/4 conduit, 20 ft stick", "each", null], ["EMT 3/4 conduit", "ft", 0.95]);
  expect(prices.priceOf(stick)).toEqual({ unitPrice: 19, note: "priced by the foot" });
});

test("conduit priced by the piece does not price sticks", () => {
  expect(pricesOf(["EMT 3/4 conduit", "each", 60]).priceOf(stick)).toEqual({
    unitPrice: null,
    note: "no price for EMT 3/4 conduit per ft: prices has it per each",
  });
});

test("only sticks go by the price of the foot", () => {
  expect(pricesOf(["EMT 3/4 conduit", "ft", 1]).priceOf(strap)).toEqual({
    unitPrice: null,
    note: "no price for EMT 3/4 strap",
  });
});

test("the column may be called Unit price; a price below 0 is told", () => {
  const prices = readPrices([
    ["Item", "Unit price"],
    ["EMT 3/4 strap", 0.2],
    ["Box", -1],
  ]);
  expect(prices.priceOf(strap).unitPrice).toBe(0.2);
  expect(prices.problems).toEqual(["prices row 3: Price must be at least 0; got -1."]);
});
