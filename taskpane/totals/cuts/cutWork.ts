import { DEFAULT_STEPS, planCutsInSteps, stepsToInches } from "../../../src/cutting";
import type { DrawnStick } from "../../../src/drawing/job/drawCuts";
import { leftToMake } from "../../../src/made/counts/leftToMake";
import { buildJob } from "../../../src/shop/job/job";
import { CutLabels, takenWords } from "../../../src/takeoff/saw/cutLabels";
import { cutLots, type CutLot } from "../../../src/takeoff/cuts/cutLots";
import { proofRow } from "../../../src/takeoff/cuts/cutSheet";
import { stockAfter, stockChange, type StockChange, type StockEdit } from "../../../src/takeoff/cuts/stockAfter";
import { cutLines } from "../../../src/takeoff/saw/cutLines";
import { DropNames, type Drop } from "../../../src/takeoff/saw/drops";
import { cutTotal, type PlannedLot } from "../../../src/takeoff/cuts/cutTotal";
import { readStock } from "../../../src/takeoff/cuts/cutStock";
import { jobWork } from "../../../src/takeoff/amounts/jobWork";
import { isToCut, leaveOutMade } from "../../../src/takeoff/amounts/leftToMake";
import { lotRequest } from "../../../src/takeoff/cuts/lotRequest";
import { couplingAdvice, type CouplingAdvice } from "../../../src/takeoff/couplings/advice";
import { workShare } from "../../../src/takeoff/cuts/workShare";
import { readPrices } from "../../../src/takeoff/lists/prices";
import { notRead } from "../../../src/takeoff/lists/notRead";
import type { RuleBook } from "../../../src/rules/rules";
import { readSaw, type Saw } from "../../../src/takeoff/saw/saw";
import { attempt } from "../../components/attempt";
import type { Cell } from "../../workbook/items";
import type { CutJob } from "./cutJob";

/** Sticks cut alike, and the runs their pieces go to. */
export interface PlannedStick extends DrawnStick {
  drop?: Drop;
  runs: string[];
}

/** The plan of one raceway and size. */
export interface LotPlan {
  title: string;
  /** What it comes to and how that is proven, in words. */
  proof: string;
  note: string;
  proven: boolean;
  /** Couplings that would save sticks. */
  advice?: CouplingAdvice | undefined;
  kerf: number;
  sticks: PlannedStick[];
  /** Why there is no plan. */
  problem: string;
}

export interface CutResult {
  lots: LotPlan[];
  /** What all plans come to, in words; none for a single one. */
  total?: { proof: string; note: string };
  problems: string[];
  /** What Stock says once the plans are cut. */
  stock: StockWork;
}

/** The cells to write into Stock, and how many sticks are taken from it and drops put there. */
export interface StockWork {
  edits: StockEdit[];
  used: number;
  drops: number;
}

export interface CutSoFar {
  /** Plans finished, of how many. */
  done: number;
  of: number;
  /** Raceway and size now being planned. */
  title: string;
  /** Share of the whole, 0 to 1. */
  share: number;
}

