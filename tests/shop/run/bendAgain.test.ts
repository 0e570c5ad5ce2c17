import fc from "fast-check";
import { buildRun } from "../../../src/shop/run/buildRun";
import { scheduleRun } from "../../../src/shop/schedule/schedule";
import type { Shoe } from "../../../src/shop/shoe/shoe";
import { isUserError } from "../../../src/units/errors";
import { misfit } from "../../simulator/alignRigid";
import { bendAgain } from "../../simulator/bendAgain";
import { HALF_EMT, onBench, runOf } from "../../support/demoShoe";

/** How near the bent conduit must come to the run's corner points [in]. */
const LANDS_WITHIN = 1e-6;

const DIRECTIONS = ["up", "down", "north", "south", "east", "west"];
const ACROSS: Record<string, string[]> = {
  up: ["north", "south", "east", "west"],
  down: ["north", "south", "east", "west"],
  north: ["up", "down", "east", "west"],
  south: ["up", "down", "east", "west"],
  east: ["up", "down", "north", "south"],
  west: ["up", "down", "north", "south"],
};

const inches = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: min * 16, max: max * 16 }).map((sixteenths) => sixteenths / 16);
const across = (direction: string): fc.Arbitrary<string> => fc.constantFrom(...ACROSS[direction]!);
const angle = fc.oneof(fc.constantFrom(10, 15, 22.5, 30, 45, 60), fc.integer({ min: 5, max: 80 }));

/** What may happen in the middle of a straight stretch that runs in a direction. */
const feature = (direction: string): fc.Arbitrary<string> =>
  fc.oneof(
    fc.tuple(inches(2, 14), across(direction), angle).map(([r, d, a]) => `offset ${r} ${d} at ${a}`),
    fc
      .tuple(inches(2, 9), inches(2, 9), angle, fc.integer({ min: 0, max: 3 }))
      .map(([r, q, a, i]) => `offset ${r} ${ACROSS[direction]![i]} ${q} ${ACROSS[direction]![(i + 2) % 4]} at ${a}`),
    fc
      .tuple(inches(1, 6), across(direction), fc.constantFrom(30, 45, 60, 52))
      .map(([h, d, a]) => `saddle ${h} ${d} at ${a}`),
    fc
      .tuple(inches(1, 6), across(direction), inches(4, 20), fc.constantFrom(22.5, 30, 45))
      .map(([h, d, w, a]) => `saddle ${h} ${d} over ${w} at ${a}`),
  );

/** Routes in three dimensions: legs, turns between the six directions, and features in between. */
const route: fc.Arbitrary<string> = fc
  .record({
    first: fc.constantFrom(...DIRECTIONS),
    turns: fc.array(
      fc.record({ turn: fc.nat(3), leg: inches(10, 190), extra: fc.nat(4), rest: inches(30, 90), word: fc.nat(9) }),
      { minLength: 1, maxLength: 4 },
    ),
    start: inches(4, 60),
    seed: fc.nat(),
  })
  .chain(({ first, turns, start, seed }) => {
    const steps: fc.Arbitrary<string>[] = [fc.constant(`${first} ${start}`)];
    let direction = first;
    for (const { turn, leg, extra, rest, word } of turns) {
      direction = ACROSS[direction]![turn]!;
      if (word === 0) steps.push(fc.constant("box"));
      if (word === 1) steps.push(fc.constant(`sweep ${20 + (seed % 7)} in ${3 + (seed % 6)}`));
      steps.push(fc.constant(`${direction} ${leg + (extra === 0 ? 40 : 0)}`));
      if (extra === 0) steps.push(feature(direction), fc.constant(`ahead ${rest}`));
    }
    return fc.tuple(...steps).map((texts) => texts.join(", "));
  });

const shoe: fc.Arbitrary<Shoe> = fc
  .record({
    ...{ radius: inches(3, 9), outsideDiameter: inches(1, 2), lead: inches(0, 2), shortestTail: inches(0, 6) },
    springback: fc.integer({ min: 0, max: 6 }),
    more: fc.option(fc.record({ angle: fc.constantFrom(5, 14), by: fc.constantFrom(0.5, 2) }), { nil: undefined }),
  })
  .map(({ lead, more, ...values }) => ({
    ...HALF_EMT,
    ...values,
    secondTest: more && { angle: more.angle, springback: (values.springback * more.angle) / 90 + more.by },
    deduct: values.radius + values.outsideDiameter / 2 + lead,
  }));

