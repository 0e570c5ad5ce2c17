import fc from "fast-check";
import type { CutPattern } from "../../../src/cutting";
import { sawOrder, stopSettings } from "../../../src/takeoff/saw/sawOrder";

const kind = { length: 120, cost: 1, quantity: Infinity, labels: [] };
const stocks = [kind];
const line = (...lengths: number[]): CutPattern => ({
  ...{ stock: 0, count: 1, remnant: 0 },
  cuts: lengths.map((length) => ({ length, count: 1 })),
});
const ordered = (...patterns: CutPattern[]) =>
  sawOrder({ patterns, stocks }).map(({ cuts }) => cuts.map(({ length }) => length));

test("a line begins with the length that the stop stands at", () => {
  // Longest first throughout the stop would be set seven times; this way at 50, 40, 30, 60 and 20.
  expect(ordered(line(50, 40), line(60, 30), line(40, 30), line(20))).toEqual([[50, 40], [40, 30], [30, 60], [20]]);
});

test("a length cut in three lines needs the stop once where nothing comes between", () => {
  const patterns = [line(70), line(30), line(70, 30)];
  expect(stopSettings(sawOrder({ patterns, stocks }), stocks)).toBe(2);
});

test("a whole stick is not cut and needs no stop", () => {
  const patterns = [line(120), line(50), line(120), line(50)];
  expect(stopSettings(sawOrder({ patterns, stocks }), stocks)).toBe(1);
});

const lines = fc.array(
  fc.uniqueArray(fc.integer({ min: 1, max: 8 }), { minLength: 1, maxLength: 3 }).map((all) => line(...all)),
  { maxLength: 6 },
);
const sorted = (patterns: readonly CutPattern[]) =>
  patterns.map(({ cuts }) => [...cuts.map(({ length }) => length)].sort().join()).sort();

test("every line is there once with all its cuts, and the stop is set no more often than before", () => {
  fc.assert(
    fc.property(lines, (patterns) => {
      const after = sawOrder({ patterns, stocks });
      expect(sorted(after)).toEqual(sorted(patterns));
      expect(stopSettings(after, stocks)).toBeLessThanOrEqual(stopSettings(patterns, stocks));
    }),
  );
});

test("settings are counted as the sawyer makes them", () => {
  expect([stopSettings([], stocks), stopSettings([line(50, 40), line(40), line(50)], stocks)]).toEqual([0, 3]);
});
