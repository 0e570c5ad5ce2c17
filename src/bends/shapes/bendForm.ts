import { InputError, quoteValue } from "../../units/errors";
import { toInches } from "../../units/length";
import { isOmitted, optional } from "../../units/limits";

/**
 * How the corners of a bend are taken: a centerline radius [in] for true arcs, "sharp" for corners without a radius,
 * or "table" for the rounded constants that handbooks print.
 */
export type BendForm = number | "sharp" | "table";

/** How a bend is taken where no handbook helps: true arcs or sharp corners. */
export type CornerForm = Exclude<BendForm, "table">;

const isTableWord = (value: unknown): boolean => typeof value === "string" && value.trim().toLowerCase() === "table";

/** Reads an optional radius argument: a length, the word "table", or nothing for sharp corners. */
export function readBendForm(value: unknown, argument = "radius"): BendForm {
  return isTableWord(value) ? "table" : readCornerForm(value, argument);
}

/** Reads an optional radius argument where there is nothing in print: a length, or nothing for sharp corners. */
export function readCornerForm(value: unknown, argument = "radius"): CornerForm {
  return optional(value, (given) => toInches(given, argument, { above: 0 })) ?? "sharp";
}

/** Reads an optional argument that can only be the word "table". */
export function readTableWord(value: unknown, argument = "table"): "sharp" | "table" {
  if (isOmitted(value)) return "sharp";
  if (isTableWord(value)) return "table";
  throw new InputError(`${argument} must be the word table, or left out; got ${quoteValue(value)}.`);
}

/** Radius the formulas with true arcs take [in]: a sharp corner is an arc of no radius. */
export const cornerRadius = (form: CornerForm): number => (form === "sharp" ? 0 : form);
