/** What fittings take of the conduit, by rules of the shop: cut lengths and marks by hand; nothing by default. [in] */
import { jobCutsOf } from "../../../functions/job/cuts";
import { jobChecks, jobSchedule } from "../../../functions/job/jobs";
import { jobTakeoff } from "../../../functions/job/takeoff";

const near = (value: number): number => expect.closeTo(value, 9) as number;
const none = null as never;
const rulesOf = (...rows: [string, string | number][]) => [["Rule", "Value"], ...rows];
const runsOf = (raceway: string, size: string, route: string, from = "", to = "") => [
  ["Run", "Raceway", "Size", "Route", "From", "To"],
  ["A", raceway, size, route, from, to],
];
const column = (table: unknown[][], header: string) => table.slice(1).map((row) => row[table[0]!.indexOf(header)]);
const cuts = (runs: unknown[][], rules: unknown[][]) => column(jobSchedule(runs, none, rules), "Cut length");

/** 1/2 EMT: R 4, deduct 5, OD 0.706: the arrow stands 0.647 before a bend. */
const GAIN = 8 - 2 * Math.PI;

test("by default nothing: cut lengths add up to the developed length", () => {
  expect(cuts(runsOf("EMT", "1/2", "up 40, east 100", "Panel", "Hub 2"), rulesOf())).toEqual(
    [120, 20 - GAIN].map(near),
  );
});

test("take-outs shorten the ends, and the marks move with the datum end; in the plan and the take-off as well", () => {
  const rules = rulesOf(["Take-out at a box", "EMT: 5/8; EMT 1/2: 3/4"], ["Take-out at a hub", -0.25], ["Saw kerf", 0]);
  const table = jobSchedule(runsOf("EMT", "1/2", "up 40, east 60", "Panel", "Hub 2"), none, rules);
  const cut = 100 - GAIN - 0.75 + 0.25;
  expect(column(table, "Cut length")).toEqual([near(cut)]);
  expect(column(table, "Mark")).toEqual([near(36 - 0.647 - 0.75)]);
  const takeoff = jobTakeoff(runsOf("EMT", "1/2", "up 40, east 60", "Panel", "Hub 2"), none, none, none, none, rules);
  expect(takeoff.find(([item]) => item === "EMT 1/2 conduit")![2]).toEqual(near(cut / 12));
  // 97.7832 to the nearest sixteenth.
  const plan = jobCutsOf(runsOf("EMT", "1/2", "up 40, east 60", "Panel", "Hub 2"), none, none, none, none, rules);
  expect(column(plan, "Cut")[1]).toBe('97-13/16"');
});

test("each kind of end has its own: a body, a box between pulls, an open end none", () => {
  const rules = rulesOf(["Take-out at a box", 1], ["Take-out at a body", 2], ["Take-out at a hub", 3]);
  const lengths = (from: string, to: string) => cuts(runsOf("EMT", "1/2", "east 50, box, north 60", from, to), rules);
  expect(lengths("LB-3", "Open")).toEqual([47, 59].map(near));
  expect(lengths("", "Roof hub")).toEqual([48, 56].map(near));
  expect(lengths("Panel C", "conduit body 2")).toEqual([48, 57].map(near));
});

test("a gap stands in every coupling, and whole sticks stay whole", () => {
  const rules = rulesOf(["Gap in a coupling", 0.5]);
  // Two sticks, two gaps: 300 less 241.
  expect(cuts(runsOf("EMT", "1/2", "east 300"), rules)).toEqual([120, 120, 59].map(near));
  expect(cuts(runsOf("EMT", "1/2", "east 120"), rules)).toEqual([near(120)]);
  // Beside an elbow of PVC 2 (R 9.5, ends 2, from memory) the gap comes off the piece.
  expect(cuts(runsOf("PVC 40", "2", "up 30, east 50, up 30"), rules)).toEqual(
    [30 - 11.5 - 0.5, "", 50 - 23 - 1, "", 30 - 11.5 - 0.5].map((cut) => (typeof cut === "number" ? near(cut) : cut)),
  );
});

