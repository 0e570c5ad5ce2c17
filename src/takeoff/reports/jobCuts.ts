import { DEFAULT_STEPS, planCuts, rememberPlanned, type CutPlan } from "../../cutting";
import { remember } from "../../memory/remember";
import { buildJob, type Job } from "../../shop/job/job";
import { isUserError } from "../../units/errors";
import { CutLabels } from "../saw/cutLabels";
import { cutLots, type CutLot } from "../cuts/cutLots";
import { cutTotal, type PlannedLot } from "../cuts/cutTotal";
import { CUT_HEADERS, cutSheet, wordsRow, type CutRow } from "../cuts/cutSheet";
import { readStock } from "../cuts/cutStock";
import { couplingAdvice } from "../couplings/advice";
import { adviceWords } from "../couplings/adviceWords";
import { readPrices, type PriceBook } from "../lists/prices";
import { listIn } from "../lists/valueList";
import type { ShoeBook } from "../../shop/shoe/shoeBook";
import { lengthsOf } from "../../rules/lengthsRule";
import { DropNames } from "../saw/drops";
import { jobWork } from "../amounts/jobWork";
import { isToCut, leaveOutMade, type LeftToMake } from "../amounts/leftToMake";
import { lotRequest, type LotRequest } from "../cuts/lotRequest";
import { notRead } from "../lists/notRead";
import type { RuleBook } from "../../rules/rules";
import { readSaw, type Saw } from "../saw/saw";
import { workShare } from "../cuts/workShare";

type Cell = string | number;

/** What a job's cutting plans may be given besides the runs. */
export interface JobCutRanges {
  readonly stock?: unknown;
  readonly shoes?: unknown;
  readonly kerf?: unknown;
  readonly keep?: unknown;
  readonly rules?: unknown;
  readonly left?: LeftToMake | undefined;
  /** With it, couplings that would save sticks are told. */
  readonly prices?: unknown;
}

/**
 * Cutting plans of a job, one for each raceway and size, as a table with a header row: what it comes to with its proof,
 * then how each stick is cut, and at the prices given which couplings would save some; last a total. A plan that cannot be made, and runs that could not be counted, are told in words.
 *
 * @throws InputError when a range lacks a needed column, or for a kerf or shortest offcut that cannot be
 */
export function jobCuts(runs: unknown, ranges: JobCutRanges = {}): Cell[][] {
  const job = buildJob({ runs, ...ranges });
  const { shoes, rules } = job;
  const prices = listIn(ranges.prices, readPrices);
  const stock = readStock(ranges.stock);
  const saw = readSaw(ranges.kerf, ranges.keep, rules);
  const { work, told } = leaveOutMade(job, jobWork(job), ranges.left);
  const problems = [
    ...work.problems.flatMap(({ name, part, message }) =>
      part === "run" ? wordsRow(`not cut: ${name}`, message) : [],
    ),
    ...notRead(job, stock, prices, rules).map((message) => wordsRow("not read", message)),
  ];
  return [
    ["Raceway", "Size", ...CUT_HEADERS],
    ...planLots(cutLots(work.works.filter(isToCut), stock), { shoes, rules, saw, prices }).rows,
    ...told.map(({ what, words }) => cells(["", ""], wordsRow(what, words))),
    ...problems.map((row) => cells(["", ""], row)),
  ];
}

/** What the same plans of a job leave: their lots, and the raceways and sizes that have no plan. */
export function plannedJob(job: Job, ranges: Pick<JobCutRanges, "stock"> = {}): Pick<Plans, "planned" | "unplanned"> {
  const works = jobWork(job).works.filter(isToCut);
  const { shoes, rules } = job;
  const saw = readSaw(undefined, undefined, rules);
  return planLots(cutLots(works, readStock(ranges.stock)), { shoes, rules, saw, prices: undefined });
}

interface Plans {
  readonly rows: Cell[][];
  readonly planned: readonly PlannedLot[];
  readonly unplanned: readonly string[];
}

const cells = (title: readonly Cell[], row: CutRow): Cell[] => [...title, ...CUT_HEADERS.map((header) => row[header])];

/** What plans rest on besides the lot. */
interface LotBase {
  readonly shoes: ShoeBook;
  readonly rules: RuleBook;
  readonly saw: Saw;
  readonly prices: PriceBook | undefined;
}

/** Plans one lot after the other, within the work that a worksheet function may take; more than one are added up. */
function planLots(lots: readonly CutLot[], base: LotBase): Plans {
  const { saw, rules } = base;
  const steps = workShare(DEFAULT_STEPS, lots.length);
  const planned: PlannedLot[] = [];
  const unplanned: string[] = [];
  const sheets: (readonly Cell[][])[] = [];
  let lastDrop = 0;
  for (const lot of lots) {
    const title = `${lot.raceway} ${lot.size}`;
    try {
      const request = lotRequest(lot, saw, rules);
      const plan = planOf(request, steps);
      const sheet = sheetOf(request, plan, lot, lastDrop);
      sheets.push(sheet.rows, advised(lot, plan, base, steps));
      lastDrop = sheet.lastDrop;
      planned.push({ title, plan, grid: request.view.grid, priced: request.view.priced });
    } catch (error) {
      if (!isUserError(error)) throw error;
      sheets.push([cells([lot.raceway, lot.size], wordsRow("not planned", error.message))]);
      unplanned.push(title);
    }
  }
  if (planned.length > 1) sheets.push([cells(["Total", ""], cutTotal(planned, unplanned))]);
  return { rows: sheets.flat(), planned, unplanned };
}

/** Couplings that would save sticks of a lot, in a line; none where prices are not given. */
function advised(lot: CutLot, plan: CutPlan, { prices, ...base }: LotBase, steps: number): Cell[][] {
  const advice = prices && couplingAdvice(lot, plan, { ...base, prices, steps });
  if (!advice) return [];
  return [cells([lot.raceway, lot.size], wordsRow("couplings", adviceWords(advice, lengthsOf(base.rules).tape)))];
}

const planOf = rememberPlanned(({ request }: LotRequest, steps: number): CutPlan => planCuts(request, { steps }));

/** A lot's rows, and the last of the drops that they name. */
const sheetOf = remember(({ pieces, view }: LotRequest, plan: CutPlan, { raceway, size }: CutLot, lastDrop: number) => {
  const drops = new DropNames(lastDrop);
  const sheet = cutSheet(plan, { ...view, labels: new CutLabels(pieces), drops });
  return { rows: sheet.map((row) => cells([raceway, size], row)), lastDrop: drops.last };
});
