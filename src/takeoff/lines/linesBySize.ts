import { remember } from "../../memory/remember";
import type { Amount } from "../amounts/amount";
import type { Item } from "../amounts/item";
import type { RowWork } from "../amounts/jobWork";
import { partsBySize } from "../amounts/jobWork";
import { LineBook, type TakeoffLine } from "../amounts/lineBook";

/** What the runs of one raceway and size take, sticks apart. */
export interface SizeLines {
  readonly lines: readonly TakeoffLine[];
  /** The couplings among them that may come with the sticks. */
  readonly stickCouplings: readonly Item[];
}

const UNGROUPED: readonly string[] = [];

/**
 * What runs take, by raceway and size: an edit of one run leaves the lines of all other sizes as they are. What is of no
 * one raceway and size is apart.
 */
export const linesBySize = (works: readonly RowWork[]): { sizes: SizeLines[]; others: readonly TakeoffLine[] } => ({
  sizes: partsBySize(works).map((part) => sizeLines(part)),
  others: otherLines(works),
});

const sizeLines = remember((works: readonly RowWork[]): SizeLines => {
  const book = new LineBook();
  const stickCouplings = new Map<string, Item>();
  for (const work of works) {
    addAmounts(book, work, work.amounts);
    const { row, run, joints, coupling, stickCouplingFits } = work;
    if (joints === 0) continue;
    book.add(UNGROUPED, coupling, { rows: [row], each: joints, times: run.quantity, note: "" });
    if (stickCouplingFits) stickCouplings.set(coupling.name, coupling);
  }
  return { lines: book.lines(), stickCouplings: [...stickCouplings.values()] };
});

const otherLines = remember((works: readonly RowWork[]): readonly TakeoffLine[] => {
  const book = new LineBook();
  for (const work of works) addAmounts(book, work, work.conductors);
  return book.lines();
});

function addAmounts(book: LineBook, { row, run }: RowWork, amounts: readonly Amount[]): void {
  for (const { item, each, times = run.quantity, operation = item.kind, note } of amounts) {
    book.add(UNGROUPED, item, { rows: [row], each, times, note: note ?? "", operation }, { notes: note ? [note] : [] });
  }
}
