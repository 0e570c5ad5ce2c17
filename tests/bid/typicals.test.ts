/**
 * Typicals: rows that belong to a room or a floor which rules place so many times by area. The law: the job is the one in
 * which somebody writes the rows out, in every function. The second route is that writing out, done here by hand.
 */
import fc from "fast-check";
import { changeOrder } from "../../src/bid/change/changeOrder";
import { hoursTable } from "../../src/bid/hoursTable";
import { recap } from "../../src/bid/recap";
import { takeoffInGroups } from "../../src/bid/takeoffInGroups";
import { chooseTickets } from "../../src/made/counts/ticketChoice";
import { buildJob } from "../../src/shop/job/job";
import { ticketText } from "../../src/shop/ticket/ticketText";
import { jobCuts } from "../../src/takeoff/reports/jobCuts";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { bendCounts } from "../../src/takeoff/reports/bendCounts";
import { changes } from "../../src/takeoff/reports/changes";
import { missingTable } from "../../src/takeoff/reports/missing";
import { orderForm } from "../../src/takeoff/reports/orderForm";
import { trace } from "../../src/takeoff/reports/trace";
import { jobChecks, jobCircuits, jobSchedule, jobSetup } from "../../functions/job/jobs";
import { jobDaily, jobProgress, jobStanding } from "../../functions/job/made";
import { jobRules } from "../../functions/job/takeoff";
import { demoBid, demoFactors } from "../../workbench/demo/ferryBid";
import { demoLabor, demoPrices } from "../../workbench/demo/ferryTables";
import { randomRun } from "../takeoff/randomRuns";
import { quantityOf, records, rowWhere, runsRange, shoesRange, type Cell, type RunCells } from "../takeoff/tables";

const shoes = shoesRange(["EMT", "1/2", 4]);
const rulesOf = (...rows: Cell[][]): Cell[][] => [["Rule", "Value"], ...rows];
const PLACES: [area: string, times: number][] = [["North", 3], ["South", 2]]; // prettier-ignore
const rules = rulesOf(...PLACES.map(([area, times]) => [`Typical ROOM-A, ${area}`, times]));

const ROOM: RunCells[] = [
  { Run: "A", Route: "up 40, east 60", Quantity: 2, From: "Panel 1", To: "JB-1", Conductors: "3 #12 THHN", Area: "x" },
  { Run: "B", Route: "east 30', offset 6 up at 30, ahead 90, box, north 70", From: "JB-1", To: "each receptacle", Conductors: "2 #12 THHN", Area: "x" }, // prettier-ignore
  { Run: "C", Route: "north 25'", From: "JB-Hall", To: "", Area: "x" },
];
const HALL: RunCells = { Run: "H", Route: "east 45', up 30", From: "JB-Hall", To: "Panel 1", Area: "Hall" };
const typical = runsRange(...ROOM.map((run) => ({ ...run, Typical: "ROOM-A" })), HALL);

/** The rows of a room as somebody writes them out: for each copy, its own boxes; a shared end and panels stay what they are. */
const copies = (room: readonly RunCells[], shared: readonly string[], places = PLACES): RunCells[] =>
  places.flatMap(([Area, times]) =>
    Array.from({ length: times }, (_, copy) => {
      const own = (name: Cell | undefined) => (!name || /^(panel|each|open)/i.test(String(name)) || shared.includes(String(name)) ? (name ?? "") : `${name} ${Area} ${copy}`); // prettier-ignore
      return room.map((run): RunCells => ({ ...run, Area, Run: `${run.Run} ${Area} ${copy}`, From: own(run["From"]), To: own(run["To"]) })); // prettier-ignore
    }).flat(),
  );
/** The rows once for each area, with the Quantity of all copies there. */
const byArea = (room: readonly RunCells[]): RunCells[] =>
  room.flatMap((run) => PLACES.map(([Area, times]): RunCells => ({ ...run, Area, Run: `${run.Run} (${Area})`, Quantity: Number(run["Quantity"] ?? 1) * times }))); // prettier-ignore

