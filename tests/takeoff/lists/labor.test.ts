import { sizedItem } from "../../../src/takeoff/amounts/item";
import { readLabor } from "../../../src/takeoff/lists/labor";
import { lineHours } from "../../../src/takeoff/lines/lineHours";

const IMC = { raceway: "IMC", size: "1" } as const;
const bend = sizedItem(IMC, "bend");
const laborOf = (...rows: (string | number)[][]) => readLabor([["Operation", "Minutes"], ...rows]);

test("the most particular operation counts", () => {
  const rows = [
    ["bend", 3],
    ["1 bend", 4],
    ["IMC bend", 5],
    ["IMC 1 bend", 6],
    ["kick", 7],
    ["IMC 1 kick", 8],
  ];
  const minutes = rows.map((_, index) => laborOf(...rows.slice(0, index + 1)).minutesFor(bend, "kick"));
  expect(minutes).toEqual([3, 4, 5, 6, 7, 8]);
});

test("work without an operation has no minutes", () => {
  expect(laborOf(["strap", 2]).minutesFor(bend, "offset")).toBeUndefined();
});

test("hours of a line add its operations up and name those without minutes", () => {
  const labor = laborOf(["kick", 7], ["offset", 2]);
  const operations = new Map([
    ["kick", 3],
    ["offset", 12],
    ["sweep", 9],
  ]);
  expect(lineHours(bend, operations, labor)).toEqual({ hours: (3 * 7 + 12 * 2) / 60, missing: ["sweep"] });
  expect(lineHours(bend, operations, laborOf())).toEqual({ hours: null, missing: ["kick", "offset", "sweep"] });
});

test("an item by its own name comes before all", () => {
  const connector = sizedItem(IMC, "connector", "set-screw connector");
  const labor = laborOf(["IMC 1 connector", 3], ["IMC 1 set-screw connector", 4]);
  expect(labor.minutesFor(connector, "connector")).toBe(4);
});

test("operations without minutes are named in the order of the alphabet", () => {
  const operations = new Map([
    ["sweep", 1],
    ["kick", 1],
  ]);
  expect(lineHours(bend, operations, laborOf()).missing).toEqual(["kick", "sweep"]);
});

test("minutes that are 0 or empty wait to be filled in; what takes no time says none", () => {
  expect(laborOf(["IMC 1 bend", 0], ["bend", 4]).minutesFor(bend, "bend")).toBe(4);
  expect(laborOf(["bend", ""]).minutesFor(bend, "bend")).toBeUndefined();
  expect(laborOf(["bend", "none"]).minutesFor(bend, "bend")).toBe(0);
});

test("less than no time and a missing column are told", () => {
  expect(laborOf(["strap", 0], ["bend", -1], ["kick", 1]).problems).toEqual([
    "labor row 3: Minutes must be at least 0; got -1.",
  ]);
  expect(() => readLabor([["Operation"]])).toThrow('labor must have the column "Minutes"');
  expect(() => readLabor([["Minutes"]])).toThrow('labor must have the column "Operation"');
});
