/**
 * Outside diameter, wall and weight of each raceway.
 * EMT, and the RMC and IMC rows marked so: Steel Tube Institute, steeltubeinstitute.org (EMT; RMC; IMC).
 * PVC: pipe of ASTM D1785, sd-w.com/channel_flow/pipe_data; that conduit has the same outside and wall is from memory.
 * Other RMC and IMC rows: from memory (ANSI C80.1, C80.6), held here to the printed bore and to the density of steel.
 */
import { dimension, outsideDiameter, sizesOf } from "../../src/raceway/dimensions";
import type { RacewayDimension } from "../../src/raceway/kinds/record";
import type { Raceway } from "../../src/raceway/raceway";
import type { TradeSize } from "../../src/raceway/tradeSize";

/** Outside diameter [in], wall [in], weight [lb/100 ft]. */
type Row = readonly [TradeSize, number, number, number];

const STI: readonly (readonly [Raceway, readonly Row[]])[] = [
  [
    "EMT",
    [
      ["1/2", 0.706, 0.042, 30],
      ["3/4", 0.922, 0.049, 46],
      ["1", 1.163, 0.057, 67],
      ["1-1/4", 1.51, 0.065, 101],
      ["1-1/2", 1.74, 0.065, 116],
      ["2", 2.197, 0.065, 148],
      ["2-1/2", 2.875, 0.072, 216],
      ["3", 3.5, 0.072, 263],
      ["3-1/2", 4, 0.083, 349],
      ["4", 4.5, 0.083, 393],
    ],
  ],
  [
    "RMC",
    [
      ["1-1/4", 1.66, 0.133, 218],
      ["1-1/2", 1.9, 0.138, 263],
      ["2-1/2", 2.875, 0.193, 559],
      ["3-1/2", 4, 0.215, 880],
    ],
  ],
  [
    "IMC",
    [
      ["1-1/4", 1.638, 0.095, 158],
      ["1-1/2", 1.883, 0.1, 194],
      ["2-1/2", 2.857, 0.15, 441],
      ["3-1/2", 3.971, 0.15, 629],
    ],
  ],
];

/** Outside diameter, Schedule 40 wall [in] and lb/ft, Schedule 80 wall and lb/ft. */
const D1785: readonly (readonly [TradeSize, number, number, number, number, number])[] = [
  ["1/2", 0.84, 0.109, 0.161, 0.147, 0.202],
  ["3/4", 1.05, 0.113, 0.214, 0.154, 0.273],
  ["1", 1.315, 0.133, 0.315, 0.179, 0.402],
  ["1-1/4", 1.66, 0.14, 0.426, 0.191, 0.554],
  ["1-1/2", 1.9, 0.145, 0.509, 0.2, 0.673],
  ["2", 2.375, 0.154, 0.682, 0.218, 0.932],
  ["2-1/2", 2.875, 0.203, 1.076, 0.276, 1.419],
  ["3", 3.5, 0.216, 1.409, 0.3, 1.903],
  ["3-1/2", 4, 0.226, 1.697, 0.318, 2.322],
  ["4", 4.5, 0.237, 2.006, 0.337, 2.782],
  ["5", 5.563, 0.258, 2.726, 0.375, 3.867],
  ["6", 6.625, 0.28, 3.535, 0.432, 5.313],
];

const values = (raceway: Raceway, size: TradeSize): number[] =>
  (["outsideDiameter", "wall", "weight"] as const).map((which) => dimension(raceway, size, which).value);
const source = (raceway: Raceway, size: TradeSize, which: RacewayDimension): string =>
  dimension(raceway, size, which).source;

test.each(STI.flatMap(([raceway, rows]) => rows.map((row) => [raceway, ...row] as const)))(
  "%s %s as the Steel Tube Institute prints it",
  (raceway, size, outside, wall, weight) => {
    expect(values(raceway, size)).toEqual([outside, wall, weight]);
    expect(source(raceway, size, "weight")).toBe(`STI ${raceway}`);
  },
);

test("EMT has a printed row for each of its sizes", () => {
  expect(sizesOf("EMT")).toEqual(STI[0]![1].map(([size]) => size));
});

test.each(D1785)("PVC %s as D1785 pipe", (size, outside, wall40, pounds40, wall80, pounds80) => {
  expect(values("PVC 40", size)).toEqual([outside, wall40, expect.closeTo(100 * pounds40, 9)]);
  expect(values("PVC 80", size)).toEqual([outside, wall80, expect.closeTo(100 * pounds80, 9)]);
});

test("rigid conduit has the outside diameters of pipe, so that one thread fits both", () => {
  for (const [size, outside] of D1785) expect(outsideDiameter("RMC", size)).toBe(outside);
});

