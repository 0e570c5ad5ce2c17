import { DEFAULT_STEPS, planCutsInSteps, stepsToInches } from "../../src/cutting";
import type { DrawnStick } from "../../src/drawing/job/drawCuts";
import { leftToMake } from "../../src/made/counts/leftToMake";
import { buildJob } from "../../src/shop/job/job";
import { CutLabels, takenWords } from "../../src/takeoff/cuts/cutLabels";
import { cutLots, type CutLot } from "../../src/takeoff/cuts/cutLots";
import { cutSheet } from "../../src/takeoff/cuts/cutSheet";
import { cutTotal, type PlannedLot } from "../../src/takeoff/cuts/cutTotal";
import { readStock } from "../../src/takeoff/cuts/cutStock";
import { jobWork } from "../../src/takeoff/amounts/jobWork";
import { isToCut, leaveOutMade } from "../../src/takeoff/amounts/leftToMake";
import { lotRequest } from "../../src/takeoff/cuts/lotRequest";
import { notRead } from "../../src/takeoff/lists/notRead";
import type { RuleBook } from "../../src/rules/rules";
import { readSaw, type Saw } from "../../src/takeoff/cuts/saw";
import { attempt } from "../components/attempt";
import type { CutJob } from "./cutJob";

/** Sticks cut alike, and the runs their pieces go to. */
export interface PlannedStick extends DrawnStick {
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
  /** What all plans come to, in words; none for a single one. */
  total?: { proof: string; note: string };
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
export function* planJobInSteps(given: CutJob): Generator<CutSoFar, CutResult> {
  const job = buildJob(given);
  const { rules } = job;
  const sticks = readStock(given.stock);
  const saw = readSaw(undefined, undefined, rules);
  const { work, told } = leaveOutMade(job, jobWork(job), leftToMake(given.made));
  const lots = cutLots(work.works.filter(isToCut), sticks.sticksFor);
  const plans: LotPlan[] = [];
  const planned: PlannedLot[] = [];
  for (const lot of lots) {
    const soFar = { done: plans.length, of: lots.length, title: `${lot.raceway} ${lot.size}` };
    yield { ...soFar, share: plans.length / lots.length };
    const steps = planLotInSteps(lot, saw, rules);
    let step = steps.next();
    while (!step.done) {
      yield { ...soFar, share: (plans.length + step.value) / lots.length };
      step = steps.next();
    }
    const { plan, made } = step.value;
    plans.push(plan);
    if (made) planned.push({ title: plan.title, ...made });
  }
  const problems = [
    ...work.problems.filter(({ part }) => part === "run").map(({ name, message }) => `${name}: ${message}`),
    ...told.map(({ what, words }) => `${what}: ${words}`),
    ...notRead(job, sticks, rules),
  ];
  if (planned.length < 2) return { lots: plans, problems };
  const unplanned = plans.filter(({ problem }) => problem !== "").map(({ title }) => title);
  const { Cut, Note } = cutTotal(planned, unplanned);
  return { lots: plans, total: { proof: String(Cut), note: String(Note) }, problems };
}

/** The plan as it is shown, and as it is added up; the latter only if there is one. */
interface LotInSteps {
  plan: LotPlan;
  made?: Omit<PlannedLot, "title">;
}

function* planLotInSteps(lot: CutLot, saw: Saw, rules: RuleBook): Generator<number, LotInSteps> {
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
  const [proof] = cutSheet(plan, { ...view, labels: new CutLabels(pieces) });
  const labels = new CutLabels(pieces);
  const inches = (steps: number) => stepsToInches(steps, view.grid);
  const sticks = plan.patterns.map(({ stock, count, cuts, remnant }): PlannedStick => {
    const taken = cuts.map((cut) => labels.take(cut.length, cut.count * count));
    return {
      length: inches(plan.stocks[stock]?.length ?? 0),
      count,
      ...(plan.stocks[stock]?.quantity === Infinity ? {} : { label: "on hand" }),
      remnant: inches(remnant),
      pieces: cuts.map((cut, index) => ({
        length: inches(cut.length),
        count: cut.count,
        label: takenWords(taken[index] ?? []),
      })),
      runs: [...new Set(taken.flat().map(({ run }) => run))],
    };
  });
  const words = { proof: String(proof?.Cut ?? ""), note: String(proof?.Note ?? "") };
  return {
    plan: { ...none, ...words, sticks, proven: plan.proven },
    made: { plan, grid: view.grid, priced: view.priced },
  };
}
