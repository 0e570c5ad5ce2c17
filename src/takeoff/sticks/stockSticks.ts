import { planCuts, rememberPlanned, stepsToInches, type CutGrid, type CutPlan } from "../../cutting";
import { isUserError } from "../../units/errors";
import { cutLots, type CutLot } from "../cuts/cutLots";
import { proofWords } from "../cuts/cutSheet";
import type { StockBook } from "../cuts/cutStock";
import { lotRequest } from "../cuts/lotRequest";
import type { RuleBook } from "../../rules/rules";
import { countRunSticks } from "./runSticks";
import type { RowWork } from "../amounts/jobWork";
import { readSaw, type Saw } from "../saw/saw";
import type { CountedSticks } from "./stickLots";
import { workShare } from "../cuts/workShare";

/**
 * The sticks to buy as JOB.CUTS plans them: of the lengths in the stock, after what is on hand. Where no plan can be made
 * the runs' own sticks are counted, and a note says why.
 *
 * @param maxSteps work that the cutting plans may take
 */
export function countStockSticks(
  works: readonly RowWork[],
  stock: StockBook,
  rules: RuleBook,
  maxSteps: number,
): CountedSticks[] {
  const lots = cutLots(works, stock);
  const saw = readSaw(null, null, rules);
  const steps = workShare(maxSteps, lots.length);
  return lots.flatMap((lot) => countLot(lot, saw, rules, steps));
}

const countLot = rememberPlanned((lot: CutLot, saw: Saw, rules: RuleBook, steps: number): CountedSticks[] => {
  try {
    const { request, view } = lotRequest(lot, saw, rules);
    const plan = planCuts(request, { steps });
    return boughtSticks(lot, plan, view.grid, view.priced);
  } catch (error) {
    if (!isUserError(error)) throw error;
    const note = `not planned from the stock: ${error.message}`;
    return countRunSticks(lot.works, rules, steps).map((sticks) => ({ ...sticks, notes: [...sticks.notes, note] }));
  }
});

/** Two lengths in Stock are farther apart than this [in]: a named stick counts as up to 0.1 mm shorter beside millimeters. */
const ONE_STEP = 1 / 254;

/** The sticks a plan buys, length by length, longest first; none bought is a line too, for the stock holds everything. */
function boughtSticks(lot: CutLot, plan: CutPlan, grid: CutGrid, priced: boolean): CountedSticks[] {
  const bought = plan.stocks.flatMap(({ length, quantity }, kind) =>
    quantity === Infinity ? [{ inches: stepsToInches(length, grid), sticks: plan.used[kind]! }] : [],
  );
  const taken = bought.filter(({ sticks }) => sticks > 0);
  const notes = [
    ...(plan.onHand > 0 ? [`${plan.onHand} on hand ${plan.onHand === 1 ? "is" : "are"} used besides`] : []),
    ...(plan.proven ? [] : [proofWords(plan, priced)]),
  ];
  return (taken.length > 0 ? taken : bought.slice(0, 1)).map(({ inches, sticks }, place) => {
    const sold = lot.sticks.filter(({ length, onHand }) => onHand === null && Math.abs(length - inches) < ONE_STEP);
    const prices = sold.flatMap(({ price }) => price ?? []);
    return {
      ...{ works: lot.works, length: sold[0]?.length ?? inches, sticks, notes: place === 0 ? notes : [] },
      onHand: place === 0 ? plan.onHand : 0,
      // The least price the stock has for it.
      ...(prices.length > 0 ? { price: Math.min(...prices) } : {}),
    };
  });
}
