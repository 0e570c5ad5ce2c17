import { sizedItem } from "../../src/takeoff/item";
import { readLabor } from "../../src/takeoff/labor";
import { lineHours } from "../../src/takeoff/lineHours";

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
