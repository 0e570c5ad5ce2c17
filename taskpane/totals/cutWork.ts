import { stepsToInches } from "../../src/cutting/grid";
import { planCutsInSteps } from "../../src/cutting/solve";
import { DEFAULT_STEPS } from "../../src/cutting/work";
import type { CutStick } from "../../src/drawing/drawCuts";
import { readRuns } from "../../src/shop/runsTable";
import { readShoes } from "../../src/shop/shoeBook";
import { CutLabels } from "../../src/takeoff/cutLabels";
import { cutLots, type CutLot } from "../../src/takeoff/cutLots";
import { cutSheet } from "../../src/takeoff/cutSheet";
import { readStock } from "../../src/takeoff/cutStock";
import { jobWork } from "../../src/takeoff/jobWork";
import { lotRequest } from "../../src/takeoff/lotRequest";
import { notRead } from "../../src/takeoff/notRead";
import { readRules, type RuleBook } from "../../src/takeoff/rules";
import { readSaw, type Saw } from "../../src/takeoff/saw";
import { attempt } from "../components/attempt";
import type { Cell } from "../workbook/items";

/** The tables a plan is made from. */
export interface CutJob {
  runs: Cell[][];
  stock: Cell[][] | undefined;
  shoes: Cell[][] | undefined;
}

/** Sticks cut alike, and the runs their pieces go to. */
export interface PlannedStick extends CutStick {
  runs: string[];
}

/** The plan of one raceway and size. */
export interface LotPlan {
  title: string;
  /** What it comes to and how that is proven, in words. */
  proof: string;
  note: string;
  proven: boolean;
  kerf: number;
  sticks: PlannedStick[];
  /** Why there is no plan. */
  problem: string;
}

export interface CutResult {
  lots: LotPlan[];
  problems: string[];
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
export function* planJobInSteps({ runs, stock, shoes }: CutJob): Generator<CutSoFar, CutResult> {
  const rules = readRules(undefined);
  const book = readShoes(shoes);
  const sticks = readStock(stock);
  const saw = readSaw(undefined, undefined, rules);
  const rows = readRuns(runs);
  const job = jobWork(rows, book, rules);
  const lots = cutLots(job.works, sticks.sticksFor);
  const plans: LotPlan[] = [];
  for (const lot of lots) {
    const soFar = { done: plans.length, of: lots.length, title: `${lot.raceway} ${lot.size}` };
    yield { ...soFar, share: plans.length / lots.length };
    const steps = planLotInSteps(lot, saw, rules);
    let step = steps.next();
    while (!step.done) {
      yield { ...soFar, share: (plans.length + step.value) / lots.length };
      step = steps.next();
    }
    plans.push(step.value);
  }
  const problems = [
    ...job.problems.filter(({ part }) => part === "run").map(({ name, message }) => `${name}: ${message}`),
    ...notRead(rows, book, sticks),
  ];
  return { lots: plans, problems };
}

function* planLotInSteps(lot: CutLot, saw: Saw, rules: RuleBook): Generator<number, LotPlan> {
  const title = `${lot.raceway} ${lot.size}`;
  const none: LotPlan = { title, proof: "", note: "", proven: false, kerf: saw.kerf, sticks: [], problem: "" };
  const asked = attempt(() => lotRequest(lot, saw, rules));
  if (!asked.value) return { ...none, problem: asked.problem };
  const { request, pieces, view } = asked.value;
  const begun = attempt(() => planCutsInSteps(request, { steps: 10 * DEFAULT_STEPS }));
  if (!begun.value) return { ...none, problem: begun.problem };
  const search = begun.value;
  let step = attempt(() => search.next());
  while (step.value && !step.value.done) {
    yield step.value.value.share;
    step = attempt(() => search.next());
  }
  if (!step.value) return { ...none, problem: step.problem };
  const plan = step.value.value;
  const [proof] = cutSheet(plan, { ...view, labels: new CutLabels(pieces) });
  const labels = new CutLabels(pieces);
  const inches = (steps: number) => stepsToInches(steps, view.grid);
  const sticks = plan.patterns.map(({ stock, count, cuts, remnant }): PlannedStick => {
    const words = cuts.map((cut) => labels.take(cut.length, cut.count * count));
    return {
      length: inches(plan.stocks[stock]?.length ?? 0),
      count,
      ...(plan.stocks[stock]?.quantity === Infinity ? {} : { label: "on hand" }),
      remnant: inches(remnant),
      pieces: cuts.map((cut, index) => ({ length: inches(cut.length), count: cut.count, label: words[index] ?? "" })),
      runs: runsIn(words),
    };
  });
  return { ...none, sticks, proven: plan.proven, proof: String(proof?.Cut ?? ""), note: String(proof?.Note ?? "") };
}

/** Run names in labels such as "TH-01/1 ×4, TH-07/2". */
const runsIn = (words: readonly string[]): string[] => [
  ...new Set(words.flatMap((text) => text.split(", ")).map((label) => label.replace(/\/\d+( ×\d+)?$/, ""))),
];
