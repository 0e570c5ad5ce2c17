import { toInches } from "../units/length";

/**
 * How the corners of a bend are taken: a centerline radius [in] for true arcs, "sharp" for corners without a radius,
 * or "table" for the rounded constants that handbooks print.
 */
export type BendForm = number | "sharp" | "table";

/** Reads an optional radius argument: a length, the word "table", or nothing for sharp corners. */
export function readBendForm(value: unknown, argument = "radius"): BendForm {
  if (value === null || value === undefined || value === "") return "sharp";
  if (typeof value === "string" && value.trim().toLowerCase() === "table") return "table";
  return toInches(value, argument, { above: 0 });
}

/** Radius the formulas with true arcs take [in]: a sharp corner is an arc of no radius. */
export const cornerRadius = (form: number | "sharp"): number => (form === "sharp" ? 0 : form);
