import {
  DEFAULT_STEPS,
  isMakeshift,
  isPutOff,
  leastCost,
  planCuts,
  rememberPlanned,
  stepsToInches,
  type CutGrid,
  type CutPlan,
} from "../../cutting";
import { remember } from "../../memory/remember";
import type { RuleBook } from "../../rules/rules";
import { jobOf } from "../../shop/job/job";
import { racewayRecord } from "../../raceway/raceway";
import type { Run } from "../../shop/run/runsTable";
import type { ShoeBook } from "../../shop/shoe/shoeBook";
import { toInches } from "../../units/length";
import { SAME_COUNT } from "../../units/tolerances";
import { stickRule } from "../../rules/stickRules";
import { stickItem } from "../amounts/item";
import { jobWork, type RowWork } from "../amounts/jobWork";
import type { CutLot } from "../cuts/cutLots";
import { lotRequest, type LotRequest } from "../cuts/lotRequest";
import type { PriceBook } from "../lists/prices";
import type { Saw } from "../saw/saw";
import { fewerSticks, type Removal } from "./fewerSticks";
import { jointsText } from "./jointsText";
import { runPiecesOf, shortestPart, type RunPiece } from "./lotSplitting";
import { rackOf } from "./rackOf";

/** A run that is coupled at more places. */
export interface NewJoints {
  /** Place of its row in the Runs range, 1 for the first. */
  readonly rowNumber: number;
  readonly run: string;
  /** Where the couplings are that it does not have now, from its datum end [in]. */
  readonly added: readonly number[];
  /** What its Joints cell says then. */
  readonly cell: string;
}

/** Couplings that save more than they cost. */
export interface CouplingAdvice {
  /** Sticks fewer to buy, and couplings more. */
  readonly sticks: number;
  readonly couplings: number;
  /** What that saves, the couplings paid. */
  readonly saved: number;
  readonly joints: readonly NewJoints[];
}

/** What the advice rests on besides the lot and its plan. */
export interface AdviceBase {
  readonly shoes: ShoeBook;
  readonly rules: RuleBook;
  readonly saw: Saw;
  readonly prices: PriceBook;
  /** Work that the plan of the lot may take; the plan with more couplings takes as much at most. */
  readonly steps?: number;
}

/** Looks at sticks that the search may take: a tenth of a second. */
const MOST_LOOKS = 2e5;
/** Plans that are made in search of one that is cheaper. */
const MOST_PLANS = 3;

/**
 * Looks for couplings that take sticks away from a plan and cost less than these, at the job's own prices. What is found is
 * planned anew, and told only if that plan is the cheaper one. Nothing is advised where a stick or a coupling has no price, nor for
 * threaded conduit: a cut end there needs a thread.
 */
export function couplingAdvice(lot: CutLot, plan: CutPlan, base: AdviceBase): CouplingAdvice | undefined {
  const { shoes, rules, saw, prices, steps = DEFAULT_STEPS } = base;
  return adviceOnce(lot, plan, shoes, rules, saw, prices, steps);
}

const adviceOnce = rememberPlanned(
  (
    lot: CutLot,
    plan: CutPlan,
    shoes: ShoeBook,
    rules: RuleBook,
    saw: Saw,
    prices: PriceBook,
    steps: number,
  ): CouplingAdvice | undefined => {
    if (racewayRecord(lot.raceway).threaded || plan.missing.length > 0) return undefined;
    const asked = lotRequest(lot, saw, rules);
    if (isMakeshift(asked.request, { steps })) return undefined;
    const priceOf = stickPrices(lot, asked, prices);
    const before = moneyOf(plan, priceOf);
    if (before === undefined) return undefined;
    const { grid } = asked.view;
    const pieces = runPiecesOf(lot.works, asked.pieces, grid, prices);
    const { rack, sticks } = rackOf(plan, pieces, asked.request.kerf ?? 0);
    const worth = sticks.map(({ kind, isBought }) => (isBought ? priceOf(plan.stocks[kind]!.length, true)! : 0));
    const allowance = rules.number(stickRule("Cut allowance per piece", lot.raceway));
    const more = (asked.request.kerf ?? 0) + Math.ceil(allowance / stepsToInches(1, grid) - SAME_COUNT);
    const splitting = { pieces, more, shortest: shortestPart(grid), budget: { looks: MOST_LOOKS } };
    const removals = fewerSticks(rack, worth, splitting);
    let some = removals.length;
    for (let tries = 0; some > 0 && tries < MOST_PLANS; tries++, some = Math.floor(some / 2)) {
      const now = { lot, plan, pieces, before, grid, priceOf };
      const advice = planned(now, removals.slice(0, some), { shoes, rules, saw, prices, steps });
      if (advice || isPutOff()) return advice;
    }
    return undefined;
  },
);

type StickPrice = (length: number, isBought: boolean) => number | undefined;

