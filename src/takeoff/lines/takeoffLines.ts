import { sameList, sameParts } from "../../memory/lists";
import { remember } from "../../memory/remember";
import { DEFAULT_STEPS, rememberPlanned } from "../../cutting";
import type { BuiltRow } from "../../shop/job/job";
import type { Run } from "../../shop/run/runsTable";
import { isFlexible } from "../../raceway/raceway";
import type { StockBook } from "../cuts/cutStock";
import { compareCells, compareGroups, groupCell } from "../amounts/groupBy";
import { ITEM_KINDS } from "../amounts/item";
import type { CountBook } from "../amounts/counts";
import { labelKey, LineBook, rowCell, type TakeoffLine } from "../amounts/lineBook";
import { linesBySize } from "./linesBySize";
import { BOX, namedBoxes, type NamedBox } from "./namedBoxes";
import { naturalOrder } from "../../units/names/naturalOrder";
import type { RuleBook } from "../../rules/rules";
import type { RowWork } from "../amounts/jobWork";
import { countRunSticks } from "../sticks/runSticks";
import { addSticks } from "../sticks/stickLots";
import { countStockSticks } from "../sticks/stockSticks";
import { workShare } from "../cuts/workShare";

/**
 * Adds up what the runs take, line by line: by group, then raceway and size, then item. Sticks are counted within their
 * group: each group has its own sticks. Couplings that come with the sticks are counted first and have a line of their
 * own; the couplings to buy are the rest.
 *
 * @param by columns of Runs to group by
 * @param stock sticks and offcuts the order starts from; omitted: sticks of the runs' length, none on hand
 * @param counts things that hang on no run
 */
export const takeoffLines = (
  works: readonly RowWork[],
  by: readonly string[],
  rules: RuleBook,
  stock?: StockBook,
  counts?: CountBook,
): readonly TakeoffLine[] => linesOnce(works, rules, stock, counts, ...by);

const linesOnce = rememberPlanned(
  (
    works: readonly RowWork[],
    rules: RuleBook,
    stock: StockBook | undefined,
    counts: CountBook | undefined,
    ...by: readonly string[]
  ): readonly TakeoffLine[] => {
    const book = new LineBook();
    const groups = by.length === 0 ? [works] : sameParts(works, ({ run }) => labelKey(groupOf(run, by)));
    const steps = workShare(DEFAULT_STEPS, groups.length);
    for (const part of groups) addGroup(book, part, by, { rules, stock, steps });
    for (const line of boxLines(works, rules, ...by)) book.take(line.group, [line]);
    for (const { row, item, quantity } of counts?.counts ?? []) {
      const group = by.map((column) => rowCell(row, column));
      book.add(group, item, { rows: [row], each: quantity, times: 1, note: "" });
    }
    return book.lines().sort((a, b) => compareLines(by, a, b));
  },
);

const groupOf = (run: Run, by: readonly string[]): string[] => by.map((column) => groupCell(run, column));

/** What the sticks of a group are counted by. */
interface Sticks {
  readonly rules: RuleBook;
  readonly stock: StockBook | undefined;
  /** Work that their cutting plans may take. */
  readonly steps: number;
}

/** Adds what the runs of one group take, and its sticks. */
function addGroup(book: LineBook, works: readonly RowWork[], by: readonly string[], sticks: Sticks): void {
  const first = works[0];
  if (!first) return;
  const { rules, stock, steps } = sticks;
  const group = groupOf(first.run, by);
  const { sizes, others } = linesBySize(works);
  for (const { lines } of sizes) book.take(group, lines);
  book.take(group, others);
  const cut = fromSticks(works);
  const counted = stock ? countStockSticks(cut, stock, rules, steps) : countRunSticks(cut, rules, steps);
  const couplings = sizes.flatMap(({ stickCouplings }) => stickCouplings);
  addSticks(book, group, counted, couplings, rules);
}

/** Runs that are made from sticks. */
const fromSticks = remember((works: readonly RowWork[]) =>
  sameList(works.filter(({ run }) => !isFlexible(run.raceway))),
);

const BOX_NOTES: Readonly<Record<NamedBox["oneFor"], string>> = {
  name: "one for each name in From and To; Quantity does not multiply it",
  run: "each before a name: one for every run of its row",
  place: "of a typical: one for each name, each time it is placed",
};

/** A box is of no one raceway and size; where its runs fall into several groups, it is in the first of them. */
const boxLines = remember((works: readonly RowWork[], rules: RuleBook, ...by: readonly string[]) => {
  const book = new LineBook();
  for (const { name, count, rows, oneFor } of namedBoxes(works, rules)) {
    book.add(boxGroup(rows, by), BOX, { rows, each: 1, times: count, note: name }, { notes: [BOX_NOTES[oneFor]] });
  }
  return book.lines();
});

function boxGroup(rows: readonly BuiltRow[], by: readonly string[]): readonly string[] {
  if (by.length === 0) return by;
  const groups = rows.map(({ run }) =>
    by.map((column) => (column === "Raceway" || column === "Size" ? "" : groupCell(run, column))),
  );
  return groups.reduce((least, group) => (compareGroups(by, group, least) < 0 ? group : least));
}

/** The order of lines: by group, raceway, size, kind and name. */
export function compareLines(by: readonly string[], a: TakeoffLine, b: TakeoffLine): number {
  return (
    compareGroups(by, a.group, b.group) ||
    compareCells("Raceway", a.item.raceway ?? "", b.item.raceway ?? "") ||
    compareCells("Size", a.item.size ?? "", b.item.size ?? "") ||
    ITEM_KINDS.indexOf(a.item.kind) - ITEM_KINDS.indexOf(b.item.kind) ||
    naturalOrder(a.item.name, b.item.name)
  );
}