const written = runsRange(...copies(ROOM, ["JB-Hall"]), HALL);
const perArea = runsRange(...byArea(ROOM), HALL);
const countsOf = (...rows: Cell[][]): Cell[][] => [["Item", "Quantity", "Area", "Typical"], ...rows];
const counts = countsOf(["Receptacle", 4, "x", "ROOM-A"], ["Sign", 1, "Hall", ""]);
const countsWritten = countsOf(["Receptacle", 12, "North", ""], ["Receptacle", 8, "South", ""], ["Sign", 1, "Hall", ""]); // prettier-ignore
const lists = { shoes, prices: demoPrices, labor: demoLabor, factors: demoFactors };
const asTypical = { ...lists, rules, counts };
const asWritten = { ...lists, counts: countsWritten };

/** Cells of a table without the words that tell how a number came about. */
const withoutNotes = (table: readonly (readonly (string | number)[])[]) =>
  table.map((row) => row.slice(0, -1).map((cell) => (typeof cell === "number" ? Number(cell.toFixed(6)) : cell)));

test("counted by hand: 3 rooms in the north, 2 in the south", () => {
  const table = takeoff(typical, asTypical);
  // 5 · (2 · (100 − 1.716815) + … ) is left to the law; boxes: JB-1 in 5 rooms, a receptacle to each of 5 runs, one JB-Hall.
  expect(quantityOf(table, "Box")).toBe(5 + 5 + 1);
  expect(quantityOf(table, "Receptacle")).toBe(20);
  // C alone: 25 ft; five times 125 ft. A: two pieces of 98.283185 in. in each room.
  const only = (Run: string) => runsRange(...ROOM.filter((run) => run.Run === Run).map((run) => ({ ...run, Typical: "ROOM-A" }))); // prettier-ignore
  expect(quantityOf(takeoff(only("C"), { shoes, rules }), "EMT 1/2 conduit")).toBeCloseTo(125, 9);
  expect(quantityOf(takeoff(only("A"), { shoes, rules }), "EMT 1/2 conduit")).toBeCloseTo((10 * (100 - 1.716815)) / 12, 5); // prettier-ignore
  const areas = records(takeoff(typical, { ...asTypical, by: "Area" })).filter(({ Item }) => Item === "Receptacle");
  expect(areas.map(({ Area, Quantity }) => [Area, Quantity])).toEqual([["North", 12], ["South", 8]]); // prettier-ignore
});

const SUMS: [string, (runs: Cell[][], given: Record<string, unknown>) => (string | number)[][]][] = [
  ["take-off", (runs, given) => takeoff(runs, given)],
  ["take-off by area", (runs, given) => takeoff(runs, { ...given, by: "Area" })],
  ["take-off with subtotals", (runs, given) => takeoffInGroups(runs, { ...given, by: "Area" })],
  ["order", (runs, given) => orderForm(runs, given)],
  ["hours by area", (runs, given) => hoursTable(runs, { ...given, by: "Area" })],
  ["missing", (runs, given) => missingTable(runs, { ...given, prices: null, labor: null })],
  ["bends", (runs, given) => bendCounts(runs, { ...given, by: "Area, Kind, Angle" })],
  [
    "changes",
    (runs, given) =>
      changes(runsRange(HALL), runs, { ...given, countsBefore: counts.slice(0, 1) }).filter(
        ([change]) => change === "quantity",
      ),
  ],
  ["change order", (runs, given) => changeOrder(runsRange(HALL), runs, demoBid, { ...given, countsBefore: counts.slice(0, 1) })], // prettier-ignore
];
test.each(SUMS)("%s: as with the rows written out", (_name, table) => {
  expect(withoutNotes(table(typical, asTypical))).toEqual(withoutNotes(table(written, asWritten)));
});

