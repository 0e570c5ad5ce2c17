import { changes } from "../../src/takeoff/changes";
import { records, rowWhere, runsRange } from "./tables";

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
