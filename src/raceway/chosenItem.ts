import { InputError, quoteValue } from "../units/errors";
import { inWords } from "./inWords";

/**
 * The answer an optional item argument asks for; an omitted one asks for the first.
 *
 * @param argument its name in messages
 * @throws InputError that lists the items
 * @example chosenItem("limit", { ratio: 0.39, limit: 0.4 }) //=> 0.4
 */
export function chosenItem<T>(item: unknown, answers: Readonly<Record<string, T>>, argument = "item"): T {
  const names = Object.keys(answers);
  const asked = item === null || item === undefined || item === "" ? names[0] : String(item).trim().toLowerCase();
  const name = names.find((each) => each === asked);
  if (name === undefined) throw new InputError(`${argument} must be ${inWords(names)}; got ${quoteValue(item)}.`);
  return answers[name] as T;
}