/** Weights from memory [lb/100 ft]; the rest of these rows is held to the printed bore below. */
test.each([
  ["RMC", "1/2", 82],
  ["RMC", "3/4", 109],
  ["RMC", "1", 161],
  ["RMC", "2", 350],
  ["RMC", "3", 727],
  ["RMC", "4", 1030],
  ["RMC", "5", 1400],
  ["RMC", "6", 1840],
  ["IMC", "1/2", 62],
  ["IMC", "3/4", 84],
  ["IMC", "1", 119],
  ["IMC", "2", 256],
  ["IMC", "3", 543],
  ["IMC", "4", 700],
] as const)("%s %s weighs %i lb to 100 ft, from memory", (raceway, size, weight) => {
  expect(dimension(raceway, size, "weight").value).toBe(weight);
  expect(source(raceway, size, "weight")).toMatch(/memory$/);
});

test("rows from memory say so", () => {
  expect(source("RMC", "1/2", "outsideDiameter")).toBe("C80.1 memory");
  expect(source("IMC", "4", "weight")).toBe("C80.6 memory");
  expect(source("PVC-coated RMC", "1", "outsideDiameter")).toBe("coat memory");
});

test("PVC-coated RMC is thicker than RMC by twice the coat of 0.040 in. (from memory)", () => {
  expect(outsideDiameter("PVC-coated RMC", "1/2")).toBe(0.92);
  expect(outsideDiameter("PVC-coated RMC", "3/4")).toBe(1.13);
  expect(outsideDiameter("PVC-coated RMC", "2")).toBe(2.455);
});

const METAL = (["EMT", "IMC", "RMC"] as const).flatMap((raceway) =>
  sizesOf(raceway).map((size) => [raceway, size] as const),
);

test.each(METAL)("%s %s: outside diameter less two walls is the printed bore", (raceway, size) => {
  const [outside, wall] = values(raceway, size) as [number, number, number];
  expect(outside - 2 * wall).toBeCloseTo(dimension(raceway, size, "insideDiameter").value, 9);
});

/** Printed weight over the weight of its tube, π·(OD − t)·t·density over 100 ft; density in lb/in³. */
function weightRatio(raceway: Raceway, size: TradeSize, density: number): number {
  const [outside, wall, weight] = values(raceway, size) as [number, number, number];
  return weight / (Math.PI * (outside - wall) * wall * density * 1200);
}

/** Steel 0.2836 lb/in³; zinc, couplings and rounding make up the difference, which is a few parts in a hundred. */
test.each(METAL)("%s %s weighs what its steel does", (raceway, size) => {
  expect(weightRatio(raceway, size, 0.2836)).toBeGreaterThan(0.96);
  expect(weightRatio(raceway, size, 0.2836)).toBeLessThan(1.04);
});

/** PVC 1.4 g/cm³ = 0.0506 lb/in³; pipe is weighed with a wall above its least one. */
test.each(D1785)("PVC %s weighs what its plastic does", (size) => {
  for (const raceway of ["PVC 40", "PVC 80"] as const) {
    expect(weightRatio(raceway, size, 0.0506)).toBeGreaterThan(0.96);
    expect(weightRatio(raceway, size, 0.0506)).toBeLessThan(1.08);
  }
});

test.each(D1785)("PVC %s: the average bore is a little under the bore of the least wall", (size) => {
  for (const raceway of ["PVC 40", "PVC 80"] as const) {
    const [outside, wall] = values(raceway, size) as [number, number, number];
    const gap = outside - 2 * wall - dimension(raceway, size, "insideDiameter").value;
    expect(gap).toBeGreaterThan(0);
    expect(gap).toBeLessThan(0.07);
  }
});

/** Rigid aluminum conduit with couplings [lb/100 ft]: a printed table headed NEC table 346-12, in a catalog of strut and hangers. */
const ALUMINUM: readonly (readonly [TradeSize, number])[] = [
  ["1/2", 27.4],
  ["3/4", 36.4],
  ["1", 53],
  ["1-1/4", 69.6],
  ["1-1/2", 82.2],
  ["2", 115.7],
  ["2-1/2", 182.5],
  ["3", 238.9],
  ["3-1/2", 287.7],
  ["4", 340],
  ["5", 465.4],
  ["6", 612.5],
];

test("every size of aluminum is weighed", () =>
  expect(ALUMINUM.map(([size]) => size)).toEqual(sizesOf("Aluminum RMC")));

test.each(ALUMINUM)("Aluminum RMC %s weighs %f, near its metal of 0.0975 lb/in³", (size, weight) => {
  expect(dimension("Aluminum RMC", size, "weight").value).toBe(weight);
  const [outside, inside] = [outsideDiameter("Aluminum RMC", size), dimension("RMC", size, "insideDiameter").value];
  const metal = (Math.PI / 4) * (outside ** 2 - inside ** 2) * 1200 * 0.0975;
  expect(weight / metal).toBeGreaterThan(0.9);
  expect(weight / metal).toBeLessThan(1.02);
});
