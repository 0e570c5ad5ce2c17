/**
 * The least cost by a second route: the same requests as mixed-integer programs (arc-flow model) for HiGHS, a
 * general-purpose solver that shares nothing with ours. Sticks are short, because its time grows fast with their length.
 */
import highs from "highs";
import { seededRandom } from "../../src/cutting/model/random";
import type { CutPiece, CutRequest, CutStock } from "../../src/cutting/model/request";
import { planCuts } from "../../src/cutting/solve";
import { arcFlowText } from "../bench/cuts/arcFlow";

type Between = (low: number, high: number) => number;

/** Pieces of 6 to 36 from sticks of 40 and others, with a saw cut of 1. */
function request(seed: number, mostPieces: number, stocks: (between: Between) => CutStock[]): CutRequest {
  const random = seededRandom(seed);
  const between: Between = (low, high) => low + Math.floor(random() * (high - low + 1));
  const pieces = Array.from({ length: between(12, mostPieces) }, (): CutPiece => ({
    length: between(6, 36),
    quantity: 1,
  }));
  return { pieces, stocks: stocks(between), kerf: 1 };
}

const single = (): CutStock[] => [{ length: 40 }];
const priced = (): CutStock[] => [
  { length: 40, cost: 100 },
  { length: 80, cost: 195 },
];
const withOffcuts = (between: Between): CutStock[] => [
  { length: 40 },
  ...Array.from({ length: 6 }, () => ({ length: between(8, 32), quantity: between(1, 2) })),
];

describe("a general-purpose solver", () => {
  it.each([
    ["one stick length", single, 40, 7],
    ["two priced lengths", priced, 14, 6],
    ["offcuts on hand", withOffcuts, 40, 7],
  ])(
    "finds the same least cost with %s",
    async (_, stocks, mostPieces, count) => {
      for (let n = 0; n < count; n++) {
        const asked = request(5000 + n, mostPieces, stocks);
        const solver = await highs();
        const answer = solver.solve(arcFlowText(asked, 60_000)!, { output_flag: false });
        expect(answer.Status).toBe("Optimal");
        const plan = planCuts(asked);
        expect(plan.proven).toBe(true);
        expect(plan.cost).toBe(Math.round(answer.ObjectiveValue));
      }
    },
    60_000,
  );
});