/** Plans each raceway and size of a job, telling how far it is. The pane's own effort: ten times a worksheet function's. */
export function* planJobInSteps(given: CutJob): Generator<CutSoFar, CutResult> {
  const job = buildJob(given);
  const { rules } = job;
  const sticks = readStock(given.stock);
  const saw = readSaw(undefined, undefined, rules);
  const { work, told } = leaveOutMade(job, jobWork(job), leftToMake(given.made));
  const wanted = given.rows && new Set(given.rows);
  const works = work.works.filter((each) => isToCut(each) && wanted?.has(each.row.rowNumber) !== false);
  const lots = cutLots(works, sticks);
  const plans: LotPlan[] = [];
  const planned: PlannedLot[] = [];
  const changes: StockChange[] = [];
  const drops = new DropNames();
  const steps = workShare(DEFAULT_STEPS, lots.length);
  for (const lot of lots) {
    const soFar = { done: plans.length, of: lots.length, title: `${lot.raceway} ${lot.size}` };
    yield { ...soFar, share: plans.length / lots.length };
    const search = planLotInSteps(lot, saw, { rules, drops });
    let step = search.next();
    while (!step.done) {
      yield { ...soFar, share: (plans.length + step.value) / lots.length };
      step = search.next();
    }
    const { plan, made, change } = step.value;
    if (made && given.prices) {
      const prices = readPrices(given.prices);
      plan.advice = couplingAdvice(lot, made.plan, { shoes: job.shoes, rules, saw, prices, steps });
    }
    plans.push(plan);
    if (made) planned.push({ title: plan.title, ...made });
    if (change) changes.push(change);
  }
  const problems = [
    ...work.problems.filter(({ part }) => part === "run").map(({ name, message }) => `${name}: ${message}`),
    ...told.map(({ what, words }) => `${what}: ${words}`),
    ...notRead(job, sticks, rules),
  ];
  const result = { lots: plans, problems, stock: stockWork(given.stock ?? [], changes) };
  if (planned.length < 2) return result;
  const unplanned = plans.filter(({ problem }) => problem !== "").map(({ title }) => title);
  const { Cut, Note } = cutTotal(planned, unplanned);
  return { ...result, total: { proof: String(Cut), note: String(Note) } };
}

function stockWork(stock: Cell[][], changes: readonly StockChange[]): StockWork {
  const sum = (of: (change: StockChange) => readonly { readonly count: number }[]) =>
    changes.flatMap(of).reduce((total, { count }) => total + count, 0);
  return {
    edits: stock.length > 0 ? stockAfter(stock, changes) : [],
    used: sum(({ used }) => used),
    drops: sum(({ drops }) => drops),
  };
}

/** The plan as it is shown; if there is one, as it is added up and what it does to Stock. */
interface LotInSteps {
  plan: LotPlan;
  change?: StockChange;
  made?: Omit<PlannedLot, "title">;
}

function* planLotInSteps(
  lot: CutLot,
  saw: Saw,
  { rules, drops }: { rules: RuleBook; drops: DropNames },
): Generator<number, LotInSteps> {
  const title = `${lot.raceway} ${lot.size}`;
  const none: LotPlan = { title, proof: "", note: "", proven: false, kerf: saw.kerf, sticks: [], problem: "" };
  const asked = attempt(() => lotRequest(lot, saw, rules));
  if (!asked.value) return { plan: { ...none, problem: asked.problem } };
  const { request, pieces, view } = asked.value;
  const begun = attempt(() => planCutsInSteps(request, { steps: 10 * DEFAULT_STEPS }));
  if (!begun.value) return { plan: { ...none, problem: begun.problem } };
  const search = begun.value;
  let step = attempt(() => search.next());
  while (step.value && !step.value.done) {
    yield step.value.value.share;
    step = attempt(() => search.next());
  }
  if (!step.value) return { plan: { ...none, problem: step.problem } };
  const plan = step.value.value;
  const proof = proofRow(plan, view);
  const inches = (steps: number) => stepsToInches(steps, view.grid);
  const lines = cutLines(plan, { labels: new CutLabels(pieces), drops, keep: view.keep });
  const sticks = lines.map(({ pattern: { stock, count, cuts, remnant }, taken, drop }): PlannedStick => ({
    length: inches(plan.stocks[stock]?.length ?? 0),
    count,
    ...(plan.stocks[stock]?.quantity === Infinity ? {} : { label: "on hand" }),
    remnant: inches(remnant),
    ...(drop && { drop }),
    pieces: cuts.map((cut, index) => ({
      length: inches(cut.length),
      count: cut.count,
      label: takenWords(taken[index] ?? []),
    })),
    runs: [...new Set(taken.flat().map(({ run }) => run))],
  }));
  const words = { proof: String(proof.Cut), note: String(proof.Note) };
  const change = stockChange(lot, plan, lines, view.grid);
  return {
    plan: { ...none, ...words, sticks, proven: plan.proven },
    change,
    made: { plan, grid: view.grid, priced: view.priced },
  };
}
