import { isOmitted } from "../../units/limits";
import code from "../data/codeRules.json";
import nec2020 from "../data/nec2020.json";
import nec2023 from "../data/nec2023.json";
import { InputError, quoteValue } from "../../units/errors";

/** Where the rules of codeRules.json stand in an edition; {article} is the raceway's. */
interface EditionSections {
  readonly racewayRules: Readonly<Record<keyof typeof code.racewayRules, string>>;
  readonly rules: Readonly<Record<keyof typeof code.rules, string>>;
}

/** Editions of the National Electrical Code (NEC): a further year is a data file and a line here. */
export const EDITIONS = { 2020: nec2020, 2023: nec2023 } as const satisfies Record<number, EditionSections>;

export type Edition = keyof typeof EDITIONS;

const YEARS = Object.keys(EDITIONS).map((year) => Number(year) as Edition);
/** The one that counts where nobody says which. */
const LATEST = 2023 satisfies Edition;

/**
 * Reads an edition of the code; an omitted one is 2023.
 *
 * @param argument its name in messages
 * @throws InputError for any other edition
 * @example readEdition("NEC 2020") //=> 2020
 */
export function readEdition(value: unknown, argument = "edition"): Edition {
  if (isOmitted(value)) return LATEST;
  const text = String(value)
    .trim()
    .toLowerCase()
    .replace(/^nec\s*/, "");
  const edition = YEARS.find((year) => String(year) === text);
  if (edition === undefined)
    throw new InputError(`${argument} must be ${YEARS.join(" or ")}; got ${quoteValue(value)}.`);
  return edition;
}
