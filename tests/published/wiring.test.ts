/**
 * Box volume, ampacity, grounding conductors and cover against published examples; NEC 2023 tables as read, the sources beside
 * each.
 */
import { circularMils } from "../../src/wiring/wireSizes";
import { ampacity, boxFill, cover, groundSize, riserSupportsOf } from "../../functions/wire/wiring";

// electriciansexam.com, box fill; fatskills NEC box-fill quiz; lecture notes (coconote).
test.each([
  ["4 + 3 #12, 2 #10, ground 10, isolated ground 12, a switch on 12", ["8 #12, 2 #10", "1 #10", "1 #12"], 30],
  ["14 AWG: four conductors, a device, a ground", ["4 #14", "1 #14", "1 #14"], 14],
  ["six 12 AWG", ["6 #12"], 13.5],
] as const)("box: %s", (_name, args, volume) => {
  expect((boxFill as (...args: readonly unknown[]) => number)(...args)).toBe(volume);
});

// NEC 314.16(B)(5): up to four grounds one of the largest, each further one a quarter more; clamps and supports one each.
test("grounds beyond four, clamps and support fittings", () => {
  expect(boxFill("2 #12", "4 #12") - boxFill("2 #12")).toBe(2.25);
  expect(boxFill("2 #12", "6 #12") - boxFill("2 #12")).toBeCloseTo(2.25 * 1.5, 12);
  expect(boxFill("2 #12, 1 #10", null, null, true, 1) - boxFill("2 #12, 1 #10")).toBe(5);
});

// EC&M Code Quiz 6 and Code Q&A 112. The third: a scraped page has 17.22 with the factor of the 75 °C column; by hand 30·0.7·0.87.
test.each([
  [["12", 30], 13.5],
  [["10", 4], 32],
  [["12", 9, 45], 18.27],
  [["12", 9, 45, 75], 25 * 0.7 * 0.82],
  [["500", 3, 30, 75], 380],
  // NEC 2023, table 310.16, as read.
  [["1000", 3, 30, 75], 545],
  [["750", 3, 30, 60], 400],
  [["4/0", 3, 30, 75, null, "aluminum"], 180],
  [["12", 3, 30, 90, null, "aluminum"], 25],
  [["1000", 4, 30, 90, null, "aluminum"], 500 * 0.8],
])("ampacity of %p is %f A", (args, amperes) => {
  expect((ampacity as (...args: unknown[]) => number)(...args)).toBeCloseTo(amperes, 9);
});

// inwindustrialtraining.com Code Talk 32; mepanet.com/287; ecmag.com. Table 250.122, NEC 2023.
test.each([
  [[300, "250", "350"], "2"],
  [[50, "8", "1"], "3"],
  [[20, "12", "6"], "6"],
  [[20, "12", "1/0"], "1/0"],
  [[15], "14"],
  [[60], "10"],
  [[61], "8"],
  [[200, null, null, "aluminum"], "4"],
  [[6000], "800"],
  [[6000, null, null, "aluminum"], "1250"],
  // From memory: 2020 had 1200 kcmil, which is no size of table 8.
  [[5000, null, null, "aluminum", null, 2020], "1200"],
])("grounding conductor of %p is %s", (args, size) => {
  expect((groundSize as (...args: unknown[]) => string)(...args)).toBe(size);
});

// Table 310.15(B)(1)(1), 30 °C base, as read: factors by the column, none where the insulation is no longer good for the air.
test.each([
  [31, [0.91, 0.94, 0.96]],
  [36, [0.82, 0.88, 0.91]],
  [41, [0.71, 0.82, 0.87]],
  [50, [0.58, 0.75, 0.82]],
  [55, [0.41, 0.67, 0.76]],
  [60, [undefined, 0.58, 0.71]],
  [65, [undefined, 0.47, 0.65]],
  [66, [undefined, 0.33, 0.58]],
  [75, [undefined, undefined, 0.5]],
  [80, [undefined, undefined, 0.41]],
  [85, [undefined, undefined, 0.29]],
])("at %d °C", (celsius, factors) => {
  [60, 75, 90].forEach((column, at) => {
    const asked = () => ampacity("12", 3, celsius, column, "correction");
    if (factors[at] === undefined) expect(asked).toThrow(`No correction is listed for ${celsius} °C`);
    else expect(asked()).toBe(factors[at]);
  });
});

test("at 60 °C the 60 °C column has none", () => {
  expect(ampacity("12", 3, 60, 75, "correction")).toBe(0.58);
  expect(() => ampacity("12", 3, 60, 60)).toThrow("No correction is listed for 60 °C in the column of 60 °C.");
});

// Table 310.15(C)(1), as read (2014 has the same).
test.each([
  [3, 1],
  [4, 0.8],
  [6, 0.8],
  [7, 0.7],
  [9, 0.7],
  [10, 0.5],
  [20, 0.5],
  [21, 0.45],
  [30, 0.45],
  [31, 0.4],
  [40, 0.4],
  [41, 0.35],
])("%d current-carrying conductors: %f", (count, factor) =>
  expect(ampacity("12", count, 30, 90, "adjustment")).toBe(factor),
);

