import { remember } from "../../memory/remember";
import type { Item } from "../amounts/item";
import { stickItem } from "../amounts/item";
import { stickRule } from "../../rules/stickRules";
import { labelKey, type LineBook } from "../amounts/lineBook";
import type { RuleBook } from "../../rules/rules";
import type { RowWork } from "../amounts/jobWork";

/** Sticks of one length to buy for runs of one raceway and size. */
export interface CountedSticks {
  readonly works: readonly RowWork[];
  /** [in] */
  readonly length: number;
  readonly sticks: number;
  readonly notes: readonly string[];
  /** How many that are on hand are used besides. */
  readonly onHand?: number;
  /** What one costs by the user's stock. */
  readonly price?: number;
}

/**
 * Adds the lines of the sticks of a group, and takes the couplings that come with them off the ones to buy.
 * @param couplings those of the group that may come with sticks
 */
export function addSticks(
  book: LineBook,
  group: readonly string[],
  counted: readonly CountedSticks[],
  couplings: readonly Item[],
  rules: RuleBook,
): void {
  const withSticks = new Map<string, number>();
  for (const { works, length, sticks, notes, price, onHand = 0 } of counted) {
    const { run, row } = works[0]!;
    const item = {
      ...stickItem(run, length, row.built.fittings.bell),
      ...(price === undefined ? {} : { stockPrice: price }),
    };
    book.add(group, item, { rows: rowsOf(works), each: sticks, times: 1, note: "" }, { notes, onHand });
    const key = labelKey([run.raceway, run.size]);
    const more = sticks * rules.number(stickRule("Couplings with each stick", run.raceway));
    withSticks.set(key, (withSticks.get(key) ?? 0) + more);
  }
  for (const coupling of couplings) {
    giveCouplings(book, group, coupling, withSticks.get(labelKey([coupling.raceway!, coupling.size!])) ?? 0);
  }
}

const rowsOf = remember((works: readonly RowWork[]) => works.map(({ row }) => row));

function giveCouplings(book: LineBook, group: readonly string[], coupling: Item, withSticks: number): void {
  const quantity = book.find(group, coupling)?.quantity ?? 0;
  const given = Math.min(quantity, withSticks);
  if (given === 0) return;
  const note = `${quantity} needed, ${withSticks} come with the sticks`;
  const item = { ...coupling, name: `${coupling.name}, with the sticks`, bought: false, inPlaceOf: coupling.name };
  book.add(group, item, { rows: [], each: given, times: 1, note });
  book.add(group, coupling, { rows: [], each: -given, times: 1, note }, { notes: [note] });
}
