import { InputError, NotListedError, quoteValue } from "../units/errors";
import table from "./data/conductors.json";
import { inWords } from "../raceway/inWords";

/** Insulations whose areas are listed; THHN stands for THWN and THWN-2 too, XHHW for XHHW-2. */
export type Insulation = keyof typeof table.insulations;

/** Conductors of one kind in a raceway. */
export interface Conductors {
  readonly count: number;
  /** AWG or kcmil: "10", "1/0", "250". */
  readonly size: string;
  readonly insulation: Insulation;
  /** Area of each [in²]: NEC chapter 9, table 5. */
  readonly area: number;
}

const INSULATIONS = new Map<string, Insulation>([
  ["thhn", "THHN"],
  ["thwn", "THHN"],
  ["thwn2", "THHN"],
  ["thhnthwn", "THHN"],
  ["thhnthwn2", "THHN"],
  ["xhhw", "XHHW"],
  ["xhhw2", "XHHW"],
]);

const BETWEEN_KINDS = /[+,;&\n]|\band\b/i;
/** Count, size and insulation of one kind: "3 #10 THHN", "(3) 1/0 AWG XHHW-2", "2 x 250 kcmil THHN". */
const KIND =
  /^\(?(\d{1,4})\)?(?:\s*[x×-]\s*|\s+|\s*(?=#))(?:#|no\.?)?\s*(\d+(?:\/0)?)\s*(?:awg|kcmil|mcm)?(?:\s+([a-z][a-z0-9/ -]*))?$/i;
const IN_WORDS = "count, size and insulation, like 3 #10 THHN + 1 #12 THHN";

/**
 * Reads conductors: text, or a range whose rows hold count, size and insulation (in one cell or side by side). Empty
 * rows and a header row are passed over.
 *
 * @param argument its name in messages
 * @throws InputError when something is not count, size and insulation; NotListedError when its area is not listed
 * @example readConductors("3 #10 THHN + 1 #12 THHN").length //=> 2
 */
export function readConductors(value: unknown, argument = "conductors"): Conductors[] {
  const kinds = asTexts(value, argument).flatMap(({ text, where }) =>
    text
      .split(BETWEEN_KINDS)
      .map((part) => part.replace(/\s+/g, " ").trim())
      .filter((part) => part !== "")
      .map((part) => readKind(part, where)),
  );
  if (kinds.length === 0) throw new InputError(`${argument} must be ${IN_WORDS}; got an empty cell.`);
  return kinds;
}

interface Written {
  readonly text: string;
  /** What the text is called in messages. */
  readonly where: string;
}

function asTexts(value: unknown, argument: string): Written[] {
  if (typeof value === "string") return [{ text: value, where: argument }];
  if (!Array.isArray(value)) return noText(value, argument);
  const texts = value.map((row: unknown) => withoutZeros(Array.isArray(row) ? row : [row]).join(" "));
  if (texts.length === 1) return [{ text: texts[0] ?? "", where: argument }];
  const rows = texts.map((text, index): Written => ({ text, where: `${argument} row ${index + 1}` }));
  return hasNoNumber(texts[0] ?? "") ? rows.slice(1) : rows;
}

/** A row without its empty cells, which may come as 0; only a count that stands before something may be one. */
const withoutZeros = (row: readonly unknown[]): unknown[] =>
  row.filter((cell, index) => cell !== 0 || (index === 0 && row.some((other) => Boolean(other))));

/** A header row has words alone. */
const hasNoNumber = (text: string): boolean => !/\d/.test(text);

function noText(value: unknown, argument: string): never {
  throw new InputError(`${argument} must be ${IN_WORDS}; got ${quoteValue(value)}.`);
}

function readKind(text: string, where: string): Conductors {
  const parts = KIND.exec(text);
  if (!parts) return noText(text, where);
  const [, count, size = "", name] = parts;
  if (name === undefined) {
    throw new InputError(`${where}: ${quoteValue(text)} must name its insulation, like ${text} THHN.`);
  }
  if (Number(count) < 1) throw new InputError(`${where}: the count must be at least 1; got ${quoteValue(text)}.`);
  const insulation = INSULATIONS.get(name.toLowerCase().replace(/[^a-z0-9]/g, ""));
  if (insulation === undefined) {
    const known = "THHN, THWN, THWN-2, XHHW and XHHW-2";
    throw new NotListedError(
      `${where}: no area is listed for ${quoteValue(name)}; the insulations listed are ${known}.`,
    );
  }
  return { count: Number(count), size, insulation, area: conductorArea(size, insulation, where) };
}

/** Area of one insulated conductor [in²]. @throws NotListedError */
export function conductorArea(size: string, insulation: Insulation, where = "conductors"): number {
  const areas: Record<string, number> = table.insulations[insulation].areas;
  const area = areas[size];
  if (area !== undefined) return area;
  throw new NotListedError(
    `${where}: no area is listed for ${insulation} ${quoteValue(size)}; sizes are ${inWords(CONDUCTOR_SIZES)}.`,
  );
}

/** Sizes listed, thinnest first: AWG to 4/0, then kcmil. */
export const CONDUCTOR_SIZES: readonly string[] = [
  ...["14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0"],
  ...["250", "300", "350", "400", "500"],
];
