/** Alternates: the base bid, what one adds, what one takes the place of; by hand. */
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
