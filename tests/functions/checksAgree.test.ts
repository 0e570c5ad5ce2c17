/**
 * A row's own Check and the Checks sheet give one answer: each row below is asked both ways, as Set up's formulas ask, and
 * the row says the heaviest finding of Checks, word for word, and how many more Checks has.
 */
import { jobChecks } from "../../functions/job/jobs";
import { runCheck } from "../../functions/job/runs";

const omitted = null as never;
const HEADERS = [
  ...["Run", "Raceway", "Size", "Route", "Quantity", "From", "To", "Conductors", "Stick", "Date", "Crew", "Fittings"],
  ...["Grounding bushing", "Straps", "Start", "Joints", "Where", "Cover"],
];
const SOUND = { Raceway: "EMT", Size: "3/4", Route: "up 4', east 10'", Quantity: 1 };

/** Rows with one thing in them that may be wrong, and whether something is. */
const ROWS: readonly (readonly [name: string, cells: Record<string, unknown>, isSound: boolean])[] = [
  ["sound", {}, true],
  ["quantity -2", { Quantity: -2 }, false],
  ["quantity 0", { Quantity: 0 }, false],
  ["quantity 1.5", { Quantity: 1.5 }, false],
  ["quantity 1e9", { Quantity: 1e9 }, false],
  ["quantity in words", { Quantity: "two" }, false],
  ["copper", { Raceway: "Copper" }, false],
  ["no raceway", { Raceway: "" }, false],
  ["size 5/8", { Size: "5/8" }, false],
  ["size as a date", { Size: 45782 }, false],
  ["no size", { Size: "" }, false],
  ["no route", { Route: "" }, false],
  ["unknown step", { Route: "up 4', sideways 3'" }, false],
  ["legs too short", { Route: "up 2, east 2" }, false],
  ["too many degrees", { Route: "up 40, east 60, south 60, east 60, up 60, east 40" }, false],
  ["over-filled", { Conductors: "30 #12 THHN" }, false],
  ["unknown wire", { Conductors: "3 #12 COPPER" }, false],
  ["too few straps", { Straps: 1 }, false],
  ["straps in words", { Straps: "some" }, false],
  ["stick of -1", { Stick: -1 }, false],
  ["stick in words", { Stick: "long" }, false],
  ["a date in words", { Date: "soon" }, true],
  ["unknown fittings", { Fittings: "glued" }, false],
  ["unknown bushing", { "Grounding bushing": "sideways" }, false],
  ["unknown joints", { Joints: "here" }, false],
  ["unknown place", { Where: "on the moon" }, false],
  ["cover of -1", { Where: "buried", Cover: -1 }, false],
  ["an error value", { Size: "#REF!" }, false],
  ["unknown start", { Start: "there" }, false],
  ["size no shoe is listed for", { Raceway: "RMC", Size: "4" }, false],
  ["bought elbows", { Raceway: "PVC 40", Size: "2", Route: "up 4', east 10'" }, true],
];

const SHOES = [
  ["Raceway", "Size", "Radius", "Deduct", "Measured"],
  ["EMT", "3/4", 4.5, 6, "2026-11-02"],
];
const cellsOf = (name: string, cells: Record<string, unknown>): unknown[] => {
  const row: Record<string, unknown> = { Run: name, ...SOUND, ...cells };
  return HEADERS.map((header) => row[header] ?? "");
};
const rows = ROWS.map(([name, cells]) => cellsOf(name, cells));

/** What Checks says of a run, put together as a cell of the row has it; a Quantity counted as 1 stands under Runs. */
function saidInChecks(table: string[][], name: string): string {
  const own = table
    .slice(1)
    .filter(([run, , , finding]) => run === name || (run === "Runs" && finding!.includes(name)));
  const first = own.find(([, weight]) => weight === "stop") ?? own[0];
  if (!first) return "OK";
  return own.length > 1 ? `${first[3]} (${own.length - 1} more in Checks)` : first[3]!;
}

const saidInRow = (row: unknown[]): string => {
  const [, raceway, size, route] = row;
  return String(runCheck(route, raceway, size, SHOES, omitted, omitted, [HEADERS], [row]));
};

test.each(ROWS.map(([name, , isSound], at) => [name, isSound, at] as const))("%s", (name, isSound, at) => {
  const table = jobChecks([HEADERS, ...rows], SHOES, omitted, omitted) as string[][];
  const said = saidInRow(rows[at]!);
  expect(said).toBe(saidInChecks(table, name));
  expect(said === "OK").toBe(isSound);
});

test("a row without a name is told by both", () => {
  const row = cellsOf("", {});
  const table = jobChecks([HEADERS, row], SHOES, omitted, omitted) as string[][];
  expect(table[1]).toMatchObject(["row 2", "look", "a run has a name", expect.any(String), "Write a name under Run."]);
  expect(saidInRow(row)).toBe(table[1]![3]!.replace("row 2", "the row"));
});

/** Findings that take several rows or lists to see, each with rows that bring it about: Checks alone tells them. */
const OF_SEVERAL: Readonly<Record<string, readonly Record<string, unknown>[]>> = {
  "a run's name stands once": [{}, { Route: "up 5', east 9'" }],
  "two runs must not take the same place": [
    { Run: "first", Start: "0, 0, 0", Route: "east 20'" },
    { Run: "second", Start: "10', 5', 0", Route: "south 10'" },
  ],
};

test.each(Object.entries(OF_SEVERAL))("what one row cannot show stands in Checks alone: %s", (rule, given) => {
  const several = given.map((cells) => cellsOf(String(cells.Run ?? "twice"), cells));
  const found = (jobChecks([HEADERS, ...several], SHOES, omitted, omitted) as string[][]).slice(1);
  expect(found.map(([, , found]) => found)).toEqual([rule]);
  expect(several.map(saidInRow)).toEqual(several.map(() => "OK"));
  for (const row of several) {
    const alone = jobChecks([HEADERS, row], SHOES, omitted, omitted) as string[][];
    expect(alone).toEqual([expect.anything(), expect.arrayContaining(["ok", "1 runs checked, nothing found"])]);
  }
});
