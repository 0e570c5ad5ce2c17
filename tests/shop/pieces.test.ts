import fc from "fast-check";
import { dividePull, type JoinZone } from "../../src/shop/pieces";

/** Whole inches, so that the exhaustive search below is exact. */
const zonesOf = (length: number): fc.Arbitrary<JoinZone[]> =>
  fc.uniqueArray(fc.integer({ min: 1, max: length - 1 }), { maxLength: 6 }).map((cuts) => {
    const sorted = [...cuts].sort((a, b) => a - b);
    const zones: JoinZone[] = [];
    for (let i = 0; i + 1 < sorted.length; i += 2) zones.push({ from: sorted[i]!, to: sorted[i + 1]! });
    return zones;
  });

/** Every place for a coupling on whole inches; fewest pieces by breadth-first search over them. */
function fewestPieces(length: number, stick: number, zones: readonly JoinZone[]): number {
  const places = [];
  for (const zone of zones) for (let at = zone.from; at <= zone.to; at++) places.push(at);
  let reached = new Set([0]);
  for (let count = 1; count <= length; count++) {
    if ([...reached].some((at) => length - at <= stick)) return count;
    reached = new Set(places.filter((place) => [...reached].some((at) => place > at && place - at <= stick)));
    if (reached.size === 0) return Infinity;
  }
  return Infinity;
}

function shortestOf(joints: readonly number[], length: number): number {
  const ends = [0, ...joints, length];
  return Math.min(...joints.concat(length).map((end, index) => end - ends[index]!));
}

const pull = fc
  .integer({ min: 5, max: 60 })
  .chain((length) =>
    fc.record({ length: fc.constant(length), stick: fc.integer({ min: 4, max: 25 }), zones: zonesOf(length) }),
  );

describe("dividePull", () => {
  test("a length that fits a stick is one piece", () => {
    expect(dividePull(120, 120, [], 6)).toEqual({ joints: [] });
  });

  test("a straight 31 ft run takes three full sticks and a 12 in. remainder at the far end", () => {
    expect(dividePull(372, 120, [{ from: 3, to: 369 }], 6)).toEqual({ joints: [120, 240, 360] });
  });

  test("the remainder is never shorter than the shortest piece when it can be longer", () => {
    expect(dividePull(122, 120, [{ from: 3, to: 119 }], 6)).toEqual({ joints: [116] });
  });

  test("tells the stretch that no stick can span", () => {
    expect(
      dividePull(
        300,
        120,
        [
          { from: 20, to: 60 },
          { from: 190, to: 290 },
        ],
        6,
      ),
    ).toEqual({
      tooLong: { from: 60, to: 190 },
    });
  });

  test("couplings stand in the zones, pieces fit the stick, and no division has fewer pieces", () => {
    fc.assert(
      fc.property(pull, ({ length, stick, zones }) => {
        const division = dividePull(length, stick, zones, 1);
        const fewest = fewestPieces(length, stick, zones);
        if ("tooLong" in division) {
          expect(fewest).toBe(Infinity);
          return;
        }
        expect(division.joints.length + 1).toBe(fewest);
        const ends = [0, ...division.joints, length];
        division.joints.concat(length).forEach((end, i) => {
          expect(end - ends[i]!).toBeGreaterThan(0);
          expect(end - ends[i]!).toBeLessThanOrEqual(stick);
        });
        for (const joint of division.joints) {
          expect(zones.some((zone) => joint >= zone.from && joint <= zone.to)).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });

  test("among the divisions with fewest pieces, none has a shorter shortest piece of at least the limit", () => {
    fc.assert(
      fc.property(pull, fc.integer({ min: 1, max: 4 }), ({ length, stick, zones }, limit) => {
        const division = dividePull(length, stick, zones, limit);
        if ("tooLong" in division || division.joints.length === 0 || division.joints.length > 3) return;
        const best = bestShortest(length, stick, zones, division.joints.length, limit);
        if (best === undefined) return;
        expect(shortestOf(division.joints, length)).toBe(best);
      }),
      { numRuns: 300 },
    );
  });
});

/** By trying every place: the shortest "shortest piece" that is not below the limit. */
function bestShortest(
  length: number,
  stick: number,
  zones: readonly JoinZone[],
  count: number,
  limit: number,
): number | undefined {
  let best: number | undefined;
  const places = zones.flatMap((zone) => Array.from({ length: zone.to - zone.from + 1 }, (_, i) => zone.from + i));
  const walk = (joints: number[], at: number): void => {
    if (joints.length === count) {
      if (length - at > stick) return;
      const short = shortestOf(joints, length);
      if (short >= limit && (best === undefined || short < best)) best = short;
      return;
    }
    for (const place of places) if (place > at && place - at <= stick) walk([...joints, place], place);
  };
  walk([], 0);
  return best;
}
