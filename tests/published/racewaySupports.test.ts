/**
 * Spacing of supports: NEC 358.30(A), 342.30, 344.30 and its table, 352.30 and its table, as read in NEC 2023 and in the
 * California Electrical Code 2022 (NEC 2020). Counts are worked out by hand from the spacing.
 */
import { countSupports, supportRule } from "../../src/raceway/code/supports";
import { TRADE_SIZES } from "../../src/raceway/tradeSize";

/** Straight threaded runs and PVC [ft]. */
const TABLES = [
  ["1/2", 10, 3],
  ["3/4", 10, 3],
  ["1", 12, 3],
  ["1-1/4", 14, 5],
  ["1-1/2", 14, 5],
  ["2", 16, 5],
  ["2-1/2", 16, 6],
  ["3", 20, 6],
  ["3-1/2", 20, 7],
  ["4", 20, 7],
  ["5", 20, 7],
  ["6", 20, 8],
] as const;

test("there is a row for every trade size", () => {
  expect(TABLES.map(([size]) => size)).toEqual(TRADE_SIZES);
});

test.each(TABLES)("size %s: %i ft on straight threaded runs, %i ft for PVC", (size, threaded, pvc) => {
  expect(supportRule("RMC", size, 2023, "straight").limit).toBe(12 * threaded);
  expect(supportRule("PVC-coated RMC", size, 2023, "straight").limit).toBe(12 * threaded);
  expect(supportRule("PVC 40", size, 2020).limit).toBe(12 * pvc);
  expect(supportRule("PVC 80", size, 2023).limit).toBe(12 * pvc);
});

test.each(["EMT", "IMC", "RMC", "PVC-coated RMC"] as const)(
  "%s: every 10 ft, and within 3 ft of each end",
  (raceway) => {
    for (const edition of [2020, 2023] as const) {
      expect(supportRule(raceway, "1", edition)).toMatchObject({ limit: 120, fromEnd: 36, edition });
    }
  },
);

test.each([
  ["EMT", 2020, "any", "358.30"],
  ["IMC", 2023, "any", "342.30"],
  ["RMC", 2023, "any", "344.30"],
  ["RMC", 2020, "straight", "table 344.30(B)(2)"],
  ["IMC", 2023, "straight", "table 344.30(B)"],
  ["PVC 40", 2020, "any", "table 352.30"],
  ["PVC 80", 2023, "any", "table 352.30(B)"],
] as const)("%s in %i, %s run: section %s", (raceway, edition, run, section) => {
  expect(supportRule(raceway, "1", edition, run).section).toBe(section);
});

/** NEC 2023 (and 2020, as the California code of 2022 has it): 348.30(A), 350.30(A), 356.30, 362.30(A). */
test.each([
  ["FMC", 54, 12, "348.30"],
  ["LFMC", 54, 12, "350.30"],
  ["LFNC-A", 36, 12, "356.30"],
  ["LFNC-B", 36, 12, "356.30"],
  ["ENT", 36, 36, "362.30"],
] as const)("%s: every %i in., and within %i in. of each end: %s", (raceway, limit, fromEnd, section) => {
  for (const edition of [2020, 2023] as const) {
    expect(supportRule(raceway, "1", edition)).toMatchObject({ limit, fromEnd, section });
  }
});

test("RTRC by its own table, which is taken to be that of PVC (from memory)", () => {
  expect(supportRule("RTRC", "4", 2020)).toMatchObject({ limit: 84, fromEnd: 36, section: "table 355.30" });
  expect(supportRule("RTRC", "1", 2023)).toMatchObject({ limit: 36, section: "table 355.30(B)" });
});

test("rigid of every metal as RMC of steel", () => {
  for (const raceway of ["Aluminum RMC", "Stainless RMC"] as const) {
    expect(supportRule(raceway, "2", 2023)).toMatchObject({ limit: 120, fromEnd: 36, section: "344.30" });
    expect(supportRule(raceway, "2", 2023, "straight").limit).toBe(12 * 16);
  }
});

// By hand, every 10 ft: the two end supports stand 36 in. from the ends, the gaps between them are 120 in. at most.
test.each([
  [1, 1],
  [72, 1],
  [72.01, 2],
  [192, 2],
  [192.01, 3],
  [300, 3],
  [312, 3],
  [313, 4],
])("a run of %f in. at 120 in. takes %i", (length, count) => {
  expect(countSupports(length, supportRule("EMT", "1/2", 2023))).toBe(count);
});

test("1/2 PVC every 36 in.: 10 ft takes 3 (36, 60 and 84 in.) — two would leave 48 in.", () => {
  expect(countSupports(120, supportRule("PVC 40", "1/2", 2023))).toBe(3);
});

/** A second route: put supports as far along as the rules allow and count them. */
test("placing supports one by one needs as many", () => {
  for (const [limit, fromEnd] of [
    [120, 36],
    [36, 36],
    [96, 36],
    [240, 36],
  ] as const) {
    for (let length = 1; length < 900; length += 7) {
      let count = 1;
      for (let at = Math.min(fromEnd, length); length - at > fromEnd; at += limit) count++;
      expect([length, countSupports(length, { limit, fromEnd })]).toEqual([length, count]);
    }
  }
});
