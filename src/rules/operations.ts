import { InputError, quoteValue } from "../units/errors";
import { lookUpKey } from "../units/names/lookUpKey";

/** Work that a job may be counted by besides what goes with its items. */
export const OPERATIONS = ["cuts", "threads", "reams", "terminations", "wire terminations", "supports"] as const;

export type Operation = (typeof OPERATIONS)[number];

/**
 * Reads which work is counted: none, all, or names parted by commas.
 *
 * @throws InputError naming the rule and the word it does not know
 * @example readOperations("cuts, threads", "rule") //=> ["cuts", "threads"]
 */
export function readOperations(cell: unknown, name: string): readonly Operation[] {
  const words = String(cell ?? "")
    .split(/[,;]/)
    .map((word) => word.trim())
    .filter((word) => word !== "");
  if (words.length === 0 || (words.length === 1 && lookUpKey(words[0]) === "none")) return [];
  if (words.length === 1 && lookUpKey(words[0]) === "all") return OPERATIONS;
  const asked = words.map((word) => {
    const known = OPERATIONS.find((operation) => lookUpKey(operation) === lookUpKey(word));
    if (!known)
      throw new InputError(`${name} must be none, all or some of ${OPERATIONS.join(", ")}; got ${quoteValue(word)}.`);
    return known;
  });
  return OPERATIONS.filter((operation) => asked.includes(operation));
}
