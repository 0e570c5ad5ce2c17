import { readEdition } from "../raceway/code/edition";
import { readTradeSize } from "../raceway/tradeSize";
import { InputError, isUserError, quoteValue } from "../units/errors";
import { toInches } from "../units/length";
import { LENGTH_UNITS } from "../units/formatLength";
import type { Limits } from "../units/limits";
import { asNumber, toNumber } from "../units/number";
import { readOperations } from "./operations";
import { readSizedLengths } from "./sizedLengths";
import { dayText, isDay } from "../units/day";
import { readCelsius } from "../units/celsius";

/** Factory elbows above no size, above all, or of the sizes the shop has no shoe for. */
const ELBOW_WORDS: readonly string[] = ["none", "all", "no shoe"];

/** Largest radius of an elbow, longest straight end of one, that are taken for meant [in]. */
const [LARGEST_RADIUS, LONGEST_END] = [120, 24];

type Reader = (cell: unknown, name: string) => string | number;

/** How the Value of a rule is read, by the rule's unit. */
const READERS: Record<string, Reader> = {
  each: number({ min: 0, integer: true }),
  in: (cell, name) => toInches(cell, name, { min: 0 }),
  "in of travel": number({ above: 0 }),
  F: number({ min: 0 }),
  C: (cell, name) => readCelsius(cell, name, { min: -60, max: 85 }),
  "of 1": number({ min: 0.05, max: 1 }),
  "lb/ft": number({ above: 0 }),
  "% of a limit": number({ min: 0, max: 100 }),
  "left out or counted": oneOf("left out", "counted"),
  "grip or eye"(cell, name) {
    const word = String(cell ?? "")
      .trim()
      .toLowerCase();
    if (word === "grip" || word === "eye") return word;
    throw mistake(name, "grip or eye", cell);
  },
  "C of terminals"(cell, name) {
    const column = asNumber(cell);
    if (column === 60 || column === 75 || column === 90) return column;
    throw mistake(name, "60, 75 or 90", cell);
  },
  edition: (cell, name) => readEdition(cell, name),
  "trade size"(cell, name) {
    const word = String(cell ?? "")
      .trim()
      .toLowerCase();
    if (ELBOW_WORDS.includes(word)) return word;
    try {
      return readTradeSize(cell);
    } catch (error) {
      if (!isUserError(error)) throw error;
      throw mistake(name, "none, all, no shoe or a trade size", cell);
    }
  },
  deg(cell, name) {
    const angles = String(cell ?? "").split(/[,;]/);
    if (angles.some((angle) => !((asNumber(angle) ?? 0) > 0))) throw mistake(name, "angles parted by commas", cell);
    return angles.map((angle) => angle.trim()).join(", ");
  },
  "in or standard": sized("standard", { above: 0, max: LARGEST_RADIUS }),
  "in or listed": sized("listed", { min: 0, max: LONGEST_END }),
  "multiplied or added": oneOf("multiplied", "added"),
  "a unit of length": oneOf(...LENGTH_UNITS),
  "in by size": sized(undefined, { min: 0, max: LONGEST_END }),
  "in out or in": sized(undefined, { min: -LONGEST_END, max: LONGEST_END }),
  days: number({ min: 0, integer: true }),
  day(cell, name) {
    const day = cell === 0 ? "" : dayText(cell);
    if (day === "" || isDay(day)) return day;
    throw mistake(name, "a day, as 2026-05-02", cell);
  },
  operations: (cell, name) => readOperations(cell, name).join(", ") || "none",
  "in by side": (cell) => String(cell ?? "").trim(),
  words: (cell) => (cell === 0 ? "" : String(cell ?? "").trim()),
};

/**
 * Reads the Value of a rule.
 * @throws InputError naming the rule, what it may be and what was read
 */
export function readRuleValue(cell: unknown, rule: { readonly rule: string; readonly unit: string }): string | number {
  const reader = READERS[rule.unit];
  if (!reader) throw new RangeError(`no reader for the unit ${rule.unit} of rule ${rule.rule}`);
  return reader(cell, `"${rule.rule}"`);
}

function number(limits: Limits): Reader {
  return (cell, name) => toNumber(cell, name, limits);
}

/** A length that may differ by raceway and size, or a word that leaves it to the program. */
function sized(word: string | undefined, limits: Limits): Reader {
  return (cell, name) => {
    const text = String(cell ?? "").trim();
    if (text.toLowerCase() === word) return word;
    readSizedLengths(text, name, limits);
    return text;
  };
}

function oneOf(...words: string[]): Reader {
  return (cell, name) => {
    const word = words.find(
      (known) =>
        known ===
        String(cell ?? "")
          .trim()
          .toLowerCase(),
    );
    if (word === undefined) throw mistake(name, inWords(words), cell);
    return word;
  };
}

const inWords = (words: readonly string[]): string => `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;

const mistake = (name: string, expected: string, cell: unknown): InputError =>
  new InputError(`${name} must be ${expected}; got ${quoteValue(cell)}.`);
