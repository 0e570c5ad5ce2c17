import { stepsToInches, type CutGrid, type CutPlan, type Cuts } from "../../cutting";
import { showMoney } from "../../units/money";
import { show } from "../../units/show";
import { takenWords } from "../saw/cutLabels";
import { cutLines, type CutLine, type LineNames } from "../saw/cutLines";
import { PRICE_STEPS } from "./cutStock";
import { sawOrder, stopSettings } from "../saw/sawOrder";

/** Columns of a cutting sheet; a job's sheet has Raceway and Size before them. */
export const CUT_HEADERS = ["Sticks", "Stick", "Cut", "Left over", "For", "Note", "Drop", "Drop to"] as const;

export type CutRow = Record<(typeof CUT_HEADERS)[number], string | number>;

/** What a plan is shown with. */
export interface CutView extends LineNames {
  readonly grid: CutGrid;
  /** A length in whole steps of the grid, as it is told. */
  readonly told: (steps: number) => string;
  /** True when the sticks to be bought have prices. */
  readonly priced: boolean;
}

/**
 * A plan as a saw operator reads it: first what it comes to and how that is proven, then a line for each way a stick is
 * cut, in the order of sawing; last the pieces for which there is no stick.
 */
export function cutSheet(plan: CutPlan, view: CutView): CutRow[] {
  return [
    proofRow(plan, view),
    ...cutLines(plan, view).map((line) => lineRow(plan, line, view)),
    ...plan.missing.map((cuts) => missingRow(cuts, view)),
  ];
}

/** What a plan comes to, how that is proven, and how often the stop is set for it. */
export function proofRow(plan: CutPlan, view: Pick<CutView, "grid" | "told" | "priced">): CutRow {
  const feet = (steps: number): string => `${show(stepsToInches(steps, view.grid) / 12, 2)} ft`;
  const kept = plan.remnants.reduce((sum, remnant) => sum + remnant, 0);
  return {
    Sticks: plan.sticks + plan.onHand,
    Stick: "all",
    Cut: proofWords(plan, view.priced),
    "Left over": plan.longestRemnant > 0 ? `longest ${view.told(plan.longestRemnant)}` : "",
    For: "",
    Note: [
      wasteWords(stepsToInches(plan.waste, view.grid) / 12, plan.wasteShare),
      ...(kept > 0 ? [`${feet(kept)} kept${plan.longestProven ? ", longest rest proven" : ""}`] : []),
      ...onHandWords(plan.onHand, plan.sticks),
      ...stopWords(stopSettings(sawOrder(plan), plan.stocks)),
    ].join("; "),
    ...NO_DROP,
  };
}

const NO_DROP = { Drop: "", "Drop to": "" };

/** Said where a saw's stop has to be set more than once. */
const stopWords = (settings: number): string[] => (settings > 1 ? [`stop set ${settings} times in this order`] : []);

/** @param share of all sticks taken, 0 to 1 */
export const wasteWords = (feet: number, share: number): string =>
  `waste ${show(feet, 2)} ft, ${show(100 * share, 1)} %`;

/** Told only where something is taken from what is on hand. */
export const onHandWords = (onHand: number, bought: number): string[] =>
  onHand > 0 ? [`${onHand} of the sticks on hand, ${bought} to buy`] : [];

export const boughtWords = (sticks: number): string => `${sticks} ${sticks === 1 ? "stick" : "sticks"} to buy`;

/** What the plan costs, the least that is proven, and how far apart they are. */
export function proofWords({ cost, bound, proven, sticks }: CutPlan, priced: boolean): string {
  const money = (value: number): string => showMoney(value / PRICE_STEPS);
  const bought = boughtWords(sticks);
  const [is, least] = priced ? [`${bought} for ${money(cost)}`, money(bound)] : [bought, String(bound)];
  const gap = priced ? money(cost - bound) : String(cost - bound);
  return `${is}; at least ${least} needed: ${proven ? "proven least" : `within ${gap} of it`}`;
}

function lineRow(plan: CutPlan, { pattern, taken, drop }: CutLine, { told }: CutView): CutRow {
  const { stock, count, cuts, remnant } = pattern;
  const { length, quantity } = plan.stocks[stock]!;
  return {
    Sticks: count,
    Stick: told(length) + (quantity === Infinity ? "" : " on hand"),
    Cut: cuts.map((cut) => cutWords(cut, told)).join(", "),
    "Left over": remnant > 0 ? told(remnant) : "none",
    For: taken.map(takenWords).join("; "),
    Note: "",
    Drop: drop?.names ?? "",
    "Drop to": drop?.goesTo ?? "",
  };
}

const cutWords = ({ length, count }: Cuts, told: CutView["told"]): string =>
  count === 1 ? told(length) : `${count} × ${told(length)}`;

const missingRow = (cuts: Cuts, { told, labels }: CutView): CutRow => ({
  Sticks: 0,
  Stick: "no stick left",
  Cut: cutWords(cuts, told),
  "Left over": "",
  For: takenWords(labels.take(cuts.length, cuts.count)),
  Note: "not cut: add sticks to Stock",
  ...NO_DROP,
});

/** A row that says something in words. */
export const wordsRow = (stick: string, note: string): CutRow => ({
  Sticks: "",
  Stick: stick,
  Cut: "",
  "Left over": "",
  For: "",
  Note: note,
  ...NO_DROP,
});