test("recap by area, sums of a trace and sticks of the cutting plan: as with the rows written out", () => {
  const by = "Area";
  expect(recap(typical, demoBid, { ...asTypical, by })).toMatchObject({ ...recap(written, demoBid, { ...asWritten, by }) }); // prettier-ignore
  for (const item of ["EMT 1/2 conduit", "EMT 1/2 strap"]) {
    const rows = (runs: Cell[][], given: object) => records(trace(runs, item, given)).filter(({ Row }) => Row !== "");
    const total = (runs: Cell[][], given: object) => rowWhere(trace(runs, item, given), { Run: "Total" })["Amount"];
    expect(total(typical, asTypical)).toBeCloseTo(Number(total(written, asWritten)), 9);
    // What is read above the total adds up to it, line by line: 3 in the north, 2 in the south, of A twice as many.
    const traced = rows(typical, asTypical);
    expect(traced.reduce((sum, row) => sum + Number(row["Amount"]), 0)).toBeCloseTo(Number(total(typical, asTypical)), 9); // prettier-ignore
    expect(traced.map(({ Run, Times }) => [Run, Times])).toEqual(expect.arrayContaining([["A (North)", 6], ["A (South)", 4], ["C (North)", 3], ["H", 1]])); // prettier-ignore
  }
  const plan = (runs: Cell[][], given: object) => jobCuts(runs, given).slice(0, 3).map((row) => row.slice(0, 4)); // prettier-ignore
  expect(plan(typical, { shoes, rules })).toEqual(plan(written, { shoes }));
});

test("schedule, set-up, circuits, tickets, progress and standing: as with a row for each area", () => {
  const made = [["Date", "Piece", "Good"], ["2026-03-02", "A (North)/1", 4], ["2026-03-03", "B (South)/2", 1]]; // prettier-ignore
  expect(jobSchedule(typical, shoes, rules)).toEqual(jobSchedule(perArea, shoes));
  expect(jobSetup(typical, shoes, undefined, rules)).toEqual(jobSetup(perArea, shoes));
  expect(jobCircuits(typical, shoes, undefined, rules)).toEqual(jobCircuits(perArea, shoes));
  expect(jobProgress(typical, made, "Area", shoes, rules)).toEqual(jobProgress(perArea, made, "Area", shoes));
  expect(jobDaily(typical, made, shoes, rules)).toEqual(jobDaily(perArea, made, shoes));
  expect(jobStanding(typical, made, undefined, shoes, rules)).toEqual(jobStanding(perArea, made, undefined, shoes));
  const wishes = { area: "", date: "", crew: "", conduit: "", bentOnly: false, notMade: false, changed: false };
  const tickets = (runs: Cell[][], rules?: Cell[][]) =>
    chooseTickets(buildJob({ runs, shoes, rules }), wishes).tickets.map((ticket) => ticketText(ticket));
  expect(tickets(typical, rules)).toEqual(tickets(perArea));
  expect(tickets(typical, rules).join("\n")).toContain("make 6");
});

test("any job, any rooms: the take-off is the one written out", () => {
  const cell = fc.record({ run: randomRun, inRoom: fc.boolean() });
  const times = fc.tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 1, max: 4 }));
  fc.assert(
    fc.property(fc.array(cell, { minLength: 1, maxLength: 8 }), times, (cells, [north, south]) => {
      const named = cells.map(({ run, inRoom }, at) => ({ run: { ...run, Run: `R${at}` } as RunCells, inRoom }));
      const [room, rest] = [true, false].map((wanted) => named.flatMap(({ run, inRoom }) => (inRoom === wanted ? [run] : []))); // prettier-ignore
      const shared = rest!.filter((run) => !String(run.Route).includes("away")).flatMap((run) => [String(run["From"]), String(run["To"])]); // prettier-ignore
      const places: [string, number][] = [["North", north], ["South", south]]; // prettier-ignore
      const rules = rulesOf(...places.map(([area, count]) => [`Typical ROOM, ${area}`, count]));
      const sums = (runs: Cell[][], given: object) =>
        withoutNotes(takeoff(runs, { ...given, by: "Area" }).filter(([, item]) => !/^not /.test(String(item))));
      const rows = [...room!.map((run) => ({ ...run, Typical: "ROOM" })), ...rest!.map((run) => ({ ...run, Typical: "" }))]; // prettier-ignore
      expect(sums(runsRange(...rows), { rules })).toEqual(
        sums(runsRange(...copies(room!, shared, places), ...rest!), {}),
      );
    }),
    { numRuns: 25 },
  );
});

