/** Straight lines and control limits against published data with known answers. */
import { controlLimits } from "../../src/made/learning/controlChart";
import { coverage, fitLine, fitProportion } from "../../src/made/learning/lineFit";

/**
 * NIST Statistical Reference Datasets, linear regression, "Norris" (ozone monitors, 36 points), data and certified values
 * from memory. That data and certified values agree to so many digits shows that both are remembered right.
 */
const NORRIS =
  `0.1 0.2, 338.8 337.4, 118.1 118.2, 888.0 884.6, 9.2 10.1, 228.1 226.5, 668.5 666.3, 998.5 996.3, 449.1 448.6,
  778.9 777.0, 559.2 558.2, 0.3 0.4, 0.1 0.6, 778.1 775.5, 668.8 666.9, 339.3 338.0, 448.9 447.5, 10.8 11.6, 557.7 556.0,
  228.3 228.1, 998.0 995.8, 888.8 887.6, 119.6 120.2, 0.3 0.3, 0.6 0.3, 557.6 556.8, 339.3 339.1, 888.0 887.2, 998.5 999.0,
  778.9 779.0, 10.2 11.1, 117.6 118.3, 228.9 229.2, 668.4 669.1, 449.2 448.9, 0.2 0.5`
    .split(",")
    .map((pair) => pair.trim().split(" ").map(Number))
    .map(([y, x]) => ({ x: x!, y: y! }));

test("the line of the Norris data, its uncertainties and its scatter are the certified ones", () => {
  const { intercept, slope, scatter, freedom } = fitLine(NORRIS);
  expect(NORRIS).toHaveLength(36);
  expect(intercept.value).toBeCloseTo(-0.262323073774029, 10);
  expect(intercept.u).toBeCloseTo(0.232818234301152, 10);
  expect(slope.value).toBeCloseTo(1.00211681802045, 12);
  expect(slope.u).toBeCloseTo(0.429796848199937e-3, 12);
  expect(scatter).toBeCloseTo(0.884796396144373, 10);
  expect(freedom).toBe(34);
});

/** GUM Tree Calculator, tutorial on straight lines (read): u(y) 0.5 each; intercept 1.87, slope 1.76, χ² 1.66476. */
test("the line of the GUM Tree tutorial", () => {
  const points = [3.3, 5.6, 7.1, 9.3, 10.7, 12.1].map((y, index) => ({ x: index + 1, y }));
  const { intercept, slope, scatter } = fitLine(points);
  expect(intercept.value).toBeCloseTo(1.87, 2);
  expect(slope.value).toBeCloseTo(1.76, 2);
  expect((scatter ** 2 * 4) / 0.25).toBeCloseTo(1.66476, 4);
  // Its uncertainties are those of a known scatter of 0.5.
  expect((intercept.u * 0.5) / scatter).toBeCloseTo(0.47, 2);
  expect((slope.u * 0.5) / scatter).toBeCloseTo(0.12, 2);
});

test("through 0: worked out by hand", () => {
  // y = 2, 4, 9 at 1, 2, 3: slope 37/14; misses −9/14, −18/14, 15/14.
  const { slope, scatter, at } = fitProportion([{ x: 1, y: 2 }, { x: 2, y: 4 }, { x: 3, y: 9 }]); // prettier-ignore
  expect(slope.value).toBeCloseTo(37 / 14, 12);
  expect(scatter).toBeCloseTo(Math.sqrt((81 + 324 + 225) / 196 / 2), 12);
  expect(at(10).u).toBeCloseTo((scatter / Math.sqrt(14)) * 10, 12);
});

/** NIST/SEMATECH e-Handbook 6.3.2.2, individuals chart (from memory). */
test("limits of the handbook's individuals chart", () => {
  const { mean, meanStep, lower, upper } = controlLimits([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]);
  expect(mean).toBeCloseTo(50.81, 10);
  expect(meanStep).toBeCloseTo(1.8778, 4);
  expect([lower, upper]).toEqual([expect.closeTo(45.8159, 3), expect.closeTo(55.8041, 3)]);
});

test("Student's t: one, ten and very many degrees of freedom", () => {
  // NIST/SEMATECH e-Handbook 1.3.6.7.2, from memory; beyond 30 the value of 30 is kept, which is on the safe side.
  expect([1, 10, 500].map(coverage)).toEqual([12.706, 2.228, 2.042]);
});
