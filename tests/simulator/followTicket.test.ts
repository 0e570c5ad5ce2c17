/** Tickets followed literally, from their own text, give the shape that the run asks for. */
import fc from "fast-check";
import type { RouteStep } from "../../src/route/text/types";
import { writeRoute } from "../../src/route/text/writeRoute";
import { USUAL_BENCH, type Bench } from "../../src/shop/bench/bench";
import { buildRun } from "../../src/shop/run/buildRun";
import type { BuiltRun } from "../../src/shop/run/builtRun";
import { isPiece, pullParts } from "../../src/shop/run/builtRun";
import type { Shoe } from "../../src/shop/shoe/shoe";
import { ticketsOf } from "../../src/shop/ticket/ticket";
import { ticketText, type TicketTextOptions } from "../../src/shop/ticket/ticketText";
import { isUserError } from "../../src/units/errors";
import { HALF_EMT, runOf } from "../support/demoShoe";
import { randomRoute } from "../support/randomRoutes";
import { misfit } from "./alignRigid";
import { followPull, followTickets } from "./followTicket";

/** How near the exact text comes to the corner points [in]: ten decimals, added up over a run. */
const EXACT = 1e-6;
/** Farthest a printed mark or cut is from where it should be [in]: half of 1/16, half of a millimeter. */
const HALF_SIXTEENTH = 1 / 32;
const HALF_MILLIMETER = 0.5 / 25.4;
/** Farthest a printed angle or turn is off [rad]: half of 0.01°. Radius and deduct: half of 0.0001 in. */
const HALF_HUNDREDTH = (0.005 * Math.PI) / 180;

const SHOE: Shoe = { ...HALF_EMT, springback: 3, dialStart: -1, shortestTail: 3 };

const textsOf = (built: BuiltRun, options?: TicketTextOptions, bench?: Bench): string[] =>
  ticketsOf(built, bench).map((ticket) => ticketText(ticket, options));

/** Farthest that what comes of the tickets lies from the run's corner points [in]. */
function off(texts: readonly string[], built: BuiltRun): number {
  const pulls = followTickets(texts);
  if (pulls.length !== built.pulls.length) return Infinity;
  return Math.max(...pulls.map(({ points }, index) => misfit(points, built.pulls[index]!.pull.points)));
}

/**
 * What rounding can move a corner point by: each straight is a cut or a mark less another, so twice the rounding; each
 * angle, turn and the plane it is lined up by swings what lies beyond it.
 */
function allowance({ pulls }: BuiltRun, rounding: number): number {
  const straights = Math.max(...pulls.map(({ parts, pieces }) => parts.straights.length + pieces.length - 1));
  const swings = Math.max(...pulls.map(({ parts }) => (2 * parts.bends.length + 1) * parts.developed));
  return 2 * rounding * straights + HALF_HUNDREDTH * swings + 1e-3;
}

const buildOrSkip = (route: string, shoe: Shoe, stick: number, elbows: number[] = []): BuiltRun | undefined => {
  try {
    return buildRun(runOf(route, { stick }), shoe, elbows);
  } catch (error) {
    if (isUserError(error)) return undefined;
    throw error;
  }
};

const shoes = fc.record({
  radius: fc.integer({ min: 48, max: 96 }).map((value) => value / 16),
  springback: fc.integer({ min: 0, max: 8 }).map((value) => value / 2),
  dialStart: fc.integer({ min: -6, max: 0 }).map((value) => value / 2),
  lead: fc.integer({ min: 0, max: 24 }).map((value) => value / 16),
  /** At some angle this much more than in proportion. */
  more: fc.option(fc.record({ angle: fc.constantFrom(9, 13.5), by: fc.constantFrom(0.5, 1.5) }), { nil: undefined }),
});

const benches = fc
  .record({
    height: fc.integer({ min: 10, max: 48 }),
    plane: fc.constantFrom("vertical" as const, "horizontal" as const),
    curls: fc.constantFrom("up" as const, "down" as const),
    swings: fc.constantFrom("hooked end" as const, "free end" as const),
  })
  .map((values): Bench => ({ ...USUAL_BENCH, ...values }));

/** Angles of a shoe's notches, or as they come. */
const snapped = (steps: readonly RouteStep[]): RouteStep[] =>
  steps.map((step) => ("angle" in step ? { ...step, angle: 15 * Math.round(step.angle / 15) } : step));

const runsWith = (elbows: fc.Arbitrary<number[]>) =>
  fc
    .tuple(randomRoute, shoes, fc.constantFrom(120, 240, 480), fc.boolean(), elbows)
    .map(([steps, { lead, more, ...values }, stick, snap, angles]) => {
      const secondTest = more && { angle: more.angle, springback: (values.springback * more.angle) / 90 + more.by };
      const shoe = { ...SHOE, ...values, secondTest, deduct: values.radius + SHOE.outsideDiameter / 2 + lead };
      return buildOrSkip(writeRoute(snap ? snapped(steps) : steps), shoe, stick, angles);
    })
    .filter((built): built is BuiltRun => built !== undefined);

const runs = runsWith(fc.constant([]));