// NEC 2023, table 300.5(A), as read: cable without a raceway, RMC and IMC, PVC and EMT. Its columns of protected 20 A circuits and of
// low voltage landscape lighting are for cable, which no run here is.
test.each([
  ["general", 24, 6, 18],
  ["under concrete", 18, 6, 12],
  ["under a building", undefined, 0, 0],
  ["under a slab", 18, 4, 4],
  ["under a road", 24, 24, 24],
  ["dwelling driveway", 18, 18, 18],
  ["airport", 18, 18, 18],
])("cover %s: %p, %d, %d in.", (place, direct, metal, other) => {
  if (direct === undefined) expect(() => cover(place, "direct")).toThrow("wants a raceway");
  else expect(cover(place, "direct")).toBe(direct);
  for (const raceway of ["RMC", "IMC", "PVC-coated RMC"]) expect(cover(place, raceway)).toBe(metal);
  for (const raceway of ["PVC 40", "PVC 80", "EMT"]) expect(cover(place, raceway)).toBe(other);
});

// ecmag.com prints circular mils by AWG; its 66,300 for 2 AWG is the code's 66,360 (from memory).
test.each([
  ["14", 4110],
  ["12", 6530],
  ["10", 10_380],
  ["8", 16_510],
  ["6", 26_240],
  ["4", 41_740],
  ["3", 52_620],
  ["1", 83_690],
  ["1/0", 105_600],
  ["2/0", 133_100],
  ["3/0", 167_800],
  ["4/0", 211_600],
])("%s AWG has %d cmil", (size, mils) => expect(circularMils(size)).toBe(mils));

test("rules are named by their edition", () => {
  expect(cover("general", "RMC", "rule", 2020)).toMatch(/^NEC 2020, table 300\.5: /);
  expect(boxFill("6 #12", null, null, null, null, "rule")).toMatch(/^NEC 2023, 314\.16\(B\): /);
  expect(groundSize(60, null, null, null, "rule", 2020)).toMatch(/^NEC 2020, 250\.122: /);
  expect(ampacity("12", 3, 30, 90, "rule")).toMatch(/^NEC 2023, table 310\.16: /);
});

// NEC 2023, table 310.16, copper at 60, 75 and 90 °C, as read.
test.each([
  ["14", 15, 20, 25],
  ["12", 20, 25, 30],
  ["10", 30, 35, 40],
  ["8", 40, 50, 55],
  ["6", 55, 65, 75],
  ["4", 70, 85, 95],
  ["3", 85, 100, 115],
  ["2", 95, 115, 130],
  ["1", 110, 130, 145],
  ["1/0", 125, 150, 170],
  ["2/0", 145, 175, 195],
  ["3/0", 165, 200, 225],
  ["4/0", 195, 230, 260],
  ["250", 215, 255, 290],
  ["300", 240, 285, 320],
  ["350", 260, 310, 350],
  ["400", 280, 335, 380],
  ["500", 320, 380, 430],
])("copper %s: %d, %d, %d A", (size, ...amperes) => {
  expect([60, 75, 90].map((column) => ampacity(size, 3, 30, column))).toEqual(amperes);
});

// NEC 2023, table 250.122, as read: copper, aluminum.
test.each([
  [15, "14", "12"],
  [20, "12", "10"],
  [60, "10", "8"],
  [100, "8", "6"],
  [200, "6", "4"],
  [300, "4", "2"],
  [400, "3", "1"],
  [500, "2", "1/0"],
  [600, "1", "2/0"],
  [800, "1/0", "3/0"],
  [1000, "2/0", "4/0"],
  [1200, "3/0", "250"],
  [1600, "4/0", "350"],
  [2000, "250", "400"],
  [2500, "350", "600"],
  [3000, "400", "600"],
  [4000, "500", "750"],
  [5000, "700", "1250"],
  [6000, "800", "1250"],
])("ground of %d A: copper %s, aluminum %s", (breaker, copper, aluminum) => {
  expect([groundSize(breaker), groundSize(breaker, null, null, "aluminum")]).toEqual([copper, aluminum]);
});

// NEC 2023, table 300.19(A), as read [ft]: copper, aluminum.
test.each([
  [["18", "14", "8"], 100, 100],
  [["6", "1/0"], 100, 200],
  [["2/0", "4/0"], 80, 180],
  [["250", "350"], 60, 135],
  [["400", "500"], 50, 120],
  [["600", "750"], 40, 95],
  [["800", "1000"], 35, 85],
])("conductors of %j hang %d ft of copper, %d of aluminum", (sizes, copper, aluminum) => {
  for (const size of sizes) {
    const spacing = (metal: string) => riserSupportsOf(size, 12, metal, "spacing");
    expect([spacing("copper"), spacing("aluminum")]).toEqual([12 * copper, 12 * aluminum]);
    expect([12 * copper, 12 * copper + 1, 24 * copper + 1].map((rise) => riserSupportsOf(size, rise))).toEqual([
      0, 2, 3,
    ]);
  }
});
