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
  /** What there is one box for. */
  readonly oneFor: "name" | "run" | "place";
  /** Rows of the runs that end at it, in the order given. */
  readonly rows: readonly BuiltRow[];
}

export const BOX: Item = { name: "Box", kind: "box", unit: "each", bought: true };

/**
 * The boxes named in From and To. The same name in the same job is the same box; Quantity does not multiply it. A name
 * of a typical is one box each time it is placed, unless a run outside it ends at that box, too. A name
 * that begins with the word each ("each receptacle") is a box of its own for every run of its row. Ends
 * without a name (a dash is none), open ends, and names with one of the words of the rule "Ends that are no boxes" are passed over.
 */
export const namedBoxes: (works: readonly RowWork[], rules: RuleBook) => readonly NamedBox[] = remember(
  (works, rules) => {
    const boxes = new Map<string, NamedBox & { rows: BuiltRow[] }>();
    // Those of typicals last: an end that runs outside them have, too, is of no typical.
    for (const { row } of [...works].sort((a, b) => Number(isPlaced(a)) - Number(isPlaced(b)))) {
      const { quantity, placed, typical, area } = row.run;
      for (const { name, key: shared, isEach } of boxEnds(row.run, rules)) {
        const own = placed === undefined ? "" : ` ${JSON.stringify([lookUpKey(typical), area])}`;
        const key = isEach ? `${shared} ${row.rowNumber}${own}` : boxes.has(shared) ? shared : `${shared}${own}`;
        const box = boxes.get(key);
        const oneFor = isEach ? "run" : placed === undefined ? "name" : "place";
        const count = { name: 1, run: quantity, place: placed ?? 1 }[oneFor];
        if (!box) boxes.set(key, { name, count, oneFor, rows: [row] });
        else if (box.rows[box.rows.length - 1] !== row) box.rows.push(row);
      }
    }
    return [...boxes.values()];
  },
);

const isPlaced = ({ run }: RowWork): boolean => run.placed !== undefined;

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
