import { remember } from "../../memory/remember";
import type { BuiltRow } from "../../shop/job/job";
import type { Run } from "../../shop/run/runsTable";
import { isOpen } from "../../shop/code/ends";
import type { Item } from "../amounts/item";
import { lookUpKey } from "../../units/lookUpKey";
import type { RuleBook } from "../../rules/rules";

/** A box named at an end of one run or of several: one box, however many conduits enter it. */
export interface NamedBox {
  readonly name: string;
  /** Rows of the runs that end at it, in the order given. */
  readonly rows: readonly BuiltRow[];
}

export const BOX: Item = { name: "Box", kind: "box", unit: "each", bought: true };

/**
 * The boxes named in From and To. The same name in the same job is the same box; Quantity does not multiply it. Ends
 * without a name (a dash is none), open ends, and names with one of the words of the rule "Ends that are no boxes" are passed over.
 */
export function namedBoxes(rows: readonly BuiltRow[], rules: RuleBook): NamedBox[] {
  const boxes = new Map<string, { name: string; rows: BuiltRow[] }>();
  for (const row of rows) {
    for (const { name, key } of boxEnds(row.run, rules)) {
      const box = boxes.get(key);
      if (!box) boxes.set(key, { name, rows: [row] });
      else if (box.rows[box.rows.length - 1] !== row) box.rows.push(row);
    }
  }
  return [...boxes.values()];
}

/** The ends of a run that are boxes, each with a key that its box has in every run of the job. */
const boxEnds = remember((run: Run, rules: RuleBook) => {
  const notBoxes = notBoxesOf(rules);
  return [...new Set([run.from, run.to])].flatMap((name) => {
    const nameKey = lookUpKey(name);
    if (nameKey === "" || isOpen(name) || notBoxes.some((words) => hasWords(name, words))) return [];
    return [{ name, key: JSON.stringify([lookUpKey(run.job), nameKey]) }];
  });
});

const notBoxesOf = remember((rules: RuleBook) =>
  rules.text("Ends that are no boxes").split(/[,;]/).map(lookUpKey).filter(Boolean),
);

const hasWords = (name: string, words: string): boolean => ` ${lookUpKey(name)} `.includes(` ${words} `);