describe("the schedule, bent again on a simulated bench, gives the run back", () => {
  const seen = new Map<string, number>();
  let builtRuns = 0;

  test("random runs in three dimensions, cut into pieces, land on their corner points", () => {
    fc.assert(
      fc.property(route, shoe, (text, anyShoe) => {
        const built = buildOrSkip(text, anyShoe);
        if (!built) return;
        builtRuns++;
        const rows = scheduleRun(built);
        for (const row of rows) {
          for (const key of [`${row["Line up"]} ${row.Hook}`, String(row.Kind), `pieces ${rows.length > 6}`]) {
            seen.set(key, (seen.get(key) ?? 0) + 1);
          }
        }
        const bent = bendAgain(rows, onBench(anyShoe));
        expect(bent).toHaveLength(built.pulls.length);
        bent.forEach((pull, index) => {
          const wanted = built.pulls[index]!.pull.points;
          if (wanted.length > 2) expect(misfit(pull.points, wanted)).toBeLessThan(LANDS_WITHIN);
          const cut = built.pulls[index]!.pieces.reduce((sum, piece) => sum + piece.cutLength, 0);
          expect(Math.abs(cut - pull.length)).toBeLessThan(LANDS_WITHIN);
        });
      }),
      { numRuns: 1500, seed: 20260714 },
    );
  });

  test("the random runs covered every line-up, both hooks and every kind of bend", () => {
    expect(builtRuns).toBeGreaterThan(300);
    // A saddle stays on one piece, and its center is hooked at the far end.
    for (const setting of ["arrow datum", "arrow far", "star far", "notch far"]) {
      expect({ setting, times: (seen.get(setting) ?? 0) > 3 }).toEqual({ setting, times: true });
    }
    for (const kind of [
      "stub-up",
      "back-to-back",
      "90",
      "offset",
      "rolling offset",
      "three-bend saddle",
      "four-bend saddle",
      "sweep",
    ]) {
      expect({ kind, times: (seen.get(kind) ?? 0) > 5 }).toEqual({ kind, times: true });
    }
  });

  test("a mark that is off by 0.01 in. is noticed", () => {
    const built = buildRun(runOf("up 30, east 50, offset 6 up at 30, ahead 40"), HALF_EMT);
    const rows = scheduleRun(built).map((row) => ({ ...row }));
    rows[1]!.Mark = (rows[1]!.Mark as number) + 0.01;
    expect(misfit(bendAgain(rows, onBench(HALF_EMT))[0]!.points, built.pulls[0]!.pull.points)).toBeGreaterThan(0.005);
  });
});

/** Angles the generator makes often, so that runs have elbows and shop bends in one. */
const bought = fc.subarray([90, 60, 45, 30, 22.5, 15], { minLength: 1 });

/** The same route with factory elbows asked for at some of its corners, of the standard radius or of their own. */
const withElbows = fc
  .tuple(route, fc.array(fc.constantFrom("", "", "elbow, ", "elbow 12, ", "elbow 15, ")))
  .map(([text, asked]) => {
    let corner = 0;
    const steps = text.split(", ");
    return steps
      .map((step, at) => {
        const turns = at > 0 && /^(up|down|north|south|east|west) /.test(step) && !/^(box|sweep)/.test(steps[at - 1]!);
        return turns ? `${asked[corner++] ?? ""}${step}` : step;
      })
      .join(", ");
  });

