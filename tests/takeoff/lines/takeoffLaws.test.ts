import fc from "fast-check";
import { bendCounts } from "../../../src/takeoff/reports/bendCounts";
import { changes } from "../../../src/takeoff/reports/changes";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { trace } from "../../../src/takeoff/reports/trace";
import { randomRun, runsAndShuffled } from "../randomRuns";
import { records, runsRange } from "../tables";

/** Feet are held to this [ft]: rounding of sums. */
const FEET = 1e-9;
const RUNS = { numRuns: 40 };
type Table = (string | number)[][];

/** Quantities by item, without what is counted by the stick or by its name. */
const additive = (table: Table) =>
  new Map(
    records(table)
      .filter(({ Item }) => !/stick|coupling|^Box$|^not /.test(String(Item)))
      .map((row) => [String(row["Item"]), Number(row["Quantity"])]),
  );
const sortedRows = (table: Table) => table.map((row) => JSON.stringify(row)).sort();

test("the order of rows changes nothing, to the last digit, but the order in which bad rows are told", () => {
  fc.assert(
    fc.property(runsAndShuffled, fc.constantFrom("none", "Area", "Raceway, Size"), ([runs, shuffled], by) => {
      const [first, second] = [takeoff(runs, { by }), takeoff(shuffled, { by })];
      const good = (table: Table) => table.filter((row) => !row.some((cell) => String(cell).startsWith("not counted")));
      expect(good(second)).toEqual(good(first));
      expect(sortedRows(second)).toEqual(sortedRows(first));
      expect(sortedRows(bendCounts(shuffled))).toEqual(sortedRows(bendCounts(runs)));
    }),
    RUNS,
  );
});

test("quantity multiplies: three times a run takes three times of everything but boxes and what sticks give", () => {
  fc.assert(
    fc.property(randomRun, (run) => {
      const times = (quantity: number) => additive(takeoff(runsRange({ ...run, Quantity: quantity })));
      const [one, three] = [times(1), times(3)];
      expect([...three.keys()]).toEqual([...one.keys()]);
      for (const [item, quantity] of one) expect(Math.abs(three.get(item)! - 3 * quantity)).toBeLessThan(FEET);
    }),
    RUNS,
  );
});

test("groups add up to the whole", () => {
  fc.assert(
    fc.property(runsAndShuffled, ([runs]) => {
      const sums = new Map<string, number>();
      for (const row of records(takeoff(runs, { by: "Area, Run" }))) {
        const item = String(row["Item"]);
        if (!/stick|coupling|^not /.test(item)) sums.set(item, (sums.get(item) ?? 0) + Number(row["Quantity"]));
      }
      for (const [item, quantity] of additive(takeoff(runs))) {
        expect(Math.abs((sums.get(item) ?? NaN) - quantity)).toBeLessThan(FEET);
      }
    }),
    RUNS,
  );
});

test("sticks hold their conduit, and no group of runs needs fewer sticks alone than its feet ask for", () => {
  fc.assert(
    fc.property(runsAndShuffled, ([runs]) => {
      const rows = records(takeoff(runs));
      for (const row of rows.filter(({ Item }) => String(Item).endsWith("10 ft stick"))) {
        const conduit = rows.find(({ Item }) => Item === String(row["Item"]).replace(", 10 ft stick", ""))!;
        // Pieces are cut to the nearest 1/16 in.; a random job has at most 12 x 4 x 3 pieces.
        expect(Number(row["Quantity"]) * 10 + 144 / 32 / 12).toBeGreaterThanOrEqual(Number(conduit["Quantity"]));
        expect(Number(row["Quantity"]) * 5).toBeLessThanOrEqual(Number(conduit["Quantity"]) + 5);
      }
    }),
    RUNS,
  );
});

test("every quantity is the sum of what its runs take", () => {
  fc.assert(
    fc.property(runsAndShuffled, ([runs]) => {
      for (const { Item, Quantity } of records(takeoff(runs)).filter((row) => row["Quantity"] !== "")) {
        const rows = records(trace(runs, Item)).filter(({ Run }) => !String(Run).startsWith("not counted"));
        const total = rows.pop()!;
        expect(total["Amount"]).toBe(Quantity);
        const sum = rows.reduce((amount, row) => amount + Number(row["Amount"]), 0);
        expect(Math.abs(sum - Number(Quantity))).toBeLessThan(FEET);
      }
    }),
    { numRuns: 15 },
  );
});

test("every quantity of a group is the sum of what the group's runs take", () => {
  fc.assert(
    fc.property(runsAndShuffled, ([runs]) => {
      for (const { Area, Item, Quantity } of records(takeoff(runs, { by: "Area" })).filter(
        (row) => row["Quantity"] !== "",
      )) {
        // prettier-ignore
        const rows = records(trace(runs, Item, { by: "Area" })).filter((row) => row["Area"] === Area);
        const total = rows.find(({ Run }) => Run === "Total")!;
        expect(total["Amount"]).toBe(Quantity);
        const parts = rows.filter(({ Each }) => Each !== "").reduce((sum, row) => sum + Number(row["Amount"]), 0);
        expect(Math.abs(parts - Number(Quantity))).toBeLessThan(FEET);
      }
    }),
    { numRuns: 10 },
  );
});

test("nothing changed between a table and the same rows in another order", () => {
  fc.assert(
    fc.property(runsAndShuffled, ([runs, shuffled]) => {
      const rows = records(changes(runs, shuffled)).filter(({ Change }) => Change !== "not counted");
      expect(rows.every((row) => row["Change"] === "quantity" && row["Difference"] === 0)).toBe(true);
    }),
    RUNS,
  );
});

test("differences take the quantities before to the quantities after", () => {
  fc.assert(
    fc.property(runsAndShuffled, runsAndShuffled, ([before], [after]) => {
      const rows = records(changes(before, after)).filter(({ Change }) => Change === "quantity");
      for (const row of rows)
        expect(Number(row["Before"]) + Number(row["Difference"])).toBeCloseTo(Number(row["After"]), 9);
      const expected = records(takeoff(after)).filter((row) => row["Quantity"] !== "");
      const shown = new Map(rows.map((row) => [row["Run or item"], row["After"]]));
      for (const { Item, Quantity } of expected) expect(shown.get(Item!)).toBe(Quantity);
    }),
    RUNS,
  );
});
