/** Which runs are cut from the same sticks, and from which. */
import { jobCuts } from "../../../src/takeoff/reports/jobCuts";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { records, runsRange } from "../tables";

const straight = (Run: string, inches: number, more: Record<string, string | number> = {}) => ({
  Run,
  Route: `east ${inches}`,
  ...more,
});
const cells = (table: (string | number)[][], ...columns: string[]) =>
  records(table).map((row) => columns.map((column) => row[column]));

test("lots stand as the trade lists raceways and sizes, not by the alphabet", () => {
  const lots = [
    ["PVC 40", "1"],
    ["PVC-coated RMC", "1"],
    ["RMC", "1"],
    ["RMC", "1/2"],
    ["RMC", "1-1/4"],
  ].map(([Raceway, Size], index) => straight(`R${index}`, 50, { Raceway: Raceway!, Size: Size! }));
  const table = jobCuts(runsRange(...lots));
  expect(records(table).flatMap((row) => (row["Stick"] === "all" ? [`${row["Raceway"]} ${row["Size"]}`] : []))).toEqual(
    [...["RMC 1/2", "RMC 1", "RMC 1-1/4", "PVC-coated RMC 1", "PVC 40 1"]],
  );
});

test("stock that is only on hand is filled up with the sticks of the runs, of every length they ask for", () => {
  const stock = [
    ["Raceway", "Size", "Length", "On hand"],
    ["EMT", "1/2", 60, 1],
  ];
  // 200 in. need the longer stick; another holds the rest. Were the lots parted, there would be two rows for all.
  const runs = runsRange(straight("A", 100), straight("B", 200, { Stick: 240 }));
  const rows = cells(jobCuts(runs, { stock }), "Sticks", "Stick", "For");
  expect(rows[0]).toEqual([2, "all", ""]);
  expect(rows).toContainEqual([1, '240"', "B/1"]);
  expect(rows.map(([, , label]) => label).sort()).toEqual(["", "A/1", "B/1"]);
});

test("a stick on hand of the runs' own length does not stand for those to be bought", () => {
  const stock = [
    ["Raceway", "Size", "Length", "On hand"],
    ["EMT", "1/2", 120, 1],
  ];
  expect(cells(jobCuts(runsRange(straight("A", 100, { Quantity: 2 })), { stock }), "Sticks", "Stick", "For")).toEqual([
    [2, "all", ""],
    [1, '120" on hand', "A/1"],
    [1, '120"', "A/1"],
  ]);
});

test("where sticks to be bought are given, the runs' own length is not", () => {
  const stock = [
    ["Raceway", "Size", "Length"],
    ["EMT", "1/2", 96],
  ];
  expect(cells(jobCuts(runsRange(straight("A", 50)), { stock }), "Stick")).toEqual([["all"], ['96"']]);
});

test("a kerf in millimeters has everything planned and shown in millimeters", () => {
  // 40 in. are 1016 mm and 10 ft 3048 mm; two pieces and two cuts of 2 mm leave 1012 mm.
  expect(jobCuts(runsRange(straight("A", 40, { Quantity: 2 })), { kerf: "2 mm" })[2]).toEqual([
    ...["EMT", "1/2", 1, "3048 mm", "2 × 1016 mm", "1012 mm", "A/1 ×2", "", "drop 1", "Stock"],
  ]);
});

test("a kerf of a thirty-second has pieces of sixteenths planned in thirty-seconds", () => {
  // 40-1/16 in. twice and two cuts of 1/32 in. leave 39-13/16 in.
  expect(jobCuts(runsRange(straight("A", 40.0625, { Quantity: 2 })), { kerf: 1 / 32 })[2]).toEqual([
    ...["EMT", "1/2", 1, '120"', '2 × 40-1/16"', '39-13/16"', "A/1 ×2", "", "drop 1", "Stock"],
  ]);
});

test("pieces are cut to the nearest sixteenth; a piece just short of its stick is the stick", () => {
  const cuts = (inches: number) => jobCuts(runsRange(straight("A", inches)), { kerf: 0 })[2]!.slice(4, 6);
  expect([cuts(50.03), cuts(50.04), cuts(119.99), cuts(119.96)]).toEqual([
    ...[
      ['50"', '70"'],
      ['50-1/16"', '69-15/16"'],
      ['120"', "none"],
      ['119-15/16"', '1/16"'],
    ],
  ]);
});

test("what is told in words leaves the other columns empty; conductors are not the saw's matter", () => {
  const runs = runsRange(
    straight("A", 50, { Conductors: "many" }),
    { Run: "X", Route: "sideways" },
    straight("Z", 50, { Quantity: 0, Raceway: "IMC" }),
  );
  const told = jobCuts(runs).slice(6);
  expect(told).toEqual([
    ["", "", "", "not cut: X", "", "", "", expect.stringContaining("step 1"), "", ""],
    ["", "", "", "not read", "", "", "", "Quantity is 0 or empty and counts as 1: Z", "", ""],
  ]);
});

test("a shortest offcut below nothing is refused; an empty text takes the rule's", () => {
  const runs = runsRange(straight("A", 100));
  expect(() => jobCuts(runs, { keep: -1 })).toThrow("keep must be at least 0 in.; got -1 in.");
  expect(jobCuts(runs, { keep: "", kerf: "" })).toEqual(jobCuts(runs));
});

test("a run shorter than the saw's smallest step takes one, and hides no other", () => {
  const runs = runsRange(straight("A", 0.01), straight("B", 70, { Quantity: 3 }));
  const named = (ranges: object) => cells(jobCuts(runs, ranges), "Cut", "For").filter(([, label]) => label !== "");
  expect(named({})).toContainEqual(['70", 1/16"', expect.stringContaining("A/1")]);
  expect(named({ kerf: "2 mm" })).toContainEqual(["1778 mm, 0.3 mm", expect.stringContaining("A/1")]);
  expect(takeoff(runs).find(([item]) => item === "EMT 1/2 conduit, 10 ft stick")![2]).toBe(3);
});
