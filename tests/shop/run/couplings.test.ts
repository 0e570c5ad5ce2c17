import fc from "fast-check";
import { dividePull, type JoinZone } from "../../../src/shop/run/couplings";

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

function lengthsOf(joints: readonly number[], length: number): number[] {
  const ends = [0, ...joints, length];
  return joints.concat(length).map((end, index) => end - ends[index]!);
}

const shortestOf = (joints: readonly number[], length: number): number => Math.min(...lengthsOf(joints, length));

const pull = fc
  .integer({ min: 5, max: 60 })
  .chain((length) =>
    fc.record({ length: fc.constant(length), stick: fc.integer({ min: 4, max: 25 }), zones: zonesOf(length) }),
  );

/** Many short zones and short sticks: several places lead to each zone. */
const narrowPull = fc
  .record({ length: fc.integer({ min: 12, max: 40 }), stick: fc.integer({ min: 6, max: 14 }) })
  .chain(({ length, stick }) =>
    fc
      .uniqueArray(fc.integer({ min: 1, max: length - 1 }), { minLength: 4, maxLength: 14 })
      .map((cuts) => [...cuts].sort((a, b) => a - b))
      .map((sorted) => ({
        ...{ length, stick },
        zones: sorted.flatMap((from, i) =>
          i % 2 === 0 && i + 1 < sorted.length ? [{ from, to: sorted[i + 1]! }] : [],
        ),
      })),
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

  test("a stretch that a stick just spans is no gap; the first one that it does not span is told", () => {
    const zones = [
      { from: 20, to: 60 },
      { from: 180, to: 290 },
    ];
    expect(dividePull(500, 120, zones, 6)).toEqual({ tooLong: { from: 290, to: 500 } });
    expect(dividePull(500, 119, zones, 6)).toEqual({ tooLong: { from: 60, to: 180 } });
    expect(dividePull(500, 120, [{ from: 130, to: 290 }], 6)).toEqual({ tooLong: { from: 0, to: 130 } });
  });

  test("a last piece of just the shortest length is long enough; where none can be, a shorter one is allowed", () => {
    expect(dividePull(130, 127, [{ from: 124, to: 127 }], 6)).toEqual({ joints: [124] });
    expect(dividePull(130, 127, [{ from: 125, to: 127 }], 6)).toEqual({ joints: [127] });
  });

  test("from the short piece out to both ends, each piece is as long as it can be", () => {
    // By hand, stick 100: the last piece is the shortest where the last coupling stands at 255 (35 in. left). A stick
    // before it is 155, a stick before that 55.
    const zones = [
      { from: 50, to: 100 },
      { from: 140, to: 180 },
      { from: 220, to: 255 },
    ];
    expect(dividePull(290, 100, zones, 6)).toEqual({ joints: [55, 155, 255] });
    // Told from the other end, the first piece is the short one.
    const mirror = (all: readonly JoinZone[]) =>
      all.map(({ from, to }) => ({ from: 290 - to, to: 290 - from })).reverse();
    const [first, middle, last] = mirror(zones);
    expect(dividePull(290, 100, [first!, middle!, last!], 6)).toEqual({ joints: [35, 135, 235] });
    // Of two zones that can be reached, the one that makes the longer piece.
    const parted = [first!, { from: 110, to: 115 }, { from: 125, to: 150 }, last!];
    expect(dividePull(290, 100, parted, 6)).toEqual({ joints: [35, 135, 235] });
    expect(dividePull(290, 100, mirror(parted), 6)).toEqual({ joints: [55, 155, 255] });
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

  test("the short piece is the last of equally short ones, and no piece on either side of it could be longer", () => {
    fc.assert(
      fc.property(narrowPull, fc.integer({ min: 1, max: 4 }), ({ length, stick, zones }, limit) => {
        const division = dividePull(length, stick, zones, limit);
        if ("tooLong" in division) return;
        const { joints } = division;
        const long = everyDivision(length, stick, zones, joints.length, limit);
        const all = long.length > 0 ? long : everyDivision(length, stick, zones, joints.length, 1);
        const short = shortestOf(joints, length);
        const isBest = (other: readonly number[]) => shortestOf(other, length) === short;
        const placeOf = (other: readonly number[]) => lengthsOf(other, length).lastIndexOf(short);
        const place = placeOf(joints);
        expect(Math.min(...all.map((other) => shortestOf(other, length)))).toBe(short);
        expect(Math.max(...all.filter(isBest).map(placeOf))).toBe(place);
        // joints[place - 1] and joints[place] hold the short piece. Left of it a lower joint is a longer piece.
        for (let at = place - 2; at >= 0; at--) {
          const alike = all.filter((other) => joints.slice(at + 1).every((joint, i) => other[at + 1 + i] === joint));
          expect(joints[at]).toBe(Math.min(...alike.map((other) => other[at]!)));
        }
        for (let at = place + 1; at < joints.length; at++) {
          const alike = all.filter((other) => joints.slice(0, at).every((joint, i) => other[i] === joint));
          expect(joints[at]).toBe(Math.max(...alike.map((other) => other[at]!)));
        }
      }),
      { numRuns: 400 },
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
  const all = everyDivision(length, stick, zones, count, limit);
  return all.length === 0 ? undefined : Math.min(...all.map((joints) => shortestOf(joints, length)));
}

/** By trying every place: the couplings of each division into pieces that fit the stick and are not below the limit. */
function everyDivision(
  length: number,
  stick: number,
  zones: readonly JoinZone[],
  count: number,
  limit: number,
): number[][] {
  const fits = (piece: number) => piece >= limit && piece <= stick;
  const places = zones.flatMap((zone) => Array.from({ length: zone.to - zone.from + 1 }, (_, i) => zone.from + i));
  const walk = (joints: number[], at: number): number[][] =>
    joints.length === count
      ? [joints].filter(() => fits(length - at))
      : places.filter((place) => fits(place - at)).flatMap((place) => walk([...joints, place], place));
  return walk([], 0);
}
