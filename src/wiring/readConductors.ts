import { InputError, NotListedError, quoteValue } from "../units/errors";
import { conductorArea, type Conductors, type ConductorType, type Insulation } from "./conductors";

/** Types by what people write, letters and digits only. */
const TYPES: Readonly<Record<string, ConductorType>> = {
  thhn: "THHN",
  thwn: "THWN",
  thwn2: "THWN-2",
  thhnthwn: "THWN",
  thhnthwn2: "THWN-2",
  xhhw: "XHHW",
  xhhw2: "XHHW-2",
  bare: "bare",
};
const INSULATION: Readonly<Record<ConductorType, Insulation>> = {
  THHN: "THHN",
  THWN: "THHN",
  "THWN-2": "THHN",
  XHHW: "XHHW",
  "XHHW-2": "XHHW",
  bare: "bare",
};
const KNOWN = "THHN, THWN, THWN-2, XHHW, XHHW-2 and bare";

type Said = Pick<Conductors, "metal" | "compact" | "role">;

/** Words beside the type, and what each says. */
const WORDS: Readonly<Record<string, Partial<Said>>> = {
  copper: { metal: "copper" },
  cu: { metal: "copper" },
  aluminum: { metal: "aluminum" },
  aluminium: { metal: "aluminum" },
  al: { metal: "aluminum" },
  compact: { compact: true },
  ground: { role: "ground" },
  gnd: { role: "ground" },
  g: { role: "ground" },
  egc: { role: "ground" },
  neutral: { role: "neutral" },
  n: { role: "neutral" },
};

const BETWEEN_KINDS = /[+,;&\n]|\band\b/i;
/** Count, size and the rest of one kind: "3 #10 THHN", "(3) 1/0 AWG XHHW-2", "2 x 250 kcmil THHN", "1 #8 bare ground". */
const KIND =
  /^\(?(\d{1,4})\)?(?:\s*[x×-]\s*|\s+|\s*(?=#))(?:#|no\.?)?\s*(\d+(?:\/0)?)\s*(?:awg|kcmil|mcm)?(?:\s+([a-z][a-z0-9/ -]*))?$/i;
const IN_WORDS = "count, size and insulation, like 3 #10 THHN + 1 #12 THHN";

/**
 * Reads conductors: text, or a range whose rows hold count, size and insulation (in one cell or side by side). Empty
 * rows and a header row are passed over. Beside the insulation may stand compact, aluminum, neutral and ground.
 *
 * @param argument its name in messages
 * @throws InputError when something is not count, size and insulation; NotListedError when its area is not listed
 * @example readConductors("3 #10 THHN + 1 #12 THHN ground").length //=> 2
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
  const [, count, size = "", rest = ""] = parts;
  const words = rest.split(" ");
  const said = Object.assign({}, ...words.map((word) => wordOf(word) ?? {})) as Partial<Said>;
  const name = words.filter((word) => wordOf(word) === undefined).join(" ");
  if (name === "") {
    throw new InputError(`${where}: ${quoteValue(text)} must name its insulation, like ${text} THHN.`);
  }
  if (Number(count) < 1) throw new InputError(`${where}: the count must be at least 1; got ${quoteValue(text)}.`);
  const key = name.toLowerCase().replace(/[^a-z0-9]/g, "");
  const type = Object.hasOwn(TYPES, key) ? TYPES[key] : undefined;
  if (type === undefined) {
    throw new NotListedError(
      `${where}: no area is listed for ${quoteValue(name)}; the insulations listed are ${KNOWN}.`,
    );
  }
  const { metal = "copper", compact = false, role = type === "bare" ? "ground" : "circuit" } = said;
  if (type === "bare" && role !== "ground") {
    throw new InputError(`${where}: a bare conductor is a ground; got ${quoteValue(text)}.`);
  }
  const insulation = INSULATION[type];
  return {
    count: Number(count),
    size,
    insulation,
    type,
    metal,
    compact,
    role,
    area: conductorArea(size, insulation, where, compact),
  };
}

function wordOf(word: string): Partial<Said> | undefined {
  const key = word.toLowerCase();
  return Object.hasOwn(WORDS, key) ? WORDS[key] : undefined;
}
