import { DEFAULT_STEPS, planCuts } from "../../cutting";
import { buildJob } from "../../shop/job/job";
import { isUserError } from "../../units/errors";
import { CutLabels } from "../saw/cutLabels";
import { cutLots, type CutLot } from "./cutLots";
import { cutTotal, type PlannedLot } from "./cutTotal";
import { CUT_HEADERS, cutSheet, wordsRow, type CutRow } from "./cutSheet";
import { readStock } from "./cutStock";
import { DropNames } from "../saw/drops";
import { jobWork } from "../amounts/jobWork";
import { isToCut, leaveOutMade, type LeftToMake } from "../amounts/leftToMake";
import { lotRequest } from "./lotRequest";
import { notRead } from "../lists/notRead";
import type { RuleBook } from "../../rules/rules";
import { readSaw, type Saw } from "../saw/saw";
import { workShare } from "./workShare";

type Cell = string | number;

/** What a job's cutting plans may be given besides the runs. */
export interface JobCutRanges {
  readonly stock?: unknown;
  readonly shoes?: unknown;
  readonly kerf?: unknown;
  readonly keep?: unknown;
  readonly rules?: unknown;
  readonly left?: LeftToMake | undefined;
}

/**
 * Cutting plans of a job, one for each raceway and size, as a table with a header row: what it comes to with its proof,
 * then how each stick is cut; last a total. A plan that cannot be made, and runs that could not be counted, are told in words.
 *
 * @throws InputError when a range lacks a needed column, or for a kerf or shortest offcut that cannot be
 */
export function jobCuts(runs: unknown, ranges: JobCutRanges = {}): Cell[][] {
  const job = buildJob({ runs, ...ranges });
  const { rules } = job;
  const stock = readStock(ranges.stock);
  const saw = readSaw(ranges.kerf, ranges.keep, rules);
  const { work, told } = leaveOutMade(job, jobWork(job), ranges.left);
  const problems = [
    ...work.problems.flatMap(({ name, part, message }) =>
      part === "run" ? wordsRow(`not cut: ${name}`, message) : [],
    ),
    ...notRead(job, stock, rules).map((message) => wordsRow("not read", message)),
  ];
  return [
    ["Raceway", "Size", ...CUT_HEADERS],
    ...planLots(cutLots(work.works.filter(isToCut), stock.sticksFor), saw, rules),
    ...told.map(({ what, words }) => cells(["", ""], wordsRow(what, words))),
    ...problems.map((row) => cells(["", ""], row)),
  ];
}

const cells = (title: readonly Cell[], row: CutRow): Cell[] => [...title, ...CUT_HEADERS.map((header) => row[header])];

/** Plans one lot after the other, within the work that a worksheet function may take; more than one are added up. */
function planLots(lots: readonly CutLot[], saw: Saw, rules: RuleBook): Cell[][] {
  const steps = workShare(DEFAULT_STEPS, lots.length);
  const planned: PlannedLot[] = [];
  const drops = new DropNames();
  const unplanned: string[] = [];
  const rows = lots.flatMap((lot) => {
    const { rows, made } = planOrWords(lot, saw, { rules, steps, drops });
    const title = `${lot.raceway} ${lot.size}`;
    if (made) planned.push({ title, ...made });
    else unplanned.push(title);
    return rows.map((row) => cells([lot.raceway, lot.size], row));
  });
  return planned.length > 1 ? [...rows, cells(["Total", ""], cutTotal(planned, unplanned))] : rows;
}

interface LotRows {
  readonly rows: CutRow[];
  readonly made?: Omit<PlannedLot, "title">;
}

/** What the plans of a job have in common. */
interface JobPlanning {
  readonly rules: RuleBook;
  readonly steps: number;
  readonly drops: DropNames;
}

function planOrWords(lot: CutLot, saw: Saw, planning: JobPlanning): LotRows {
  try {
    return planLot(lot, saw, planning);
  } catch (error) {
    if (!isUserError(error)) throw error;
    return { rows: [wordsRow("not planned", error.message)] };
  }
}

function planLot(lot: CutLot, saw: Saw, { rules, steps, drops }: JobPlanning): LotRows {
  const { request, pieces, view } = lotRequest(lot, saw, rules);
  const plan = planCuts(request, { steps });
  const rows = cutSheet(plan, { ...view, labels: new CutLabels(pieces), drops });
  return { rows, made: { plan, grid: view.grid, priced: view.priced } };
}
