import { bendCounts } from "../../../src/takeoff/reports/bendCounts";
import { records, rowWhere, runsRange } from "../tables";

const runs = runsRange(
  { Run: "A", Job: "Pier", Route: "up 40, east 60, down 40", Quantity: 3, Crew: "Night", Date: "2026-05-04" },
  // 46147 is 2026-05-05, 6,699 days after 39448, which is 2008-01-01.
  { Run: "B", Job: "Pier", Route: "east 60, offset 6 up at 30, ahead 60", Crew: "Day", Date: 46147 },
  { Run: "C", Job: "Pier", Route: "east 60, saddle 4 up at 45, ahead 60", Quantity: 2, Crew: "Day" },
  { Run: "D", Job: "Quay", Raceway: "IMC", Size: "3/4", Route: "east 60, bend 22.5 up, ahead 60" },
);

test("by job, raceway, size and kind, with a total", () => {
  expect(bendCounts(runs)).toEqual([
    ["Job", "Raceway", "Size", "Kind", "Bends", "Note"],
    ["Pier", "EMT", "1/2", "back-to-back", 3, ""],
    ["Pier", "EMT", "1/2", "offset", 2, ""],
    ["Pier", "EMT", "1/2", "stub-up", 3, ""],
    ["Pier", "EMT", "1/2", "three-bend saddle", 6, ""],
    ["Quay", "IMC", "3/4", "kick", 1, ""],
    ["Total", "", "", "", 15, ""],
  ]);
});

test("by crew and angle, angles as numbers in their order", () => {
  expect(bendCounts(runs, { by: "Crew, Angle" }).map((row) => row.slice(0, 3))).toEqual([
    ["Crew", "Angle", "Bends"],
    ["", 22.5, 1],
    ["Day", 22.5, 4],
    ["Day", 30, 2],
    ["Day", 45, 2],
    ["Night", 90, 6],
    ["Total", "", 15],
  ]);
});

test("without a column there is the total", () => {
  expect(bendCounts(runs, { by: "none" })).toEqual([
    ["Bends", "Note"],
    [15, ""],
  ]);
});

test("hours come from the user's minutes for each bend; kinds without minutes are named", () => {
  const labor = [
    ["Operation", "Minutes"],
    ["stub-up", 2],
    ["EMT back-to-back", 4],
    ["three-bend saddle", 5],
  ];
  const table = bendCounts(runs, { labor });
  expect(rowWhere(table, { Kind: "back-to-back" })).toMatchObject({ Hours: 12 / 60, Note: "" });
  expect(rowWhere(table, { Kind: "kick" })).toMatchObject({ Hours: "", Note: "no minutes for kick" });
  expect(rowWhere(table, { Job: "Total" })).toMatchObject({
    Hours: (3 * 2 + 3 * 4 + 6 * 5) / 60,
    Note: "no minutes for kick, offset",
  });
});

test("a run that cannot be bent is told after the total", () => {
  const table = bendCounts(runsRange({ Run: "A", Route: "up 40, east 60" }, { Run: "X", Route: "up 9, east 2, up 9" }));
  const rows = records(table);
  expect(rowWhere(table, { Job: "Total" })["Bends"]).toBe(1);
  expect(String(rows[rows.length - 1]!["Note"])).toMatch(/^not counted: X: /);
});

test("bends that factory elbows replace are not the shop's", () => {
  const rules = [
    ["Rule", "Value"],
    ["Factory elbows above size, metal", "1/2"],
  ];
  const elbows = runsRange({ Run: "A", Raceway: "EMT", Size: "3/4", Route: "up 40, east 60, bend 20 up, ahead 60" });
  expect(rowWhere(bendCounts(elbows, { rules }), { Job: "Total" })["Bends"]).toBe(1);
});

test("an unknown column is refused", () => {
  expect(() => bendCounts(runs, { by: "Week" })).toThrow(
    /^by must name columns out of Job, .*, Kind, Angle; got "Week"\.$/,
  );
});

test("what could not be counted stands in the last column, the others stay empty; conductors bend nothing", () => {
  const spoilt = runsRange(
    { Run: "A", Route: "up 40, east 60", Conductors: "many" },
    { Run: "X", Route: "up 40, east 60", Size: "9" },
  );
  const labor = [
    ["Operation", "Minutes"],
    ["bend", "none"],
    ["kick", -1],
  ];
  expect(bendCounts(spoilt, { by: "Run", labor })).toEqual([
    ["Run", "Bends", "Hours", "Note"],
    ["A", 1, 0, ""],
    ["Total", 1, 0, ""],
    ["", "", "", expect.stringMatching(/^not counted: X: Size must be /)],
    ["", "", "", "labor row 3: Minutes must be at least 0; got -1."],
  ]);
  expect(bendCounts(spoilt, { by: "Run" })[3]).toEqual(["", "", expect.stringMatching(/^not counted: X: /)]);
});

test("angles stand by their value: 11.25 before 11.5, 2 before 10", () => {
  const kicks = [11.5, 11.25, 10, 2].map((angle) => ({
    Run: `K${angle}`,
    Route: `east 60, bend ${angle} up, ahead 60`,
  }));
  expect(bendCounts(runsRange(...kicks), { by: "Angle" }).map((row) => row[0])).toEqual([
    ...["Angle", 2, 10, 11.25, 11.5],
    "Total",
  ]);
});

test("an empty cell asks for the usual columns", () => {
  expect(bendCounts(runs, { by: "" })).toEqual(bendCounts(runs));
});