test("a typical without an area in its rule stays in the area of its rows", () => {
  const table = records(takeoff(typical, { shoes, rules: rulesOf(["typical room-a", 2]), by: "Area" }));
  expect(table.filter(({ Item }) => Item === "EMT 1/2 strap").map(({ Area }) => Area)).toEqual(["Hall", "x"]);
  expect(jobSchedule(typical, shoes, rulesOf(["Typical ROOM-A", 2])).some(([run]) => run === "A")).toBe(true);
});

test.each<[string, Cell[][], RegExp]>([
  ["no rule of it", [], /^typical ROOM-A is placed nowhere: no rule Typical ROOM-A says how many times$/],
  ["0 times", [["Typical ROOM-A", 0]], /^typical ROOM-A is placed 0 times by its rule$/],
])("%s: each of its rows is told and none counted; Checks says so too", (_name, rows, words) => {
  const table = records(takeoff(typical, { shoes, counts, rules: rulesOf(...rows) }));
  const told = table.filter(({ Item }) => String(Item).startsWith("not counted"));
  expect(told.map(({ Item }) => Item)).toEqual(["not counted: A", "not counted: B", "not counted: C"]);
  for (const { Note } of told) expect(Note).toMatch(words);
  expect(table.map(({ Note }) => String(Note).replace("Counts row 2, Receptacle: ", "")).filter((note) => words.test(note))).toHaveLength(4); // prettier-ignore
  expect(table.some(({ Item }) => Item === "Receptacle")).toBe(false);
  const findings = records(jobChecks(typical, shoes, undefined, rulesOf(...rows)));
  expect(findings.filter(({ Rule }) => Rule === "a typical is placed so many times").map(({ Run }) => Run)).toEqual(["A", "B", "C"]); // prettier-ignore
});

test.each<[Cell, Cell, string]>([
  ["Typical ROOM-A", 2.5, 'Value of "Typical ROOM-A" must be a whole number at least 0 and at most 10000; got 2.5.'],
  ["Typical ROOM-A", -1, 'Value of "Typical ROOM-A" must be a whole number at least 0 and at most 10000; got -1.'],
  ["Typical ROOM-A, East", "two", 'Value of "Typical ROOM-A, East" must be a number; got "two".'],
  ["Typical ROOM-A, East", "", 'Value of "Typical ROOM-A, East" is empty; write how many times it is placed, 0 for nowhere yet.'], // prettier-ignore
  ["Typical ROOM-A, North", 1, '"Typical ROOM-A, North" stands twice; keep one row for each rule.'],
  ["Typical", 1, 'no rule is called "Typical"; JOB.RULES lists the rules.'],
])("a rule that cannot be read is told, the others hold: %s %j", (rule, value, message) => {
  const given = { shoes, counts, rules: [...rules, [rule, value]] };
  const table = takeoff(typical, given);
  expect(records(table).map(({ Note }) => Note)).toContain(`rules row 4: ${message}`);
  expect(quantityOf(table, "Receptacle")).toBe(20);
});

test("a typical that nothing belongs to, a name with a comma and too many are told", () => {
  const notes = (runs: Cell[][], ...rows: Cell[][]) => records(takeoff(runs, { shoes, rules: rulesOf(...rows) })).map(({ Note }) => Note); // prettier-ignore
  expect(notes(runsRange(HALL), ["Typical ROOM-B", 2])).toContain(
    "typical ROOM-B: a rule places it, but no row of the runs and counts belongs to it",
  );
  expect(notes(runsRange({ ...HALL, Typical: "ROOM, A" }), ["Typical ROOM, A", 2])).toContain(
    "typical ROOM, A is placed nowhere: no rule Typical ROOM, A says how many times; the name of a typical has no comma",
  );
  expect(notes(runsRange({ ...HALL, Typical: "R", Quantity: 20 }), ["Typical R", 10_000])).toContain(
    "Quantity 20, placed 10000 times, is above 100000, the most of one run",
  );
});

test("the rules in force list where typicals are placed", () => {
  expect(records(jobRules(rules)).slice(-2)).toEqual([
    { Rule: "Typical ROOM-A, North", Value: 3, Unit: "times", Source: "rules row 2" },
    { Rule: "Typical ROOM-A, South", Value: 2, Unit: "times", Source: "rules row 3" },
  ]);
});
