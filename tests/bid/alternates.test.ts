/** Alternates: the base bid, what one adds, what one takes the place of; by hand. */
import { alternatePrices } from "../../src/bid/alternatePrices";
import { recap } from "../../src/bid/recap";
import { jobCuts } from "../../src/takeoff/reports/jobCuts";
import { orderForm } from "../../src/takeoff/reports/orderForm";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { jobChecks, jobSchedule } from "../../functions/job/jobs";
import { quantityOf, records, runsRange, shoesRange, type Cell } from "../takeoff/tables";

const shoes = shoesRange(["EMT", "1/2", 4]);
/** 10 ft always, 20 ft more with A1, 30 ft without A2, 40 ft in its place. */
const runs = runsRange(
  { Run: "base", Route: "east 10'", Alternate: "" },
  { Run: "more", Route: "east 20'", Alternate: "A1" },
  { Run: "usual", Route: "east 30'", Alternate: "not A2" },
  { Run: "other", Route: "east 40'", Alternate: "a2" },
);
const rulesOf = (chosen: string): Cell[][] => [["Rule", "Value"], ["Alternates in the job", chosen]]; // prettier-ignore
const counts: Cell[][] = [["Item", "Quantity", "Alternate"], ["Sign", 2, ""], ["Sign", 3, "A1"]]; // prettier-ignore
const costs: Cell[][] = [["Job cost", "Price", "Alternate"], ["Permit", 100, ""], ["Lift", 900, "A2"]]; // prettier-ignore
const bid: Cell[][] = [["Line", "Value", "Unit"], ["Material", null, "material"], ["Costs", null, "costs"]]; // prettier-ignore
const prices: Cell[][] = [["Item", "Price"], ["Sign", 10], ["EMT 1/2 conduit, 10 ft stick", 1], ["EMT 1/2 set-screw connector", "free"], ["EMT 1/2 set-screw coupling", "free"], ["EMT 1/2 strap", "free"]]; // prettier-ignore

test.each([
  ["none", 10 + 30, 2, 100],
  ["A1", 10 + 20 + 30, 5, 100],
  ["a2", 10 + 40, 2, 1000],
  ["A1; A2", 10 + 20 + 40, 5, 1000],
  ["all", 10 + 20 + 40, 5, 1000],
])("%s: feet, signs, costs and the price of sticks by hand", (chosen, feet, signs, cost) => {
  const given = { shoes, prices, counts, costs, rules: rulesOf(chosen) };
  const table = takeoff(runs, given);
  expect(quantityOf(table, "EMT 1/2 conduit")).toBeCloseTo(feet, 9);
  expect(quantityOf(table, "Sign")).toBe(signs);
  expect(recap(runs, bid, given).total[0]).toBe((feet / 10 + 10 * signs + cost) * 100);
  const stick = records(orderForm(runs, given)).find(({ Item }) => Item === "EMT 1/2 conduit, 10 ft stick");
  expect(stick!["Needed"]).toBe(feet / 10);
  expect(jobCuts(runs, given).slice(1, 3).flat().join(" ")).toContain(`${feet / 10} sticks`);
});

test("what is not in the job is named with its rule, in the schedule too; Checks looks at every row", () => {
  const told = records(takeoff(runs, { shoes, counts })).filter(({ Item }) => String(Item).startsWith("not "));
  expect(told.map(({ Item, Note }) => [Item, Note])).toEqual([
    ["not counted: more", "alternate A1 is not in the job: the rule Alternates in the job names those that are"],
    ["not counted: other", "alternate a2 is not in the job: the rule Alternates in the job names those that are"],
    [
      "not read",
      "Counts row 3, Sign: alternate A1 is not in the job: the rule Alternates in the job names those that are",
    ],
  ]);
  expect(records(jobSchedule(runs, shoes)).filter(({ Run }) => Run === "more")).toHaveLength(1);
  expect(JSON.stringify(jobChecks(runs, shoes))).not.toContain("alternate");
  expect(JSON.stringify(jobChecks(runs.map((row, at) => (at === 2 ? row.map((cell) => (cell === "east 20'" ? "up" : cell)) : row)), shoes))).toContain("more"); // prettier-ignore
});

const labor: Cell[][] = [["Operation", "Minutes"], ...["conduit", "coupling", "connector", "strap", "counted item"].map((work) => [work, "none"])]; // prettier-ignore

test("each alternate has its price: what it adds alone, and together as the rule has it; by hand", () => {
  const given = { shoes, prices, counts, costs, labor };
  const priced = (chosen: string, more: object = {}) => alternatePrices(runs, bid, { ...given, rules: rulesOf(chosen), ...more }).slice(1); // prettier-ignore
  // Base: 4 sticks, 2 signs, the permit: 124. A1: 2 sticks and 3 signs more. A2: 4 sticks in the place of 3, and the lift.
  expect(priced("A1; A2")).toEqual([
    ["Base bid", "", 124, ""],
    ["A1", 32, 156, "alone"],
    ["A2", 901, 1025, "alone"],
    ["In the job: A1; A2", 933, 1057, "as the rule Alternates in the job has it"],
  ]);
  expect(priced("none").at(-1)).toEqual(["In the job: none", 0, 124, "as the rule Alternates in the job has it"]);
  // What is missing in every state is said once; what an alternate leaves out is not a lack.
  const lacking = priced("none", { prices: prices.filter(([item]) => item !== "EMT 1/2 strap") });
  expect(lacking[0]).toEqual(["Base bid", "", 124, "without what stands below"]);
  expect(lacking.at(-1)).toEqual(["note", "", "", "without a price: EMT 1/2 strap"]);
});

test("the other rules hold in every line, and a job without alternates says so", () => {
  const rules = [["Source", "Rule", "Value"], ["", "Straps per support", 2], ["mine", "alternates in the JOB", "A1"]]; // prettier-ignore
  const strapped = prices.map((row) => (row[0] === "EMT 1/2 strap" ? ["EMT 1/2 strap", 1] : row));
  const total = (chosen: string, perSupport: number) => recap(runs, bid, { shoes, prices: strapped, counts, costs, rules: [...rulesOf(chosen), ["Straps per support", perSupport]] }).total[0]! / 100; // prettier-ignore
  const rows = alternatePrices(runs, bid, { shoes, prices: strapped, counts, costs, rules });
  expect(rows[1]![2]).toBe(total("none", 2));
  expect(rows[2]![2]).toBe(total("A1", 2));
  expect(rows[2]![1]).toBeCloseTo(total("A1", 2) - total("none", 2), 9);
  expect(total("none", 2)).toBeGreaterThan(total("none", 1));
  expect(alternatePrices(runsRange({ Run: "A", Route: "east 10'" }), bid, { prices, labor })[1]![3]).toBe("no row of Runs, Counts or Costs names an alternate"); // prettier-ignore
});