/** What a stick of a length [steps] costs by Stock, else by Prices. */
function stickPrices(lot: CutLot, { view }: LotRequest, prices: PriceBook): StickPrice {
  return (length, isBought) => {
    const inches = stepsToInches(length, view.grid);
    const own = lot.sticks.flatMap((stick) =>
      (stick.onHand === null) === isBought && Math.abs(stick.length - inches) < SAME_COUNT ? [stick.price] : [],
    );
    const known = own.filter((price) => price !== null);
    if (known.length > 0) return Math.min(...known);
    return isBought ? (prices.priceOf(stickItem(lot, inches)).unitPrice ?? undefined) : 0;
  };
}

/** What the sticks of a plan cost; undefined where one to be bought has no price. */
function moneyOf({ stocks, used }: CutPlan, priceOf: StickPrice): number | undefined {
  let sum = 0;
  for (const [kind, { length, quantity }] of stocks.entries()) {
    const price = priceOf(length, quantity === Infinity);
    if (price === undefined) return undefined;
    sum += used[kind]! * price;
  }
  return sum;
}

/** A lot as it is planned now. */
interface Now {
  readonly lot: CutLot;
  readonly plan: CutPlan;
  readonly pieces: readonly RunPiece[];
  /** What its sticks cost. */
  readonly before: number;
  readonly grid: CutGrid;
  readonly priceOf: StickPrice;
}

/** Plans the lot with its runs coupled so; undefined where that is no cheaper. */
function planned(
  { lot, plan, pieces, before, grid, priceOf }: Now,
  removals: readonly Removal[],
  { shoes, rules, saw, prices, steps }: Required<AdviceBase>,
): CouplingAdvice | undefined {
  const joints = newJoints(removals, pieces, grid);
  const changed = new Map(joints.map((each) => [each.rowNumber, each]));
  const works = recoupled(lot.works, changed, shoes, rules);
  if (!works) return undefined;
  const after = sticksOf(lotRequest({ ...lot, works }, saw, rules), steps, priceOf);
  const jointsIn = (all: readonly RowWork[]): number =>
    all.reduce((sum, work) => sum + work.joints * work.run.quantity, 0);
  const costIn = (all: readonly RowWork[]): number =>
    all.reduce(
      (sum, { joints, run, coupling }) => sum + joints * run.quantity * (prices.priceOf(coupling).unitPrice ?? 0),
      0,
    );
  const saved = before - after.money - (costIn(works) - costIn(lot.works));
  if (!(saved > SAME_COUNT)) return undefined;
  return { sticks: plan.sticks - after.sticks, couplings: jointsIn(works) - jointsIn(lot.works), saved, joints };
}

/**
 * The sticks that a plan buys, and what all of them cost. Where all are bought alike and those on hand cost nothing, that
 * is known once the least cost is; only else is the plan made to its end.
 */
function sticksOf({ request }: LotRequest, steps: number, priceOf: StickPrice): { sticks: number; money: number } {
  const [bought, ...others] = request.stocks.filter(({ quantity }) => quantity === undefined);
  const isPlain = others.length === 0 && request.stocks.every(({ quantity, cost }) => quantity === undefined || !cost);
  if (bought && isPlain) {
    const sticks = leastCost(request, { steps }).cost / (bought.cost ?? 1);
    return { sticks, money: sticks * (priceOf(bought.length, true) ?? Infinity) };
  }
  const plan = planCuts(request, { steps });
  return { sticks: plan.sticks, money: plan.missing.length > 0 ? Infinity : (moneyOf(plan, priceOf) ?? Infinity) };
}

/** The runs with new couplings, in the order of the lot. */
function newJoints(removals: readonly Removal[], pieces: readonly RunPiece[], grid: CutGrid): NewJoints[] {
  const added = new Map<RowWork, number[]>();
  for (const { piece, at } of removals.flat()) {
    const { work, start, perInch } = pieces[piece]!;
    added.set(work, [...(added.get(work) ?? []), start + at / perInch]);
  }
  return [...added].map(([{ row }, places]) => ({
    rowNumber: row.rowNumber,
    run: row.name,
    added: places.sort((a, b) => a - b),
    cell: jointsText(row.built, places, grid === "0.1 mm"),
  }));
}

/** The runs as their new Joints cells would have them; undefined where one cannot be built so. */
function recoupled(
  works: readonly RowWork[],
  changed: ReadonlyMap<number, NewJoints>,
  shoes: ShoeBook,
  rules: RuleBook,
): RowWork[] | undefined {
  const rows = works.flatMap(({ row: { rowNumber, name, run } }) => {
    const cell = changed.get(rowNumber)?.cell;
    return cell === undefined ? [] : [{ rowNumber, name, run: joinedAt(run, cell) }];
  });
  const { works: made, problems } = jobWork(jobOf(rows, shoes, rules));
  if (problems.some(({ part }) => part === "run")) return undefined;
  const byRow = new Map(made.map((work) => [work.row.rowNumber, work]));
  return works.map((work) => byRow.get(work.row.rowNumber) ?? work);
}

const joinedAt = remember((run: Run, cell: string): Run => ({
  ...run,
  joints: cell.split(",").map((part) => toInches(part, "Joints")),
}));
