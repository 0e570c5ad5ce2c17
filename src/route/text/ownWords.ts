import { AS_WRITTEN, type ShowLength } from "../../units/formatLength";
import { show } from "../../units/show";
import type { RouteStep } from "./types";
import { writeStep } from "./writeRoute";

const written = new WeakMap<RouteStep, string>();

/** Remembers a step in the words of the person who wrote it, for messages. */
export function keepWords<Step extends RouteStep>(step: Step, words: string): Step {
  written.set(step, words);
  return step;
}

/** A step as its writer put it; one that was never text, as {@link writeStep} puts it. */
export const wordsOf = (step: RouteStep): string => written.get(step) ?? writeStep(step);

/** Metric units with their length [in] and the digits a tape can show. */
const METRIC = {
  m: { inches: 1000 / 25.4, digits: 3 },
  cm: { inches: 10 / 25.4, digits: 1 },
  mm: { inches: 1 / 25.4, digits: 0 },
};

/**
 * How messages about a route show lengths: in the metric unit that its writer uses first, else as the job does.
 *
 * @example lengthsAsIn(readRoute("up 1.2 m, east 3 m"))(69.685) //=> "1.77 m"
 */
export function lengthsAsIn(steps: readonly RouteStep[], usual: ShowLength = AS_WRITTEN.show): ShowLength {
  const unit = /\d\s*(mm|cm|m)\b/i.exec(steps.map(wordsOf).join(", "))?.[1]?.toLowerCase() as
    keyof typeof METRIC | undefined;
  if (!unit) return usual;
  const { inches: size, digits } = METRIC[unit];
  return (inches) => `${show(inches / size, digits)} ${unit}`;
}
