import type { PricedLine } from "../../takeoff/lines/priceLine";
import { moneyOf, sumOf } from "../amounts";
import type { RecapLine } from "../cascade";
import { jobHours, type WorkHours } from "../jobHours";
import { pricedJob, type PricedJob } from "../pricedJob";
import { recap, type JobRecap, type RecapRanges } from "../recap";
import { Shares } from "../shares";

type Cell = string | number;

const HEADERS = [
  "Change",
  "Item or line",
  "Unit",
  "Before",
  "After",
  "Difference",
  "Unit price",
  "Amount",
  "Hours",
  "Note",
];

/** Less of a quantity than this is none [ft, pieces or h]. */
const NONE = 1e-9;

/** What a change order may be given besides the two states of the runs and the bid. */
export interface ChangeOrderRanges extends Omit<RecapRanges, "by"> {
  /** Counts as they were; omitted: as they are. */
  readonly countsBefore?: unknown;
  /** What of the made pieces no longer fits, as JOB.STANDING has it, header row and all. */
  readonly standing?: readonly (readonly Cell[])[] | undefined;
}

/**
 * What a change of the runs adds to the price of a job and takes off it, as a table with a header row: the words of the bid,
 * every item and work that moved, every line of the recap that moved, what is made already and is left over, the total. The
 * lines are the difference of two recaps to the cent, whatever the bid makes of material and hours.
 *
 * @throws InputError when a range lacks a needed column
 */
export function changeOrder(before: unknown, after: unknown, bid: unknown, ranges: ChangeOrderRanges = {}): Cell[][] {
  const ofBefore = { ...ranges, counts: ranges.countsBefore ?? ranges.counts, tellIdle: false };
  const [old, now] = [stateOf(before, bid, ofBefore), stateOf(after, bid, ranges)];
  return [
    HEADERS,
    ...now.recap.lines
      .filter(({ amount, basis }) => amount === null && basis !== "")
      .map(({ name, basis }) => row({ change: name, name: basis })),
    ...itemRows(old.job.lines, now.job.lines),
    ...workRows(old.hours, now.hours),
    ...recapRows(old.recap, now.recap),
    ...leftOverRows(ranges.standing ?? []),
    ...problemRows(old.recap.problems, now.recap.problems),
  ];
}

interface State {
  readonly job: PricedJob;
  readonly hours: readonly WorkHours[];
  readonly recap: JobRecap;
}

function stateOf(runs: unknown, bid: unknown, ranges: RecapRanges): State {
  const job = pricedJob(runs, ranges);
  return { job, hours: jobHours(job, new Shares(job.works, [], [[]])), recap: recap(runs, bid, ranges) };
}

interface RowCells {
  readonly change: string;
  readonly name: string;
  readonly unit?: string;
  readonly before?: number;
  readonly after?: number;
  readonly price?: number | null;
  readonly amount?: number;
  readonly hours?: number;
  readonly note?: string;
}

const row = ({ change, name, unit, before, after, price, amount, hours, note }: RowCells): Cell[] => [
  ...[change, name, unit ?? "", before ?? "", after ?? ""],
  before === undefined || after === undefined ? "" : after - before,
  ...[price ?? "", amount ?? "", hours ?? "", note ?? ""],
];

/** Pairs two lists by name, in the order of the newer one, what is gone last. */
function pairs<T>(
  old: readonly T[],
  now: readonly T[],
  nameOf: (entry: T) => string,
): [string, T | undefined, T | undefined][] {
  const [was, is] = [old, now].map((list) => new Map(list.map((entry) => [nameOf(entry), entry])));
  return [...new Set([...is!.keys(), ...was!.keys()])].map((name) => [name, was!.get(name), is!.get(name)]);
}

/** Every bought item whose quantity or amount moved. */
const itemRows = (old: readonly PricedLine[], now: readonly PricedLine[]): Cell[][] =>
  pairs(old, now, ({ line }) => line.item.name).flatMap(([name, was, is]): Cell[][] => {
    const { line } = (is ?? was)!;
    const [before, after] = [was?.line.quantity ?? 0, is?.line.quantity ?? 0];
    const cents = centsOf(is) - centsOf(was);
    if (!line.item.bought || (Math.abs(after - before) < NONE && cents === 0)) return [];
    const price = (is ?? was)!.unitPrice;
    const change = Math.abs(after - before) < NONE ? "repriced" : after > before ? "added" : "deducted";
    const note = price === null ? "no price: not in the amount" : "";
    return [row({ ...{ change, name, unit: line.item.unit, before, after, price, amount: moneyOf(cents), note } })];
  });

const centsOf = (line: PricedLine | undefined): number => Math.round((line?.extension ?? 0) * 100);

/** Every work whose hours moved, what conditions add to them included. */
const workRows = (old: readonly WorkHours[], now: readonly WorkHours[]): Cell[][] =>
  pairs(old, now, ({ work }) => work).flatMap(([name, was, is]): Cell[][] => {
    const hours = hoursOf(is) - hoursOf(was);
    const [before, after] = [was, is].map((entry) => sumOf(entry?.quantity ?? []));
    if (Math.abs(hours) < NONE) return [];
    return [row({ change: "labor", name, unit: (is ?? was)!.unit, before: before!, after: after!, hours })];
  });

const hoursOf = (work: WorkHours | undefined): number => (work ? sumOf(work.hours) + sumOf(work.added) : 0);

/** Every line of the recap that moved, and the total. */
function recapRows(old: JobRecap, now: JobRecap): Cell[][] {
  const moved = pairs(old.lines, now.lines, ({ name }) => name).flatMap(([name, was, is]): Cell[][] => {
    const [before, after] = [moneyIn(was), moneyIn(is)];
    const isTotal = is === now.lines.at(-1);
    if (before === after && !isTotal) return [];
    const change = isTotal ? "total" : (is ?? was)!.isSum ? "subtotal" : "price";
    const amount = moneyOf(after - before);
    const note = is?.basis ?? "";
    return [[change, name, "", moneyOf(before), moneyOf(after), amount, "", amount, "", note]];
  });
  return moved;
}

const moneyIn = (line: RecapLine | undefined): number => sumOf(line?.amount ?? []);

/** What was made and nothing needs any more: it is paid for and cannot go back. */
function leftOverRows(standing: readonly (readonly Cell[])[]): Cell[][] {
  const [headers = [], ...rows] = standing;
  const [made, pieces, word, toDo] = ["Made", "Pieces", "Standing", "To do"].map((name) => headers.indexOf(name));
  return rows
    .filter((cells) => cells[word!] === "left over" || String(cells[word!]).startsWith("fits"))
    .map((cells) => {
      const isOver = cells[word!] === "left over";
      const note = isOver
        ? `made and not returnable; ${String(cells[toDo!])}`
        : `${String(cells[word!])}; ${String(cells[toDo!])}`;
      return row({
        change: isOver ? "made, left over" : "made, used",
        name: String(cells[made!]),
        unit: "each",
        before: Number(cells[pieces!]),
        note,
      });
    });
}

/** What is not in the one or the other state, each once. */
const problemRows = (old: readonly string[], now: readonly string[]): Cell[][] => [
  ...now.map((words) => row({ change: "note", name: words, note: old.includes(words) ? "before and after" : "after" })),
  ...old.filter((words) => !now.includes(words)).map((words) => row({ change: "note", name: words, note: "before" })),
];
