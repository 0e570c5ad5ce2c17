/**
 * Factory elbows [in]. Straight end of a 90 by size: ANSI C80.1, table of elbows, from memory (no source seen); PVC of UL 651
 * alike, from memory too. The radii of 1/2 to 1-1/4, 2-1/2 to 4 and 6 are in print (see racewayRadiiAndDesignators), the
 * others from memory. Center to end and developed length are worked out from both: R + S and πR/2 + 2S.
 * Trade size 2: one-shot 9-1/2, other bends 12, as read at forums.mikeholt.com, thread 2575126 (a forum).
 */
import { dataOf } from "../../functions/job/tables";
import { jobChecks } from "../../functions/job/jobs";
import { runMarks } from "../../functions/job/runs";

const THOUSANDTH = 5e-4;

test.each([
  ["1/2", 4, 1.5, 5.5, 9.283],
  ["3/4", 4.5, 1.5, 6, 10.069],
  ["1", 5.75, 1.875, 7.625, 12.782],
  ["1-1/4", 7.25, 2, 9.25, 15.388],
  ["1-1/2", 8.25, 2, 10.25, 16.959],
  ["2", 9.5, 2, 11.5, 18.923],
  ["2-1/2", 10.5, 3, 13.5, 22.493],
  ["3", 13, 3.125, 16.125, 26.67],
  ["3-1/2", 15, 3.25, 18.25, 30.062],
  ["4", 16, 3.375, 19.375, 31.883],
  ["5", 24, 3.625, 27.625, 44.949],
  ["6", 30, 3.75, 33.75, 54.624],
])("an elbow of size %s: radius %d, ends %d, center to end %d, developed %d", (size, radius, end, toEnd, developed) => {
  for (const raceway of ["RMC", "PVC 80"]) {
    expect(dataOf(raceway, size, "elbow radius")).toBe(radius);
    expect(dataOf(raceway, size, "elbow straight end")).toBe(end);
    expect(dataOf(raceway, size, "elbow straight end source")).toMatch(/from memory/);
  }
  // A leg of twice the center to end is used up by two elbows: nothing is cut between them, and nothing is found.
  const route = `up 200, east ${2 * toEnd}, up 200`;
  const rows = runMarks(route, "RMC", size, undefined, [["Rule", "Value"], ["Factory elbows above size, metal", "all"]]); // prettier-ignore
  const cut = rows.slice(1).reduce((sum, row) => sum + Number(row[2]), 0);
  expect(Math.abs(400 + 2 * toEnd - 4 * radius + Math.PI * radius - cut - 2 * developed)).toBeLessThan(2 * THOUSANDTH);
  expect(rows.slice(1).map((row) => row[4]).join()).toMatch(/straight,factory elbow,factory elbow,straight/); // prettier-ignore
});

test("4 in. rigid: two elbows with a stick between them are 157 in. center to center", () => {
  // 2 × 19.375 + 118.25; from memory, as above.
  const rows = runMarks("up 100, east 157, up 100", "RMC", "4");
  expect(rows.slice(1).map((row) => row[2])).toEqual([80.625, "", 118.25, "", 80.625].map(near));
});

test("2 in. EMT: 9-1/2 for one-shot bends, 12 for others", () => {
  expect([dataOf("EMT", "2", "minimum radius"), dataOf("EMT", "2", "minimum radius other")]).toEqual([9.5, 12]);
});

// Sweeps of PVC of 18, 24, 30, 36 and 48 in., and of rigid 2 of 18 in.: public pages of sellers, weak. 12, 15, 42: from memory.
test.each([
  ["PVC 40", [12, 15, 18, 24, 30, 36, 42, 48]],
  ["RMC", [18]],
])("%s of special radii is nothing to look at; one of 25 in. is", (raceway, radii) => {
  const measured = [
    ["Rule", "Value"],
    ["Factory elbow straight ends", 2],
  ];
  const found = (radius: number) => {
    const runs = [
      ["Run", "Raceway", "Size", "Route"],
      ["A", raceway, "2", `up 90, elbow ${radius}, east 90`],
    ];
    return jobChecks(runs, undefined, null, measured).slice(1);
  };
  for (const radius of radii)
    expect(found(radius)).toEqual([["all runs", "ok", "", "1 runs checked, nothing found", ""]]);
  expect(found(25)[0]![3]).toBe("a factory elbow of 25 in. radius is not a usual one.");
});

test("that straight ends are from memory is said once for the job, with what to write into Rules; EMT has none listed", () => {
  const runs = [
    ["Run", "Raceway", "Size", "Route"],
    ["A", "RMC", "4", "up 90, east 90"],
    ["B", "RMC", "4", "up 90, north 90"],
    ["C", "PVC 40", "2", "up 90, east 90"],
    ["D", "EMT", "2", "up 90, east 90"],
    ["E", "RMC", "3", "up 90"],
  ];
  const said = (rules?: unknown[][]) =>
    jobChecks(runs, undefined, null, rules).filter(([, , rule]) => /straight ends/.test(String(rule)));
  expect(said()).toHaveLength(1);
  expect(said()[0]!.slice(3)).toEqual([
    "straight ends of factory elbows are from memory of ANSI C80.1, not from a print (RMC 4: 3.375 in., PVC 40 2: 2 in.); pieces beside them are cut to that.",
    "Check your supplier's, and write them into Rules, Factory elbow straight ends, as in RMC 4: 3.375; PVC 40 2: 2.",
  ]);
  const some = [
    ["Rule", "Value"],
    ["Factory elbow straight ends", "RMC 4: 3.25"],
  ];
  expect(said(some)[0]![3]).toContain("(PVC 40 2: 2 in.)");
  const all = [
    ["Rule", "Value"],
    ["Factory elbow straight ends", "RMC 4: 3.25; PVC 40 2: 2"],
  ];
  expect(said(all)).toEqual([]);
});

const near = (value: number | string) => (typeof value === "number" ? (expect.closeTo(value, 9) as number) : value);
