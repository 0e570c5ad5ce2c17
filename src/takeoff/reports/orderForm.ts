import { buildJob } from "../../shop/job/job";
import { addAllowances, byItem, idleAllowances } from "../allowances/addAllowances";
import { readAllowances } from "../allowances/allowanceTable";
import { heldBy, putUps, putUpWords } from "../allowances/putUps";
import { countsIn } from "../amounts/counts";
import { jobWork } from "../amounts/jobWork";
import { leaveOutMade, type LeftToMake } from "../amounts/leftToMake";
import { stockIn } from "../cuts/cutStock";
import { takeoffLines } from "../lines/takeoffLines";
import { notRead } from "../lists/notRead";
import { readPrices } from "../lists/prices";
import { listIn } from "../lists/valueList";

type Cell = string | number;

const HEADERS = ["Item", "Unit", "Needed", "On hand", "To buy", "Packages", "Left over", "Note"];

/** What an order may be given besides the runs. */
export interface OrderFormRanges {
  readonly prices?: unknown;
  readonly shoes?: unknown;
  readonly rules?: unknown;
  readonly stock?: unknown;
  readonly counts?: unknown;
  readonly allowances?: unknown;
  readonly left?: LeftToMake | undefined;
}

/**
 * What to order for a job, without prices, as a table with a header row: of each item what is needed with its allowances,
 * what is on hand (sticks by Stock, other items by On hand of Prices), what to buy, and the packages that hold it.
 *
 * @throws InputError when a range lacks a needed column
 */
export function orderForm(runs: unknown, ranges: OrderFormRanges = {}): Cell[][] {
  const job = buildJob({ runs, ...ranges });
  const stock = stockIn(ranges.stock);
  const prices = listIn(ranges.prices, readPrices);
  const counts = countsIn(ranges.counts, job.rules);
  const allowances = readAllowances(ranges.allowances);
  const { work, told } = leaveOutMade(job, jobWork(job), ranges.left);
  const taken = takeoffLines(work.works, [], job.rules, stock, counts);
  const lines = addAllowances(taken, allowances, undefined);
  const items = byItem(lines).filter(([own]) => own!.item.bought && own!.item.kind !== "allowance");
  return [
    HEADERS,
    ...items.flatMap((own): Cell[][] => {
      const { item, onHand: cut = 0 } = own[0]!;
      const needed = own.reduce((sum, { quantity }) => sum + quantity, 0) + cut;
      if (needed <= 0) return [];
      const onHand = item.kind === "stick" ? cut : (prices?.onHandOf(item) ?? 0);
      const toBuy = Math.max(0, needed - onHand);
      const sizes = prices?.packagesOf?.(item) ?? [];
      const packages = toBuy > 0 && sizes.length > 0 ? putUps(toBuy, sizes) : [];
      const held = packages.length > 0 ? heldBy(packages) - toBuy : "";
      const notes = own.flatMap((line) => [...line.notes].map((words) => named(line.item.name, item.name, words)));
      return [
        [...[item.name, item.unit, needed, onHand, toBuy], putUpWords(packages, item.unit), held, notes.join("; ")],
      ];
    }),
    ...work.problems.map(({ name, message }): Cell[] => wordsRow(`not counted: ${name}`, message)),
    ...told.map(({ what, words }) => wordsRow(what, words)),
    ...notRead(job, job.rules, stock, prices, counts, allowances).map((words) => wordsRow("not read", words)),
    ...idleAllowances(taken, allowances).map((words) => wordsRow("not read", words)),
  ];
}

/** Words of an allowance go by its name. */
const named = (line: string, item: string, words: string): string =>
  line === item ? words : `${line.slice(item.length + 2)}: ${words}`;

const wordsRow = (what: string, words: string): Cell[] => [what, "", "", "", "", "", "", words];
