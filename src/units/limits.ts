import { InputError } from "./errors";

/** What an argument may be. `above` and `below` leave the limit itself out; `min` and `max` take it in. */
export interface Limits {
  readonly above?: number;
  readonly min?: number;
  readonly max?: number;
  readonly below?: number;
  readonly integer?: boolean;
}

/** How a number is written in a message: without the last digits, which are rounding. */
const plain = (value: number): string => String(Number(value.toPrecision(12)));

/**
 * Gives the value back when it keeps to the limits.
 *
 * @param unit written after each number of the message, for example "°" or " in."
 * @throws InputError such as "angle must be above 0° and below 180°; got 190°."
 */
export function withinLimits(value: number, argument: string, limits: Limits, unit = ""): number {
  const { above = -Infinity, min = -Infinity, max = Infinity, below = Infinity, integer = false } = limits;
  const kept = value > above && value >= min && value <= max && value < below && (!integer || Number.isInteger(value));
  if (kept && Number.isFinite(value)) return value + 0;
  throw new InputError(`${argument} must be ${inWords(limits, unit)}; got ${plain(value)}${unit.replace(/\.$/, "")}.`);
}

function inWords({ above, min, max, below, integer }: Limits, unit: string): string {
  const bounds = [
    above === undefined ? "" : `above ${plain(above)}${unit}`,
    min === undefined ? "" : `at least ${plain(min)}${unit}`,
    max === undefined ? "" : `at most ${plain(max)}${unit}`,
    below === undefined ? "" : `below ${plain(below)}${unit}`,
  ].filter((words) => words !== "");
  const kind = integer ? "a whole number" : bounds.length === 0 ? "a finite number" : "";
  return [kind, bounds.join(" and ")].filter((words) => words !== "").join(" ");
}

/** True for what an optional argument is when it was left out: Excel passes null, a blank cell may come as "". */
export const isOmitted = (value: unknown): boolean => value === null || value === undefined || value === "";

/** Reads an optional argument; undefined when it was left out. */
export const optional = <T>(value: unknown, read: (value: unknown) => T): T | undefined =>
  isOmitted(value) ? undefined : read(value);
