import { toAngle } from "../../src/units/angle";
import { toInches } from "../../src/units/length";
import { toNumber } from "../../src/units/number";
import { attempt } from "../components/attempt";
import type { BendField, BendChoice, Values } from "./kinds";

/** Longest dimension of a bend [in]: beyond it a unit was mistaken. */
const LONGEST = 1200;

export interface ReadFields {
  /** All values when every field reads. Lengths [in], angles [°]. */
  values: Values | undefined;
  /** What is wrong, by the field's key. */
  problems: Readonly<Record<string, string>>;
}

/** Reads what a person typed into the fields of a bend. */
export function readFields(
  kind: BendChoice,
  texts: Readonly<Record<string, string>>,
  typed: (text: string) => string,
): ReadFields {
  const values: Record<string, number> = {};
  const problems: Record<string, string> = {};
  for (const field of kind.fields) {
    const text = texts[field.key] ?? field.first;
    const { value, problem } = attempt(() => readField(field, field.kind === "length" ? typed(text) : text));
    if (problem !== undefined) problems[field.key] = problem;
    else values[field.key] = value ?? 0;
  }
  return { values: Object.keys(problems).length > 0 ? undefined : values, problems };
}

function readField({ kind, label }: BendField, text: string): number {
  if (kind === "length") return toInches(text, label, { above: 0, max: LONGEST });
  if (kind === "angle") return toAngle(text, label, { above: 0, max: 90 });
  return toNumber(text, label, { min: 2, max: 90, integer: true });
}

/** The steps of a bend's route with the values in their places. */
export const routeSteps = (kind: BendChoice, values: Readonly<Record<string, number | string>>): string[] =>
  kind.steps.map((step) => step.replace(/\{(\w+)\}/g, (_, key: string) => String(values[key] ?? "")));
