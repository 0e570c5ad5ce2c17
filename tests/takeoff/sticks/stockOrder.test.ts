/** An order that starts from the user's stock: lengths to buy, offcuts on hand, prices of sticks. */
import fc from "fast-check";
import { changes } from "../../../src/takeoff/reports/changes";
import { jobCuts } from "../../../src/takeoff/reports/jobCuts";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { trace } from "../../../src/takeoff/reports/trace";
import { runsAndShuffled } from "../randomRuns";
import { quantityOf, records, rowWhere, runsRange } from "../tables";

const STOCK = ["Raceway", "Size", "Length", "On hand", "Price"];
const straight = (Run: string, inches: number, more: Record<string, string | number> = {}) => ({
  Run,
  Route: `east ${inches}`,
  ...more,
});

test("what is on hand is used first, and no coupling comes with it", () => {
  // Three IMC pieces of 100 in. and two of them from what is on hand; RMC has no stock and takes its own sticks.
  const runs = runsRange(
    straight("A", 100, { Raceway: "IMC", Size: "1", Quantity: 3 }),
    straight("B", 200, { Raceway: "IMC", Size: "1" }),
    straight("C", 90, { Raceway: "RMC", Size: "1" }),
  );
  const stock = [STOCK, ["IMC", "1", 120, null, null], ["IMC", "1", 101, 2, null]];
  const bare = takeoff(runs);
  const order = takeoff(runs, { stock });
  // Without stock: A three, B two (120 and 80). With it: two of A's from the offcuts.
  expect(quantityOf(bare, "IMC 1 conduit, 10 ft stick")).toBe(5);
  expect(rowWhere(order, { Item: "IMC 1 conduit, 10 ft stick" })).toMatchObject({
    Quantity: 3,
    Note: "2 on hand are used besides",
  });
  expect(rowWhere(order, { Item: "IMC 1 threaded coupling" })["Note"]).toBe("1 needed, 3 come with the sticks");
  expect(quantityOf(order, "RMC 1 conduit, 10 ft stick")).toBe(1);
});

test("of several lengths those are ordered that cost least; their price comes from Stock", () => {
  const runs = runsRange(straight("A", 118, { Quantity: 5 }));
  const order = (long: number) =>
    takeoff(runs, {
      stock: [STOCK, ["EMT", "1/2", 120, null, 10], ["EMT", "1/2", 240, null, long]],
      prices: [["Item", "Unit", "Price"], ["EMT 1/2 conduit", "ft", 3]], // prettier-ignore
    });
  // Two pieces go into 20 ft: at 19 two long ones and a short one, 48; at 21 five short ones, 50.
  expect(rowWhere(order(19), { Item: "EMT 1/2 conduit, 20 ft stick" })).toMatchObject({
    Quantity: 2,
    "Unit price": 19,
  });
  expect(rowWhere(order(19), { Item: "EMT 1/2 conduit, 10 ft stick" })).toMatchObject({
    Quantity: 1,
    Extension: 10,
    Note: "price from Stock",
  });
  expect(quantityOf(order(21), "EMT 1/2 conduit, 10 ft stick")).toBe(5);
  expect(records(order(21)).some(({ Item }) => String(Item).includes("20 ft"))).toBe(false);
});

test("a stick priced by its own name in Prices, and a Stock price of 0, leave the Stock price aside", () => {
  const runs = runsRange(straight("A", 100));
  const unitPrice = (stockPrice: number, name: string) =>
    rowWhere(
      takeoff(runs, {
        stock: [STOCK, ["EMT", "1/2", 120, null, stockPrice]],
        prices: [["Item", "Unit", "Price"], [name, "", 0.5]], // prettier-ignore
      }),
      { Item: "EMT 1/2 conduit, 10 ft stick" },
    )["Unit price"];
  expect(unitPrice(9, "EMT 1/2 conduit, 10 ft stick")).toBe(0.5);
  expect(unitPrice(0, "EMT 1/2 conduit")).toBe(5);
});

test("where everything lies on the rack, the line says so with nothing to buy", () => {
  const order = takeoff(runsRange(straight("A", 50, { Quantity: 2 })), {
    stock: [STOCK, ["EMT", "1/2", 120, null, null], ["EMT", "1/2", 102, 1, null]],
  });
  expect(rowWhere(order, { Item: "EMT 1/2 conduit, 10 ft stick" })).toMatchObject({
    Quantity: 0,
    Note: "1 on hand is used besides",
  });
});