test("a bell that is part of the stick: 100 ft of PVC take a stick more, sold as before, from Stock too", () => {
  const runs = runsOf("PVC 40", "2", "east 100'");
  const sticks = (rules: unknown[][], stock?: unknown[][]) =>
    jobTakeoff(runs, none, none, none, none, rules, stock ?? none).find(([item]) => String(item).includes("stick"))!.slice(0, 3); // prettier-ignore
  const bell = rulesOf(["Bell in a stick", "PVC 40 2: 2"], ["Saw kerf", 0]);
  const name = "PVC 40 2 conduit, 10 ft stick";
  expect(sticks(rulesOf())).toEqual([name, "each", 10]);
  expect(sticks(bell)).toEqual([name, "each", 11]);
  const stock = [["Raceway", "Size", "Length", "On hand"], ["PVC 40", "2", "10'", "buy"]]; // prettier-ignore
  expect(sticks(bell, stock)).toEqual([name, "each", 11]);
  expect(cuts(runs, bell)[0]).toEqual(near(118));
});

// homesteady.com 13401448, after a utility (weak): a hub of 3 in. leaves 9 ft 9 in. of a 10 ft stick and 19 ft 9 in. of 20 ft.
test("a bell of 3 in. leaves 9 ft 9 in. of 10 ft of PVC 2, and 19 ft 9 in. of 20 ft", () => {
  const bell = rulesOf(["Bell in a stick", "PVC 40 2: 3"], ["Saw kerf", 0]);
  expect(cuts(runsOf("PVC 40", "2", "east 100'"), bell)[0]).toEqual(near(9 * 12 + 9));
  const [headers, run] = runsOf("PVC 40", "2", "east 100'");
  expect(
    cuts(
      [
        [...headers!, "Stick"],
        [...run!, "20'"],
      ],
      bell,
    )[0],
  ).toEqual(near(19 * 12 + 9));
});

test("the straight that a coupling wants is the shop's where it says so", () => {
  // Of 236.28 two sticks leave a coupling from 116.28 to 120; the bend starts at 119, the shoe wants a tail of 2 before it,
  // so a coupling of 1 may stand up to 116, one of 1/2 up to 116.5.
  const pieces = (rules: unknown[][]) => cuts(runsOf("EMT", "1/2", "east 123, up 115"), rules).length;
  expect([pieces(rulesOf()), pieces(rulesOf(["Straight for a coupling", "EMT: 1/2"]))]).toEqual([3, 2]);
});

test.each([
  ["up 4.5, east 60", "Fittings take 0.75 in. out at the start of a pull, but the straight conduit there is 0.5 in."],
  ["up 60, east 4.5", "Fittings take 0.75 in. out at the end of a pull, but the straight conduit there is 0.5 in."],
  ["up 1.25", "Fittings take 1.5 in. out at the ends of a pull, but the straight conduit there is 1.25 in."],
])("%s with a take-out of 3/4 at each box is refused in words", (route, words) => {
  const found = jobChecks(runsOf("EMT", "1/2", route), none, none, rulesOf(["Take-out at a box", "3/4"]));
  expect(column(found, "Finding")[0]).toContain(words);
});

/** Findings on room for straight ends; that the ends are from memory is said of every such job. */
const tooShort = (found: unknown[][]) =>
  column(found, "Finding").filter((words) => /straight ends/.test(String(words)) && !/from memory/.test(String(words)));

test("an elbow right at a box leaves room for the fitting, or a check says so", () => {
  // RMC 4: R 16, end 3.375 (from memory). 19.375 less a take-out of 1.
  const found = jobChecks(runsOf("RMC", "4", "up 19.375, east 60"), none, none, rulesOf(["Take-out at a box", 1]));
  expect(tooShort(found)).toEqual([expect.stringMatching(/: 1 in\. short\.$/)]);
});

test("a gap between two elbows is room that their straight ends lack", () => {
  // RMC 4: 2 × (16 + 3.375) is 38.75, and the gap besides.
  const found = (leg: number) =>
    tooShort(
      jobChecks(runsOf("RMC", "4", `up 60, east ${leg}, up 60`), none, none, rulesOf(["Gap in a coupling", 0.5])),
    );
  expect(found(39.25)).toEqual([]);
  expect(found(38.75)).toEqual([expect.stringMatching(/: 0\.5 in\. short\.$/)]);
});
