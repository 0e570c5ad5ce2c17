/** Take-outs of conduit bodies as a shop measured them, by body, raceway, size and side: by hand. [in] */
import { jobCutsOf } from "../../../functions/job/cuts";
import { jobChecks, jobSchedule } from "../../../functions/job/jobs";
import { jobTakeoff } from "../../../functions/job/takeoff";
import { BODIES } from "../../../src/route/text/types";
import { bodyOfRule } from "../../../src/rules/bodyTakeOuts";
import { readRules, rulesTable } from "../../../src/rules/rules";
import { buildJob, builtRows } from "../../../src/shop/job/job";
import { ticketsOf } from "../../../src/shop/ticket/ticket";
import { ticketText } from "../../../src/shop/ticket/ticketText";

const none = null as never;
const rulesOf = (...rows: [string, unknown][]) => [["Rule", "Value"], ...rows];
const runOf = (route: string, size = "1/2", from = "", to = "") => [
  ["Run", "Raceway", "Size", "Route", "From", "To"],
  ["A", "EMT", size, route, from, to],
];
const column = (table: unknown[][], header: string) => table.slice(1).map((row) => row[table[0]!.indexOf(header)]);
const cuts = (runs: unknown[][], rules: unknown[][]) => column(jobSchedule(runs, none, rules), "Cut length");
const near = (value: number): number => expect.closeTo(value, 9) as number;

const LB = rulesOf(["Take-out LB EMT 1/2", "1-1/2, 2-1/4"], ["Saw kerf", 0]);

test("1-1/2 where the run comes in and 2-1/4 where it goes on: 40 and 60 are cut 38-1/2 and 57-3/4", () => {
  expect(cuts(runOf("up 40, LB, east 60"), LB)).toEqual([38.5, 57.75].map(near));
  // Read the other way round the same body stands with its other side first.
  expect(cuts(runOf("west 60, LB, down 40"), LB)).toEqual([58.5, 37.75].map(near));
});

test("the same in take-off, cutting plan and ticket", () => {
  const runs = runOf("up 40, LB, east 60");
  const takeoff = jobTakeoff(runs, none, none, none, none, LB);
  expect(takeoff.find(([item]) => item === "EMT 1/2 conduit")![2]).toEqual(near(96.25 / 12));
  const plan = jobCutsOf(runs, none, none, none, none, LB);
  expect(column(plan, "Cut").join()).toContain('38-1/2"');
  expect(column(plan, "Cut").join()).toContain('57-3/4"');
  const [row] = builtRows(buildJob({ runs, rules: LB }));
  const texts = ticketsOf(row!.built).map((ticket) => ticketText(ticket, { style: "inches" }));
  expect(texts.map((text) => /^Cut length: (\S+)/m.exec(text)![1])).toEqual(['38-1/2"', '57-3/4"']);
});

test("marks move by what the body takes where the run goes on", () => {
  const marks = (rules: unknown[][]) => column(jobSchedule(runOf("up 40, LB, east 60, north 50"), none, rules), "Mark");
  const [plain, taken] = [marks(rulesOf()), marks(LB)].map((all) => all.filter((mark) => mark !== "").map(Number));
  expect(plain![0]! - taken![0]!).toBeCloseTo(2.25, 9);
});

test("the nearest row counts: of raceway and size before raceway before size; then the rule for all bodies", () => {
  const rules = rulesOf(
    ["Take-out LB", 1],
    ["Take-out LB 1", 2],
    ["Take-out LB EMT", 3],
    ["Take-out LB EMT 1", 4],
    ["Take-out at a body", 5],
  );
  const lengths = (body: string, size: string) => cuts(runOf(`up 40, ${body}, east 60`, size), rules);
  expect(lengths("LB", "1")).toEqual([36, 56].map(near));
  expect(lengths("LB", "1/2")).toEqual([37, 57].map(near));
  expect(lengths("LL", "1")).toEqual([35, 55].map(near));
  expect(cuts(runOf("up 40, LB, east 60", "1"), rulesOf(["Take-out LB", 1], ["Take-out LB 1", 2]))).toEqual(
    [38, 58].map(near),
  );
});

test("an end that names the body has its own side: the run goes on from its first, comes in at its last", () => {
  expect(cuts(runOf("up 40", "1/2", "LB-3", "LB-4"), LB)).toEqual([near(40 - 2.25 - 1.5)]);
});

test("a measured body is no finding; one that is not is, and says what to write", () => {
  const told = (route: string) => column(jobChecks(runOf(route), none, none, LB), "Finding").join();
  expect(told("up 40, LB, east 60")).not.toContain("take-out");
  expect(told("up 40, LB, east 60, LL, north 50")).toContain("LL: the take-out of bodies of EMT 1/2 is counted as 0");
  expect(column(jobChecks(runOf("up 40, LL, east 60")), "Fix").join()).toContain("Take-out LL EMT 1/2");
});

test("a body longer than its leg stops the run", () => {
  const told = jobChecks(runOf("up 40, LB, east 2, LB, north 50"), none, none, LB);
  expect(column(told, "Finding").join()).toMatch(
    /Fittings take 3\.75 in\. out .* the straight conduit there is 2 in\./,
  );
});

test("JOB.RULES shows the rows with where they stand; rows that cannot be read are told and hide no other", () => {
  const book = readRules(
    rulesOf(
      ["Take-out LB rigid 1", "1, 2"],
      ["take-out lb RMC 1", 3],
      ["Take-out LL EMT 1", "1, 2, 3"],
      ["Take-out LR EMT 1", -1],
      ["Take-out T EMT 9", 1],
      ["Take-out Z EMT 1", 1],
      ["Saw kerf", 0.125],
    ),
  );
  expect(rulesTable(book)).toContainEqual(["Take-out LB RMC 1", "1, 2", "in by side", "rules row 2"]);
  expect(book.number("Saw kerf")).toBe(0.125);
  expect(book.bodies).toEqual([{ body: "LB", raceway: "RMC", size: "1", in: 1, out: 2 }]);
  expect(book.problems).toEqual([
    expect.stringContaining('"Take-out LB RMC 1" stands twice'),
    expect.stringMatching(/"Take-out LL EMT 1" must be a length, or two .*; got "1, 2, 3"/),
    expect.stringMatching(/"Take-out LR EMT 1" must be .*0.*; got -1/),
    expect.stringMatching(/Take-out T is for a raceway, a size or both/),
    expect.stringContaining('no rule is called "Take-out Z EMT 1"'),
  ]);
});

test("every body that a route knows may be measured", () => {
  expect(BODIES.map((body) => bodyOfRule(`take-out ${body.toLowerCase()} EMT 1`)?.body)).toEqual([...BODIES]);
});