test("a stock that no plan can be made from leaves the runs' own sticks counted, and says why", () => {
  const order = takeoff(runsRange(straight("A", 130, { Stick: 240 })), {
    stock: [STOCK, ["EMT", "1/2", 120, null, 5]],
  });
  const line = rowWhere(order, { Item: "EMT 1/2 conduit, 20 ft stick" });
  expect(line["Quantity"]).toBe(1);
  expect(line["Note"]).toMatch(/^not planned from the stock: .*130/);
});

test("bad stock rows are told, and an empty stock table is as good as none", () => {
  const runs = runsRange(straight("A", 100));
  expect(records(takeoff(runs, { stock: [STOCK, ["EMT", "9", 120, null, 5]] })).at(-1)).toMatchObject({
    Item: "not read",
    Note: expect.stringMatching(/^stock row 2: Size/),
  });
  expect(takeoff(runs, { stock: [STOCK, STOCK.map(() => null)] })).toEqual(takeoff(runs));
});

test("an order in groups has the stock's lengths and prices, takes nothing from the rack, and says so", () => {
  const runs = runsRange(straight("A", 100, { Area: "east" }), straight("B", 100, { Area: "west" }));
  const stock = [STOCK, ["EMT", "1/2", 240, null, 9], ["EMT", "1/2", 110, 5, null]];
  const order = takeoff(runs, { by: "Area", stock, prices: [["Item", "Price"], ["paint", 1]] }); // prettier-ignore
  // One 20 ft stick for each group at the stock's price, though both pieces could come from offcuts.
  const sticks = records(order).filter(({ Item }) => Item === "EMT 1/2 conduit, 20 ft stick");
  expect(sticks.map(({ Area, Quantity, Extension }) => [Area, Quantity, Extension])).toEqual([
    ["east", 1, 9],
    ["west", 1, 9],
  ]);
  expect(rowWhere(order, { Item: "in groups" })["Note"]).toMatch(/none of them taken from what is on hand/);
  expect(trace(runs, "EMT 1/2 conduit, 20 ft stick", { by: "Area", stock }).at(-1)).toContain(2);
});

const randomStock = fc
  .record({ offcut: fc.integer({ min: 20, max: 119 }), count: fc.integer({ min: 1, max: 4 }) })
  .map(({ offcut, count }) => [
    STOCK,
    ...["EMT", "IMC", "RMC"].flatMap((raceway) =>
      ["1/2", "3/4", "1"].flatMap((size) => [
        [raceway, size, 120, null, null],
        [raceway, size, offcut, count, null],
      ]),
    ),
  ]);

test("the order buys what the cutting plan buys, and its trace says as much", () => {
  fc.assert(
    fc.property(runsAndShuffled, randomStock, ([runs], stock) => {
      const order = takeoff(runs, { stock });
      for (const plan of records(jobCuts(runs, { stock })).filter(({ Stick }) => Stick === "all")) {
        const bought = Number(/^(\d+) sticks? to buy/.exec(String(plan["Cut"]))![1]);
        const item = `${plan["Raceway"]} ${plan["Size"]} conduit, 10 ft stick`;
        expect(quantityOf(order, item)).toBe(bought);
        expect(rowWhere(trace(runs, item, { stock }), { Run: "Total" })["Amount"]).toBe(bought);
      }
    }),
    { numRuns: 25 },
  );
});

test("changes count both jobs from the same stock", () => {
  const stock = [STOCK, ["EMT", "1/2", 120, null, null], ["EMT", "1/2", 101, 1, null]];
  const [one, two] = [runsRange(straight("A", 100)), runsRange(straight("A", 100, { Quantity: 2 }))];
  const sticks = (range?: unknown[][]) =>
    rowWhere(changes(one, two, { stock: range }), { "Run or item": "EMT 1/2 conduit, 10 ft stick" });
  expect(sticks(stock)).toMatchObject({ Before: 0, After: 1, Difference: 1 });
  expect(sticks()).toMatchObject({ Before: 1, After: 2, Difference: 1 });
});