describe("random runs in three dimensions, made from the words of their tickets", () => {
  const seen = new Map<string, number>();

  test("land on their corner points to a millionth when the text has all decimals", () => {
    fc.assert(
      fc.property(runs, (built) => {
        const texts = textsOf(built, { exact: true });
        for (const words of texts
          .join("\n")
          .match(/toward the \w+ end|swap|counterclockwise|(?<!counter)clockwise|star|notch|Coupled on/g) ?? []) {
          seen.set(words, (seen.get(words) ?? 0) + 1);
        }
        expect(off(texts, built)).toBeLessThan(EXACT);
      }),
      { numRuns: 400, seed: 20261125 },
    );
  });

  test("had both hooks, both ways to turn, every mark and coupled pieces", () => {
    for (const words of [
      "toward the datum end",
      "toward the far end",
      "swap",
      "clockwise",
      "counterclockwise",
      "star",
      "notch",
      "Coupled on",
    ]) {
      expect({ words, often: (seen.get(words) ?? 0) > 20 }).toEqual({ words, often: true });
    }
  });

  test("land on their corner points in the order a low bench asks for, too", () => {
    const orders = { usual: 0, other: 0 };
    fc.assert(
      fc.property(runs, benches, (built, bench) => {
        const texts = textsOf(built, { exact: true }, bench);
        for (const text of texts) {
          const numbers = [...text.matchAll(/^Step \d+, bend (\d+)/gm)].map(([, number]) => Number(number));
          orders[numbers.every((number, index) => number === index + 1) ? "usual" : "other"] += 1;
        }
        expect(off(texts, built)).toBeLessThan(EXACT);
      }),
      { numRuns: 100, seed: 1125 },
    );
    expect(orders.other).toBeGreaterThan(20);
    expect(orders.usual).toBeGreaterThan(20);
  });

  test.each([
    ["feet", HALF_SIXTEENTH],
    ["inches", HALF_SIXTEENTH],
    ["mm", HALF_MILLIMETER],
  ] as const)("land within the rounding of the printed %s marks", (style, rounding) => {
    fc.assert(
      fc.property(runs, (built) => {
        expect(off(textsOf(built, { style }), built)).toBeLessThan(allowance(built, rounding));
      }),
      { numRuns: 150, seed: 7 },
    );
  });
});

test("runs with some bends bought land on their corner points, their elbows put between the pieces", () => {
  const seen = { afterElbow: 0, afterPiece: 0 };
  fc.assert(
    fc.property(runsWith(fc.subarray([90, 60, 45, 30, 15], { minLength: 1 })), (built) => {
      const texts = new Map(ticketsOf(built).map((ticket) => [ticket.piece, ticketText(ticket, { exact: true })]));
      built.pulls.forEach((pull) => {
        const parts = pullParts(pull).map((part) => (isPiece(part) ? texts.get(part.number)! : part));
        expect(misfit(followPull(parts).points, pull.pull.points)).toBeLessThan(EXACT);
      });
      for (const text of texts.values()) {
        if (/^Coupled on: .* factory elbow/m.test(text)) seen.afterElbow += 1;
        if (/^Coupled on: .* of piece/m.test(text) && built.pulls.some(({ elbows }) => elbows.length > 0))
          seen.afterPiece += 1;
      }
    }),
    { numRuns: 200, seed: 90 },
  );
  expect(seen.afterElbow).toBeGreaterThan(20);
  expect(seen.afterPiece).toBeGreaterThan(5);
});

describe("one flipped word is noticed", () => {
  // Three dimensions, both hooks, a star, a notch, two pieces.
  const route =
    "up 30, east 40, down 28, north 60, offset 5 up 7 east at 35, ahead 20, saddle 3 west at 45, ahead 40, up 50, west 40";
  const built = () => buildRun(runOf(route, { stick: 180 }), SHOE);
  const texts = () => textsOf(built());
  const allowed = () => allowance(built(), HALF_SIXTEENTH);
  const flipped = (from: string, to: string, number = 1): string[] => {
    let left = number;
    return texts().map((text) => text.replaceAll(from, (found) => (--left === 0 ? to : found)));
  };

  test("as printed it fits", () => {
    expect(texts()).toHaveLength(2);
    expect(off(texts(), built())).toBeLessThan(allowed());
  });

  test.each([
    ["clockwise for counterclockwise", " counterclockwise, seen", " clockwise, seen"],
    ["counterclockwise for clockwise", "° clockwise, seen", "° counterclockwise, seen"],
    ["another way round where it is Coupled on", "° clockwise from the last", "° counterclockwise from the last"],
    ["a half turn left out", "Turn: turn 180°", "Turn: do not turn; slide to the mark"],
    ["a half turn too many", "; then turn", "; turn 180°; then turn"],
    ["arrow for star", "Line up: star", "Line up: arrow"],
    ["star for arrow", "Line up: arrow", "Line up: star"],
    ["arrow for notch", "Line up: 45° notch", "Line up: arrow"],
    ["the dial two degrees too far", "Dial: 92°", "Dial: 94°"],
    ["a springback of nothing", "springback 3°", "springback 0°"],
  ])("%s", (_, from, to) => {
    const changed = flipped(from, to);
    expect(changed).not.toEqual(texts());
    expect(off(changed, built())).toBeGreaterThan(allowed());
  });

  test.each([
    ["a swap that is not told", "swap the conduit end for end, last bend pointing as before", "do not turn"],
    ["the other end on the hook", "Hook: toward the datum end", "Hook: toward the far end"],
    ["words that nobody knows", "turn 180°", "turn it over"],
    ["a mark before the bend that is made already", "mark at 3' 9", "mark at 1' 9"],
  ])("%s cannot be followed", (_, from, to) => {
    const changed = flipped(from, to);
    expect(changed).not.toEqual(texts());
    expect(() => followTickets(changed)).toThrow(/hook's side|nobody knows|bend before/);
  });
});
