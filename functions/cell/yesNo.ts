import { InputError, quoteValue } from "../../src/units/errors";

/**
 * Reads a yes or no: the words, or TRUE and FALSE; nothing is no.
 * @throws InputError for anything else
 */
export function readYes(value: unknown, argument: string): boolean {
  if (value === null || value === undefined || value === "") return false;
  const word = String(value).trim().toLowerCase();
  if (word === "yes" || word === "true") return true;
  if (word === "no" || word === "false") return false;
  throw new InputError(`${argument} must be yes or no; got ${quoteValue(value)}.`);
}
