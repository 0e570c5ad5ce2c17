import { InputError, quoteValue } from "../units/errors";

/** Editions of the National Electrical Code (NEC) whose section numbers are known. */
export type Edition = 2020 | 2023;

const EDITION_TEXT = /^(?:nec\s*)?(2020|2023)$/;

/**
 * Reads an edition of the code; an omitted one is 2023.
 *
 * @param argument its name in messages
 * @throws InputError for any other edition
 * @example readEdition("NEC 2020") //=> 2020
 */
export function readEdition(value: unknown, argument = "edition"): Edition {
  if (value === null || value === undefined || value === "") return 2023;
  const text = EDITION_TEXT.exec(String(value).trim().toLowerCase())?.[1];
  if (text === undefined) throw new InputError(`${argument} must be 2020 or 2023; got ${quoteValue(value)}.`);
  return text === "2020" ? 2020 : 2023;
}
