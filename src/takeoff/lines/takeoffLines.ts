import { remember } from "../../memory/remember";
import { DEFAULT_STEPS, isAhead } from "../../cutting";
import type { StockBook } from "../cuts/cutStock";
import { compareCells, compareGroups, groupCell } from "../amounts/groupBy";
import { ITEM_KINDS } from "../amounts/item";
import type { CountBook } from "../amounts/counts";
import { labelKey, LineBook, rowCell, type TakeoffLine } from "../amounts/lineBook";
import { BOX, EACH, namedBoxes } from "./namedBoxes";
import { naturalOrder } from "../../units/names/naturalOrder";
import type { RuleBook } from "../../rules/rules";
import type { RowWork } from "../amounts/jobWork";
import { countRunSticks } from "../sticks/runSticks";
import { StickLots } from "../sticks/stickLots";
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
): readonly TakeoffLine[] => (isAhead() ? linesOf : linesOnce)(works, rules, stock, counts, ...by);

const linesOnce = remember(linesOf);

function linesOf(
  works: readonly RowWork[],
  rules: RuleBook,
  stock: StockBook | undefined,
  counts: CountBook | undefined,
  ...by: readonly string[]
): readonly TakeoffLine[] {
  const book = new LineBook();
  const lots = new Map<string, StickLots>();
  for (const work of works) {
    const { row, run } = work;
    const group = by.map((column) => groupCell(run, column));
    for (const { item, each, times = run.quantity, operation, note } of work.amounts) {
      const line = book.add(group, item, {
        rows: [row],
        each,
        times,
        note: note ?? "",
        operation: operation ?? item.kind,
      });
      if (note) line.notes.add(note);
    }
    const key = labelKey(group);
    const lot = lots.get(key) ?? new StickLots(group, book);
    lots.set(key, lot);
    lot.add(work);
  }
  const steps = workShare(DEFAULT_STEPS, lots.size);
  for (const lot of lots.values()) {
    lot.addSticks(
      stock ? countStockSticks(lot.works, stock, rules, steps) : countRunSticks(lot.works, rules, steps),
      rules,
    );
  }
  addBoxes(book, works, by, rules);
  for (const { row, item, quantity } of counts?.counts ?? []) {
    const group = by.map((column) => rowCell(row, column));
    book.add(group, item, { rows: [row], each: quantity, times: 1, note: "" });
  }
  return book.lines().sort((a, b) => compareLines(by, a, b));
}

/** A box is of no one raceway and size; where its runs fall into several groups, it is in the first of them. */
function addBoxes(book: LineBook, works: readonly RowWork[], by: readonly string[], rules: RuleBook): void {
  for (const { name, count, rows } of namedBoxes(
    works.map(({ row }) => row),
    rules,
  )) {
    const groups = rows.map(({ run }) =>
      by.map((column) => (column === "Raceway" || column === "Size" ? "" : groupCell(run, column))),
    );
    const first = groups.reduce((least, group) => (compareGroups(by, group, least) < 0 ? group : least));
    book
      .add(first, BOX, { rows, each: 1, times: count, note: name })
      .notes.add(
        EACH.test(name)
          ? "each before a name: one for every run of its row"
          : "one for each name in From and To; Quantity does not multiply it",
      );
  }
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
