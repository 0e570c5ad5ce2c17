/* The cutting plan's bench: node tools/bench/bench-cuts.cjs [FOLDER …] [--seed N] [--count N] [--mip N] [--only TEXT] */
import highs from "highs";
import { firstFit } from "../../../src/cutting/greedy/firstFit";
import { canonical } from "../../../src/cutting/model/kinds";
import { planCost } from "../../../src/cutting/model/model";
import type { CutPlan } from "../../../src/cutting/checking/plan";
import { planCutsInSteps } from "../../../src/cutting/solve";
import { toModel } from "../../../src/cutting/model/toModel";
import { Work } from "../../../src/cutting/model/work";
import { arcFlowText } from "./arcFlow";
import { classes } from "./instances";
import type { Instance, InstanceClass } from "./instances";
import { readFolder } from "./readFolder";

/** Seeds below this were used while the solver was made. */
const HELD_OUT_SEED = 70_000;
const SOLVER_MS = 10_000;
const MIP_SECONDS = 10;
const MIP_ARCS = 60_000;

/** Processor time of this process [ms]: a busy machine does not count. */
function now(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

interface Run {
  instance: Instance;
  plan: CutPlan;
  proofMs: number;
  totalMs: number;
  firstFit: number;
}

function run(instance: Instance): Run {
  const start = now();
  const steps = planCutsInSteps(instance.request, { steps: Infinity, milliseconds: SOLVER_MS, now });
  let proofMs: number | undefined;
  for (;;) {
    const step = steps.next();
    if (!step.done) {
      const { cost, bound, doing } = step.value;
      if (cost === bound || doing !== "fewest sticks") proofMs ??= now() - start;
      continue;
    }
    const totalMs = now() - start;
    return { instance, plan: step.value, proofMs: proofMs ?? totalMs, totalMs, firstFit: firstFitCost(instance) };
  }
}

function firstFitCost({ request }: Instance): number {
  const { model } = toModel(canonical(request));
  return planCost(model, firstFit(model, new Work()));
}

const percentile = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(share * values.length))] ?? NaN;

function report(name: string, runs: readonly Run[]): string {
  const share = (ms: number): string => {
    const proven = runs.filter(({ plan, proofMs }) => plan.proven && proofMs <= ms).length;
    return `${proven}/${runs.length}`;
  };
  const times = runs.map(({ proofMs }) => proofMs);
  const work = runs.map(({ plan }) => plan.steps);
  const gap = Math.max(...runs.map(({ plan }) => plan.cost - plan.bound));
  const worse = runs.map(({ plan, firstFit }) => firstFit - plan.cost);
  const wrong = runs.filter(({ instance, plan }) => plan.proven && plan.cost !== (instance.known ?? plan.cost));
  if (wrong.length > 0) throw new Error(`Proven but not what is known: ${wrong.map((r) => r.instance.name).join()}`);
  if (worse.some((amount) => amount < 0)) throw new Error(`${name}: worse than first-fit decreasing`);
  const longest = runs.filter(({ plan }) => plan.longestProven).length;
  return [
    name.padEnd(31),
    share(1000).padStart(7),
    share(10_000).padStart(7),
    String(gap).padStart(5),
    `${percentile(times, 0.5).toFixed(0)}/${percentile(times, 0.95).toFixed(0)}/${Math.max(...times).toFixed(0)}`.padStart(
      14,
    ),
    percentile(
      runs.map(({ totalMs }) => totalMs),
      0.5,
    )
      .toFixed(0)
      .padStart(7),
    [0.5, 0.95, 1]
      .map((share) => (percentile(work, share) / 1e6).toFixed(1))
      .join("/")
      .padStart(26),
    `${longest}/${runs.length}`.padStart(8),
    `${percentile(worse, 0.5)}/${Math.max(...worse)}`.padStart(9),
    `${Math.round(process.resourceUsage().maxRSS / 1024)}`.padStart(6),
  ].join(" ");
}

async function reportMip(name: string, runs: readonly Run[]): Promise<string> {
  let solved = 0;
  let tooLarge = 0;
  let failed = 0;
  const gaps: number[] = [];
  const times: number[] = [];
  for (const { instance, plan } of runs) {
    const text = arcFlowText(instance.request, MIP_ARCS);
    if (!text) {
      tooLarge++;
      continue;
    }
    const start = now();
    try {
      const solver = await highs();
      const answer = solver.solve(text, { time_limit: MIP_SECONDS, output_flag: false });
      const cost = Math.round(answer.ObjectiveValue);
      if (answer.Status === "Optimal") solved++;
      if (answer.Status === "Optimal" && plan.proven && cost !== plan.cost) throw new RangeError(instance.name);
      if (Number.isFinite(cost)) gaps.push(cost - plan.cost);
      else failed++;
    } catch (error) {
      if (error instanceof RangeError && error.message === instance.name) throw error;
      failed++;
    }
    times.push(now() - start);
  }
  return [
    name.padEnd(31),
    `${solved}/${runs.length}`.padStart(7),
    `${tooLarge}`.padStart(10),
    `${failed}`.padStart(8),
    (gaps.length ? String(Math.max(...gaps)) : "-").padStart(10),
    (times.length ? percentile(times, 0.5).toFixed(0) : "-").padStart(8),
  ].join(" ");
}

async function main(): Promise<void> {
  const words = process.argv.slice(2);
  const option = (name: string): string | undefined => {
    const at = words.indexOf(`--${name}`);
    return at < 0 ? undefined : words.splice(at, 2)[1];
  };
  const seed = Number(option("seed") ?? HELD_OUT_SEED);
  const count = option("count");
  const mips = Number(option("mip") ?? 2);
  const only = option("only");
  const chosen: InstanceClass[] = words.length > 0 ? words.map(readFolder) : [...classes];
  const results: { name: string; runs: Run[] }[] = [];

  console.log(
    `Seeds from ${seed}; ${SOLVER_MS / 1000} s each at most. Processor times in ms until the proof; memory is the process's peak.`,
  );
  console.log(
    "class                            in 1 s in 10 s   gap  p50/p95/worst   total     M steps p50/p95/worst  remnant  FFD+/max     MB",
  );
  for (const { name, count: usual, make } of chosen) {
    if (only && !name.includes(only)) continue;
    const runs: Run[] = [];
    const many = words.length > 0 ? usual : Number(count ?? usual);
    for (let n = 0; n < many; n++) runs.push(run(make(words.length > 0 ? n : seed + n)));
    results.push({ name, runs });
    console.log(report(name, runs));
  }
  if (mips <= 0) return;
  console.log(`\nGeneral-purpose solver (HiGHS, arc-flow model, ${MIP_SECONDS} s), first ${mips} of each class:`);
  console.log("class                          optimal  too large   failed  worst gap  p50 ms");
  for (const { name, runs } of results) console.log(await reportMip(name, runs.slice(0, mips)));
}

void main();
