import { remember } from "../../memory/remember";
import type { BuiltRow } from "../../shop/job/job";
import type { Run } from "../../shop/run/runsTable";
import { isOpen } from "../../shop/fittings/endKind";
import type { Item } from "../amounts/item";
import type { RowWork } from "../amounts/jobWork";
import { lookUpKey } from "../../units/names/lookUpKey";
import type { RuleBook } from "../../rules/rules";

/** A box named at an end of one run or of several: one box, however many conduits enter it, or one for every run. */
export interface NamedBox {
  readonly name: string;
  /** How many: the row's Quantity where the name begins with the word each, else 1. */
  readonly count: number;
  /** Rows of the runs that end at it, in the order given. */
  readonly rows: readonly BuiltRow[];
}

export const BOX: Item = { name: "Box", kind: "box", unit: "each", bought: true };

/**
 * The boxes named in From and To. The same name in the same job is the same box; Quantity does not multiply it. A name
 * that begins with the word each ("each receptacle") is a box of its own for every run of its row. Ends
 * without a name (a dash is none), open ends, and names with one of the words of the rule "Ends that are no boxes" are passed over.
 */
export const namedBoxes: (works: readonly RowWork[], rules: RuleBook) => readonly NamedBox[] = remember(
  (works, rules) => {
    const boxes = new Map<string, { name: string; count: number; rows: BuiltRow[] }>();
    for (const { row } of works) {
      for (const { name, key: shared, isEach } of boxEnds(row.run, rules)) {
        const key = isEach ? `${shared} ${row.rowNumber}` : shared;
        const box = boxes.get(key);
        if (!box) boxes.set(key, { name, count: isEach ? row.run.quantity : 1, rows: [row] });
        else if (box.rows[box.rows.length - 1] !== row) box.rows.push(row);
      }
    }
    return [...boxes.values()];
  },
);

/** The ends of a run that are boxes, each with a key that its box has in every run of the job. */
const boxEnds = remember((run: Run, rules: RuleBook) => {
  const notBoxes = notBoxesOf(rules);
  return [...new Set([run.from, run.to])].flatMap((name) => {
    const isEach = EACH.test(name);
    const called = name.replace(EACH, "");
    const nameKey = lookUpKey(called);
    if (nameKey === "" || isOpen(called) || notBoxes.some((words) => hasWords(called, words))) return [];
    return [{ name, isEach, key: JSON.stringify([lookUpKey(run.job), nameKey]) }];
  });
});

/** Before the name of a box of which every run has one. */
export const EACH = /^each\s+/i;

const notBoxesOf = remember((rules: RuleBook) =>
  rules.text("Ends that are no boxes").split(/[,;]/).map(lookUpKey).filter(Boolean),
);

const hasWords = (name: string, words: string): boolean => ` ${lookUpKey(name)} `.includes(` ${words} `);
