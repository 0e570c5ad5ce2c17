import { RUN_COLUMNS } from "../../../src/shop/run/runsTable";
import { changes } from "../../../src/takeoff/reports/changes";
import { records, rowWhere, runsRange } from "../tables";

const A = { Run: "A", Job: "Pier", Route: "up 40, east 5'" };
const B = { Run: "B", Job: "Pier", Route: "east 80", Quantity: 2 };
const C = { Run: "C", Job: "Pier", Route: "east 60" };
const runRows = (table: (string | number)[][]) =>
  records(table)
    .filter(({ Change }) => !["quantity", "not counted", "not read"].includes(String(Change)))
    .map((row) => Object.values(row).slice(0, 5));

test("runs added, gone and changed are told, with the columns that changed", () => {
  const after = [{ ...B, Quantity: 3, To: "JB-4" }, { ...C, Run: "D", Route: "east 61" }, A];
  expect(runRows(changes(runsRange(A, B, C), runsRange(...after)))).toEqual([
    ["added", "D", "", "", "east 61"],
    ["gone", "C", "", "east 60", ""],
    ["changed", "B", "Quantity", "2", "3"],
    ["changed", "B", "To", "", "JB-4"],
  ]);
});

test("the same route in another spelling is no change", () => {
  expect(runRows(changes(runsRange(A), runsRange({ ...A, Route: "UP 3' 4\"; east 60" })))).toEqual([]);
});

test("a run whose job changed is the same run; runs of one name in two jobs are told apart", () => {
  expect(runRows(changes(runsRange(A), runsRange({ ...A, Job: "Quay" })))).toEqual([
    ["changed", "A", "Job", "Pier", "Quay"],
  ]);
  const quay = { ...A, Job: "Quay", Route: "east 99" };
  expect(runRows(changes(runsRange(A, quay), runsRange({ ...quay, Route: "east 98" }, A)))).toEqual([
    ["changed", "A", "Route", "east 99", "east 98"],
  ]);
});

test("every line of the take-off has its difference", () => {
  const table = changes(runsRange(B), runsRange({ ...B, Quantity: 3, Route: "east 84" }));
  expect(rowWhere(table, { "Run or item": "EMT 1/2 conduit" })).toEqual({
    Change: "quantity",
    "Run or item": "EMT 1/2 conduit",
    "Column or unit": "ft",
    Before: 160 / 12,
    After: 21,
    Difference: 21 - 160 / 12,
  });
  expect(rowWhere(table, { "Run or item": "EMT 1/2 set-screw connector" })).toMatchObject({ Before: 4, After: 6 });
});

test("an item that only one state has counts as none in the other", () => {
  const table = changes(runsRange(B), runsRange({ ...B, Raceway: "IMC" }));
  expect(rowWhere(table, { "Run or item": "EMT 1/2 set-screw connector" })).toMatchObject({ After: 0, Difference: -4 });
  expect(rowWhere(table, { "Run or item": "IMC 1/2 locknut" })).toMatchObject({ Before: 0, Difference: 8 });
});

test("a run that can no longer be read is told as such, not as gone", () => {
  const table = changes(runsRange(A), runsRange({ ...A, Size: "7" }));
  const changed = rowWhere(table, { Change: "changed", "Column or unit": "Row" });
  expect(changed["After"]).toContain("not read: Size must be");
  expect(rowWhere(table, { Change: "not counted" })).toMatchObject({ "Run or item": "A", "Column or unit": "after" });
});

test("a missing header says in which of the two ranges", () => {
  expect(() => changes(runsRange(A), [["Run"]])).toThrow('after must have the columns "Raceway", "Size", "Route"');
});

test("a row for a run and a row for a quantity, cell by cell", () => {
  const table = changes(runsRange(A), runsRange({ ...A, Crew: "Night" }));
  expect(table.slice(0, 2)).toEqual([
    ["Change", "Run or item", "Column or unit", "Before", "After", "Difference"],
    ["changed", "A", "Crew", "", "Night", ""],
  ]);
  expect(table.slice(2).map((row) => row[0])).toEqual(Array(table.length - 2).fill("quantity"));
});

test("runs stand by what happened, then by name, whatever the order of their rows", () => {
  const runs = (...names: string[]) => names.map((Run) => ({ ...B, Run }));
  const before = runsRange(...runs("R10", "R2"), C, A);
  const after = runsRange({ ...A, Crew: "Night" }, { ...C, Crew: "Night" }, ...runs("N10", "N2"));
  expect(runRows(changes(before, after)).map((row) => row.slice(0, 2))).toEqual([
    ["added", "N2"],
    ["added", "N10"],
    ["gone", "R2"],
    ["gone", "R10"],
    ["changed", "A"],
    ["changed", "C"],
  ]);
});

test("of two rows alike but for one cell, the order of rows does not matter", () => {
  const twins = [
    { ...A, Area: "1" },
    { ...A, Area: "2" },
  ];
  const later = [
    { ...A, Area: "3" },
    { ...A, Area: "4" },
  ];
  const told = runRows(changes(runsRange(...twins), runsRange(...later)));
  expect(told).toHaveLength(2);
  expect(runRows(changes(runsRange(...twins.reverse()), runsRange(...later)))).toEqual(told);
  expect(runRows(changes(runsRange(...twins), runsRange(...later.reverse())))).toEqual(told);
});

