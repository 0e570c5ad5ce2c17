/** Large and odd requests end within their work, in about a second, with a plan no worse than first-fit decreasing. */
import { firstFit } from "../../src/cutting/greedy/firstFit";
import { canonical } from "../../src/cutting/model/kinds";
import { planCost } from "../../src/cutting/model/model";
import { seededRandom } from "../../src/cutting/model/random";
import type { CutPiece, CutRequest, CutStock } from "../../src/cutting/model/request";
import { toModel } from "../../src/cutting/model/toModel";
import { DEFAULT_STEPS, Work } from "../../src/cutting/model/work";
import { planCuts } from "../../src/cutting/solve";

/** `lengths` different ones from `low` to `high`, `each` of each. */
function pieces(lengths: number, each: number, low: number, high: number): CutPiece[] {
  const random = seededRandom(lengths + each);
  const different = new Set<number>();
  while (different.size < lengths) different.add(low + Math.floor(random() * (high - low)));
  return [...different].map((length) => ({ length, quantity: each }));
}

function firstFitDecreasing(request: CutRequest): number {
  const { model } = toModel(canonical(request));
  return planCost(model, firstFit(model, new Work()));
}

/** Processor time [ms]: a busy machine does not count, or not much. */
function timed<T>(work: () => T): { answer: T; ms: number } {
  const before = process.cpuUsage();
  const answer = work();
  const { user, system } = process.cpuUsage(before);
  return { answer, ms: (user + system) / 1000 };
}

/** Steps past the limit: what one table of the largest takes. */
const PAST = 1.8;
/** Speed is told by the bench; this catches work that is not counted among the steps, which once took 23 s. */
const MOST_MS = 12_000;

describe("one length to buy", () => {
  const sixteenths = { stocks: [{ length: 1920 }], kerf: 1 };
  const tenthsOfMillimeters = { stocks: [{ length: 30_480 }], kerf: 16 };
  it.each<[string, CutRequest, boolean]>([
    ["10 lengths, 9,000 of each", { ...sixteenths, pieces: pieces(10, 9000, 128, 1900) }, true],
    ["10 short ones, 9,000 of each", { ...sixteenths, pieces: pieces(10, 9000, 60, 400) }, true],
    ["30 lengths, 3,000 of each", { ...sixteenths, pieces: pieces(30, 3000, 128, 1900) }, true],
    ["100 lengths, 1,000 of each", { ...sixteenths, pieces: pieces(100, 1000, 128, 1900) }, true],
    ["100 short ones, 1,000 of each", { ...sixteenths, pieces: pieces(100, 1000, 60, 400) }, true],
    ["1,700 lengths, 30 of each", { ...sixteenths, pieces: pieces(1700, 30, 128, 1900) }, true],
    ["25,000 lengths, 2 of each", { ...tenthsOfMillimeters, pieces: pieces(25_000, 2, 2032, 30_200) }, false],
    ["5,000 short ones, 20 of each", { ...tenthsOfMillimeters, pieces: pieces(5000, 20, 900, 6000) }, false],
  ])("%s", (_, request, proven) => {
    const { answer: plan, ms } = timed(() => planCuts(request));
    expect(plan.steps).toBeLessThan(PAST * DEFAULT_STEPS);
    expect(ms).toBeLessThan(MOST_MS);
    expect(plan.sticks).toBeLessThanOrEqual(firstFitDecreasing(request));
    if (proven) expect(plan.proven).toBe(true);
    // An honest gap: by length alone, and no more than one stick in two hundred above what is proven.
    expect(plan.bound).toBeGreaterThan(plan.sticks * 0.995);
  });
});

it.each<[string, CutPiece[], CutStock[]]>([
  ["30 offcuts", pieces(100, 1000, 128, 1900), [{ length: 1920 }, ...pieces(30, 1, 200, 1800)]],
  ...[10, 100].map((lengths): [string, CutPiece[], CutStock[]] => [
    `three priced lengths, ${lengths} lengths of pieces`,
    pieces(lengths, 90_000 / lengths, 128, 1900),
    [680, 1085, 1758].map((cost, k) => ({ length: 1920 + 960 * k, cost })),
  ]),
])("%s", (_, wanted, stocks) => {
  const { answer: plan, ms } = timed(() => planCuts({ pieces: wanted, stocks, kerf: 1 }));
  expect(plan.steps).toBeLessThan(PAST * DEFAULT_STEPS);
  expect(ms).toBeLessThan(MOST_MS);
  expect(plan.bound).toBeGreaterThan(plan.cost * 0.9);
});

it("a plan cut short makes use of the linear program as far as that came", () => {
  // 3,600 pieces in 0.1 mm: greedy placement takes some 10 sticks more than the program's parts rounded off.
  const request = { pieces: pieces(300, 12, 2032, 30_226), stocks: [{ length: 30_480 }], kerf: 16 };
  const plan = planCuts(request, { steps: 6e7 });
  expect(plan.stopped).toBe("work limit");
  expect(plan.sticks).toBeLessThan(firstFitDecreasing(request) - 5);
});
