import { stepsToInches, type CutGrid, type CutPlan } from "../../cutting";
import { showMoney } from "../../units/money";
import { boughtWords, onHandWords, wasteWords, type CutRow } from "./cutSheet";
import { PRICE_STEPS } from "./cutStock";

/** The plan of one lot, with what it takes to add it to others. */
export interface PlannedLot {
  /** Raceway and size. */
  readonly title: string;
  readonly plan: CutPlan;
  readonly grid: CutGrid;
  /** True when its sticks have prices. */
  readonly priced: boolean;
}

/**
 * All plans of a job in one line: sticks, what they cost, and whether that is the least. What could not be planned, and
 * sticks without a price, are named; they count as nothing only in this sum.
 *
 * @param unplanned raceways and sizes without a plan
 */
export function cutTotal(lots: readonly PlannedLot[], unplanned: readonly string[]): CutRow {
  const sum = (of: (lot: PlannedLot) => number): number => lots.reduce((total, lot) => total + of(lot), 0);
  const [bought, onHand] = [sum(({ plan }) => plan.sticks), sum(({ plan }) => plan.onHand)];
  const feet = (of: (plan: CutPlan) => number): number => sum(({ plan, grid }) => stepsToInches(of(plan), grid) / 12);
  const [waste, length] = [feet((plan) => plan.waste), feet((plan) => plan.stockLength)];
  const notProven = lots.filter(({ plan }) => !plan.proven).map(({ title }) => title);
  return {
    Sticks: bought + onHand,
    Stick: "",
    Cut: `${boughtWords(bought)}${costWords(lots)}; ${
      notProven.length === 0 ? "proven least" : `not proven least: ${notProven.join(", ")}`
    }`,
    "Left over": "",
    For: "",
    Note: [
      wasteWords(waste, length > 0 ? waste / length : 0),
      ...onHandWords(onHand, bought),
      ...(unplanned.length > 0 ? [`without ${unplanned.join(", ")}, not planned`] : []),
    ].join("; "),
    Drop: "",
    "Drop to": "",
  };
}

/** What the sticks cost; nothing where none has a price. */
function costWords(lots: readonly PlannedLot[]): string {
  const priced = lots.filter((lot) => lot.priced);
  if (priced.length === 0) return "";
  const cost = priced.reduce((total, { plan }) => total + plan.cost, 0) / PRICE_STEPS;
  const rest = lots.filter((lot) => !lot.priced).map(({ title }) => title);
  return ` for ${showMoney(cost)}${rest.length > 0 ? `, without ${rest.join(", ")}, which have no price` : ""}`;
}