describe("runs with factory elbows", () => {
  const seen = { elbows: 0, mixed: 0, joined: 0, asked: 0, ends: 0, trimmed: 0 };

  test("pieces bent again and elbows in between land on the corner points; their lengths add up", () => {
    fc.assert(
      fc.property(withElbows, shoe, bought, fc.constantFrom("EMT", "RMC"), (text, withTests, angles, raceway) => {
        const anyShoe = { ...withTests, secondTest: undefined };
        const built = buildOrSkip(text, anyShoe, angles, raceway);
        if (!built) return;
        const rows = scheduleRun(built);
        const bent = bendAgain(rows, onBench(anyShoe));
        expect(bent).toHaveLength(built.pulls.length);
        bent.forEach(({ points }, index) => {
          const { pull, parts, pieces, elbows, joints } = built.pulls[index]!;
          const trimmed = elbows.filter(({ straight: { end, before, after } }) => Math.min(before, after) < end).length;
          // A note has what is left of a straight end to four decimals.
          const within = trimmed > 0 ? 2e-4 * trimmed : LANDS_WITHIN;
          if (pull.points.length > 2) expect(misfit(points, pull.points)).toBeLessThan(within);
          const cut = pieces.reduce((sum, { cutLength }) => sum + cutLength, 0);
          const arcs = elbows.reduce((sum, { angle, radius }) => sum + (radius * angle * Math.PI) / 180, 0);
          const ends = elbows.reduce((sum, { straight: { before, after } }) => sum + before + after, 0);
          expect(Math.abs(cut + arcs + ends - parts.developed)).toBeLessThan(LANDS_WITHIN);
          // Straight ends of rigid 1/2: 1.5 in. (ANSI C80.1, from memory), or what room there is; none known of EMT.
          for (const { straight, corner } of elbows) {
            expect(straight.end).toBe(raceway === "RMC" ? 1.5 : 0);
            seen.asked += corner.elbow ? 1 : 0;
            seen.ends += straight.before === 1.5 && straight.after === 1.5 ? 1 : 0;
            seen.trimmed += straight.before < straight.end || straight.after < straight.end ? 1 : 0;
          }
          expect(joints).toHaveLength(pieces.length + elbows.length - 1);
          const made = pieces.reduce((sum, { bends }) => sum + bends.length, 0);
          expect(made + elbows.length).toBe(parts.bends.length);
          seen.elbows += elbows.length;
          seen.mixed += elbows.length > 0 && made > 0 ? 1 : 0;
          seen.joined += elbows.length > 0 && pieces.length > elbows.length + 1 ? 1 : 0;
        });
        expect(
          rows.map(({ Piece }) => Piece).filter((piece, at, all) => piece !== "" && piece !== all[at - 1]),
        ).toEqual(built.pulls.flatMap(({ pieces }) => pieces.map((_, at) => at + pieces[0]!.number)));
        for (const { cutLength } of built.pulls.flatMap(({ pieces }) => pieces)) {
          expect(cutLength).toBeLessThanOrEqual(120 + LANDS_WITHIN);
        }
      }),
      { numRuns: 900, seed: 20261125 },
    );
  });

  test("the random runs had elbows, shop bends beside them and couplings between", () => {
    expect(seen.elbows).toBeGreaterThan(200);
    expect(seen.mixed).toBeGreaterThan(50);
    expect(seen.joined).toBeGreaterThan(20);
    expect([seen.asked > 50, seen.ends > 50, seen.trimmed > 20]).toEqual([true, true, true]);
  });

  test("an elbow turned by a degree is noticed", () => {
    const built = buildRun(runOf("up 30, east 50, offset 6 up at 30, ahead 40, north 30"), HALF_EMT, [90]);
    const rows = scheduleRun(built).map((row) => ({ ...row }));
    const last = rows.filter(({ Kind }) => Kind === "factory elbow").at(-1)!;
    last.Plane = Number(last.Plane) + 1;
    expect(misfit(bendAgain(rows, onBench(HALF_EMT))[0]!.points, built.pulls[0]!.pull.points)).toBeGreaterThan(0.1);
  });
});

function buildOrSkip(
  text: string,
  anyShoe: Shoe,
  elbows: readonly number[] = [],
  raceway: "EMT" | "RMC" = "EMT",
): ReturnType<typeof buildRun> | undefined {
  try {
    return buildRun(runOf(text, { raceway }), anyShoe, elbows);
  } catch (error) {
    if (isUserError(error)) return undefined;
    throw error;
  }
}