const OTHER_CELLS = [
  ["Job", "Quay"],
  ["Area", "North"],
  ["Raceway", "IMC"],
  ["Size", "3/4"],
  ["Route", "east 61"],
  ["Quantity", "4"],
  ["From", "JB-1"],
  ["To", "JB-2"],
  ["Conductors", "3 #12 THHN"],
  ["Stick", "20' 0\""],
  ["Date", "2026-05-04"],
  ["Crew", "Night"],
  ["Fittings", "compression"],
  ["Grounding bushing", "from"],
  ["Straps", "3"],
  ["Start", "100 0 96"],
  ["Joints", "2' 0\""],
  ["Where", "under a road, hot"],
  ["Cover", "2' 0\""],
  ["Temperature change", "90"],
  ["Ambient", "40 °C"],
  ["Breaker", "600 A, 2 sets"],
  ["Check pull", "0.35"],
  ["Phase", "2"],
  ["Floor", "7"],
  ["Height", "14.5 ft"],
  ["Alternate", "not A1"],
  ["Typical", "ROOM-A"],
] as const;

test.each(OTHER_CELLS)("a change of %s is told", (column, value) => {
  const told = runRows(changes(runsRange(C), runsRange({ ...C, [column]: value })));
  expect(told).toEqual([["changed", "C", column, expect.any(String), value]]);
});

test("a change of Rack is told of each of its conduits", () => {
  const rack = (cell: string) => runsRange({ ...C, Rack: cell });
  expect(runRows(changes(rack("2 at 3 north"), rack("2 at 4 north")))).toEqual([
    ["changed", "C-1", "Rack", expect.stringMatching(/^1 of 2, 3" apart/), expect.stringMatching(/^1 of 2, 4" apart/)],
    ["changed", "C-2", "Rack", expect.stringMatching(/0 3 0 from/), expect.stringMatching(/0 4 0 from/)],
  ]);
  expect(runRows(changes(rack("2 at 3 north"), rack("2 at 3 south")))).toEqual([
    ["changed", "C-2", "Rack", expect.stringMatching(/0 3 0 from/), expect.stringMatching(/0 -3 0 from/)],
  ]);
});

test("these are all the columns of Runs but the name", () => {
  const told = ["Run", "Rack", ...OTHER_CELLS.map(([column]) => column)];
  expect(told.sort()).toEqual(RUN_COLUMNS.map(({ name }) => name).sort());
});

test("lines of quantities stand as the take-off has them, whichever state they come from", () => {
  const table = changes(runsRange({ ...B, Raceway: "RMC" }), runsRange({ ...B, Raceway: "EMT" }));
  const raceways = records(table)
    .filter(({ Change }) => Change === "quantity")
    .map((row) => String(row["Run or item"]).split(" ")[0]);
  expect([...new Set(raceways)]).toEqual(["EMT", "RMC"]);
  expect(raceways).toEqual([...raceways].sort());
});

test("what could not be counted or read is told with its state, and the other cells stay empty", () => {
  const [bad, zero] = [
    { ...A, Route: "sideways" },
    { ...B, Quantity: 0 },
  ];
  const rules = [
    ["Rule", "Value"],
    ["Staples", 1],
  ];
  expect(changes(runsRange(bad), runsRange(bad, zero), { rules }).slice(-4)).toEqual([
    ["not counted", "A", "before", expect.stringContaining("step 1"), "", ""],
    ["not counted", "A", "after", expect.stringContaining("step 1"), "", ""],
    ["not read", 'rules row 2: no rule is called "Staples"; JOB.RULES lists the rules.', "", "", "", ""],
    ["not read", "Quantity is 0 or empty and counts as 1: B", "", "", "", ""],
  ]);
  expect(changes(runsRange(zero), runsRange(A)).slice(-1)).toEqual([
    ["not read", "Quantity is 0 or empty and counts as 1: B", "", "", "", ""],
  ]);
});

test("a missing header of the state before is told as such", () => {
  expect(() => changes([["Run"]], runsRange(A))).toThrow('before must have the columns "Raceway", "Size", "Route"');
});

test("of a run that can no longer be read every cell is told as gone; a new one has no route to show", () => {
  const told = runRows(changes(runsRange(B), runsRange({ ...B, Size: "7" })));
  expect(told).toEqual([
    ["changed", "B", "Job", "Pier", ""],
    ["changed", "B", "Raceway", "EMT", ""],
    ["changed", "B", "Size", "1/2", ""],
    ["changed", "B", "Route", "east 80", ""],
    ["changed", "B", "Quantity", "2", ""],
    ["changed", "B", "Stick", "10' 0\"", ""],
    ["changed", "B", "Row", "", expect.stringMatching(/^not read: Size must be /)],
  ]);
  const bad = { ...C, Size: "7" };
  expect(runRows(changes(runsRange(B, bad), runsRange(B)))).toEqual([["gone", "C", "", "", ""]]);
  expect(runRows(changes(runsRange(B), runsRange(B, bad)))).toEqual([["added", "C", "", "", ""]]);
});

test("a route that cannot be read is compared as it is written", () => {
  const [before, after] = ["sideways", "sideways 2"].map((Route) => runsRange({ ...C, Route }));
  expect(runRows(changes(before, after))).toEqual([["changed", "C", "Route", "sideways", "sideways 2"]]);
});

test("runs are paired within their job before the job may have changed", () => {
  const [pier, quay] = [A, { ...A, Job: "Quay", Route: "east 99" }];
  const after = runsRange({ ...quay, Route: "east 98" }, { ...pier, Job: "Zoo" });
  expect(runRows(changes(runsRange(pier, quay), after)).sort()).toEqual([
    ["changed", "A", "Job", "Pier", "Zoo"],
    ["changed", "A", "Route", "east 99", "east 98"],
  ]);
});
