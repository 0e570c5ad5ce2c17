/**
 * Least radii: NEC chapter 9, table 2. One-shot column as homesteady.com (list-7565317) and a list of factory elbows at
 * poletoparis.com print it; rows marked M, and the whole column of other bends, are from memory.
 * Metric designators: NEC 2023, table 300.1(C), as read.
 * Threads: ASME B1.20.1, unifiedalloys.com/p/pipe-threads.
 */
import { minimumRadius, minimumRadiusRow } from "../../src/raceway/minimumRadius";
import { racewayData } from "../../src/raceway/racewayData";
import { thread } from "../../src/raceway/threads";
import { TRADE_SIZES } from "../../src/raceway/tradeSize";

/** One-shot [in], other bends [in], "M" from memory, metric designator, threads per inch, effective thread L2 [in]. */
const ROWS = [
  ["1/2", 4, 4, "", 16, 14, 0.5337],
  ["3/4", 4.5, 5, "", 21, 14, 0.5457],
  ["1", 5.75, 6, "", 27, 11.5, 0.6828],
  ["1-1/4", 7.25, 8, "", 35, 11.5, 0.7068],
  ["1-1/2", 8.25, 10, "M", 41, 11.5, 0.7235],
  ["2", 9.5, 12, "M", 53, 11.5, 0.7565],
  ["2-1/2", 10.5, 15, "", 63, 8, 1.1375],
  ["3", 13, 18, "", 78, 8, 1.2],
  ["3-1/2", 15, 21, "", 91, 8, 1.25],
  ["4", 16, 24, "", 103, 8, 1.3],
  ["5", 24, 30, "M", 129, 8, 1.4063],
  ["6", 30, 36, "", 155, 8, 1.5125],
] as const;

/** The one-shot column in millimeters, from memory; 210 to 406 also stand in a list of EMT elbows that was read. */
const MILLIMETERS = [102, 114, 146, 184, 210, 241, 267, 330, 381, 406, 610, 762];

test("there is a row for every trade size", () => {
  expect(ROWS.map(([size]) => size)).toEqual(TRADE_SIZES);
});

test.each(ROWS)(
  "size %s: radii, designator and thread",
  (size, oneShot, other, memory, designator, perInch, length) => {
    expect(minimumRadius(size, "one-shot")).toBe(oneShot);
    expect(minimumRadius(size, "other")).toBe(other);
    expect(minimumRadiusRow(size, "one-shot").source).toBe(memory ? "NEC table 2 memory" : "NEC table 2 print");
    expect(minimumRadiusRow(size, "other").source).toBe("NEC table 2 memory");
    expect(racewayData("RMC", size, "metric designator")).toBe(designator);
    expect(thread("RMC", size, "perInch").value).toBe(perInch);
    expect(thread("RMC", size, "length").value).toBe(length);
  },
);

test("the one-shot radii are the millimeters of the metric column, rounded", () => {
  expect(TRADE_SIZES.map((size) => Math.round(minimumRadius(size, "one-shot") * 25.4))).toEqual(MILLIMETERS);
});

test("other bends are never tighter than one-shot bends", () => {
  for (const size of TRADE_SIZES) {
    expect(minimumRadius(size, "other")).toBeGreaterThanOrEqual(minimumRadius(size, "one-shot"));
  }
});

/** B1.20.1 defines L2 = (0.8·D + 6.8)/n, with D the pipe's outside diameter and n the threads per inch; from memory. */
test("effective threads follow from the outside diameter and the pitch", () => {
  for (const [size, , , , , perInch, length] of ROWS) {
    const outside = racewayData("RMC", size, "outside diameter") as number;
    expect(Math.abs((0.8 * outside + 6.8) / perInch - length)).toBeLessThan(1e-3);
  }
});
