/**
 * Large 90s in shots, side by side. [in]
 * - porcupinepress.com, _bending/Concentric (a publisher of trade textbooks): 2 in. rigid, 2 in. clear, 15 bends of 6°; the print
 *   spaces them by R·tan 6° (0.37 % more than the arc) and takes the arc as R × 90 × .0175 (0.27 % more).
 * - An apprenticeship worksheet on concentric bends (studylib.net/doc/27409366), questions 44 to 75: 2-1/2 in. rigid with a stub of
 *   48 and a leg of 65 1/2 in 18 shots, neighbors of 2-1/2, 2 and 1 in.; a straight edge of 24 in. inside the bend stands 2 7/32
 *   from it. Its answers are not shown: worked out by hand with the lesson's formulas and its arc of 1.57 R; 3 in. taken as clear.
 */
import { bendGain } from "../../src/bends/shapes/bendGain";
import { outsideDiameter } from "../../src/raceway/dimensions";
import type { TradeSize } from "../../src/raceway/tradeSize";
import { bendRadius } from "../../functions/bend/bends";
import { sweepMarksOf, sweepParallel } from "../../functions/bend/sweeps";

const SIXTY_FOURTH = 1 / 64;
const marksOf = (radius: number, shots: number) =>
  sweepMarksOf(90, radius, shots)
    .slice(1)
    .map(([, mark]) => Number(mark));

test("concentric 90s of 2 in. rigid, 2 in. clear: radii grow by its diameter and the clear space, 4 3/8", () => {
  const radii = sweepParallel(20, outsideDiameter("RMC", "2") + 2, 3)
    .slice(1)
    .map(([, radius]) => radius);
  expect(radii).toEqual([20, 24.375, 28.75]);
});

test.each([
  [20, 2.1, 2.0944],
  [24.375, 2.56, 2.5525],
  [28.75, 3.02, 3.0107],
])("15 shots on R %d: printed %d apart, exactly %d", (radius, printed, exact) => {
  const [first, second] = marksOf(radius, 15);
  expect(second! - first!).toBeCloseTo(exact, 4);
  expect(Math.abs(radius * Math.tan(Math.PI / 30) - printed)).toBeLessThan(0.005);
  expect(Math.abs(printed / exact - 1)).toBeLessThan(0.004);
});

test("24 in. of straight edge, 2 7/32 from a bend of 2-1/2 in. rigid: R 35", () => {
  // (12² + s²)/(2s) = 33.56 inside, and half of 2.875.
  expect(bendRadius(24, "2 7/32", outsideDiameter("RMC", "2-1/2"))).toBeCloseTo(35, 2);
});

test.each<[string, TradeSize, number, number, number, number, number, number]>([
  ["B", "2-1/2", 35, 48, 65.5, 54.95, 3.0528, 95.575],
  ["A, outside", "2-1/2", 40.875, 53.875, 71.375, 64.174, 3.5652, 104.799],
  ["C, inside", "2", 29.375, 42.125, 59.625, 46.119, 2.5622, 86.744],
  ["D, inside C", "1", 24.53, 36.75, 54.25, 38.512, 2.1396, 79.137],
])(
  "nested 90 %s (size %s): arc, spacing and total by the lesson",
  (_run, size, radius, stub, leg, arc, apart, total) => {
    const off = radius * (Math.PI / 2 - 1.57);
    const marks = marksOf(radius, 18);
    expect(Math.abs(marks[1]! - marks[0]! - off / 18 - apart)).toBeLessThan(1e-4);
    expect(Math.abs(18 * (marks[1]! - marks[0]!) - off - arc)).toBeLessThan(6e-4);
    // D's total is worked out from a radius and a diameter that are cut at three places.
    expect(Math.abs(stub + leg - bendGain(90, radius, outsideDiameter("RMC", size)) - off - total)).toBeLessThan(
      SIXTY_FOURTH,
    );
  },
);

test("their radii stand half of both diameters and 3 in. apart", () => {
  const apart = (a: TradeSize, b: TradeSize) => (outsideDiameter("RMC", a) + outsideDiameter("RMC", b)) / 2 + 3;
  expect(35 + apart("2-1/2", "2-1/2")).toBe(40.875);
  expect(35 - apart("2-1/2", "2")).toBe(29.375);
  expect(29.375 - apart("2", "1")).toBeCloseTo(24.53, 9);
});
