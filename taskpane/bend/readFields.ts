import { toAngle } from "../../src/units/angle";
import { toInches } from "../../src/units/length";
import { toNumber } from "../../src/units/number";
import { readRoute } from "../../src/route/text/readRoute";
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

/**
 * The steps of a bend as it is added to a run, in the person's own words (5-1/2 stays 5-1/2) where these are read as the
 * values are. After steps that are there, what leads up to the bend goes on ahead.
 *
 * @param texts what stands in the fields, with its unit where a bare number is none of inches
 */
export function stepsToAdd(
  kind: BendChoice,
  values: Readonly<Record<string, number>>,
  texts: Readonly<Record<string, string>>,
  afterOthers: boolean,
): string[] {
  const read = (steps: readonly string[]) => attempt(() => JSON.stringify(readRoute(steps.join(", "))));
  const [plain, written] = [routeSteps(kind, values), routeSteps(kind, texts)];
  const steps = read(written).value === read(plain).value ? written : plain;
  return steps.map((step, place) => (afterOthers && place < kind.lead ? step.replace(/^\w+/, "ahead") : step));
}
