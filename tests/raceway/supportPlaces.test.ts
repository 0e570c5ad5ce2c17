import fc from "fast-check";
import { countSupports, supportPlaces, supportRule } from "../../src/raceway/code/supports";

/** Rounding of a few additions [in]. */
const EXACT = 1e-9;

describe("supportPlaces", () => {
  test("spaces them evenly from 3 ft off each end", () => {
    expect(supportPlaces(300, supportRule("EMT", "1/2", 2023))).toEqual([36, 150, 264]);
  });

  test("one alone stands in the middle", () => {
    expect(supportPlaces(50, supportRule("EMT", "1/2", 2023))).toEqual([25]);
  });

  test("as many as are counted, none past its end's limit, no gap above the spacing", () => {
    const lengths = fc.double({ min: 1, max: 3000, noNaN: true });
    fc.assert(
      fc.property(
        lengths,
        fc.constantFrom("1/2", "2", "4"),
        fc.constantFrom("EMT", "PVC 40"),
        (length, size, raceway) => {
          const rule = supportRule(raceway, size, 2023);
          const places = supportPlaces(length, rule);
          expect(places).toHaveLength(countSupports(length, rule));
          expect(places[0]!).toBeLessThanOrEqual(rule.fromEnd + EXACT);
          expect(length - places.at(-1)!).toBeLessThanOrEqual(rule.fromEnd + EXACT);
          for (let i = 1; i < places.length; i++) {
            expect(places[i]! - places[i - 1]!).toBeLessThanOrEqual(rule.limit + EXACT);
            expect(places[i]!).toBeGreaterThanOrEqual(places[i - 1]!);
          }
        },
      ),
    );
  });
});
