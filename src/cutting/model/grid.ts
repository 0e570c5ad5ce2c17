import { InputError } from "../../units/errors";
import { formatLength } from "../../units/formatLength";
import { show } from "../../units/show";

/** The steps a cutting plan counts lengths in. */
export type CutGrid = "1/16" | "1/32" | "0.1 mm";

const STEPS_PER_INCH: Record<CutGrid, number> = { "1/16": 16, "1/32": 32, "0.1 mm": 254 };
const GRID_WORDS: Record<CutGrid, string> = { "1/16": "1/16 in.", "1/32": "1/32 in.", "0.1 mm": "0.1 mm" };
/** How far off the grid a length may be by rounding of the machine alone [steps]. */
const ROUNDING = 1e-6;

/**
 * A length in whole steps of the grid. Lengths between two steps are refused, never rounded.
 *
 * @param inches length [in]
 * @param argument its name in messages
 * @throws InputError naming the argument, the value and the neighbors on the grid
 * @example toSteps(40.25, "1/16", "length") //=> 644
 */
export function toSteps(inches: number, grid: CutGrid, argument: string): number {
  const exact = inches * STEPS_PER_INCH[grid];
  const steps = Math.round(exact);
  if (!(Math.abs(exact - steps) <= ROUNDING)) {
    const below = showSteps(Math.floor(exact), grid);
    const above = showSteps(Math.ceil(exact), grid);
    throw new InputError(
      `${argument} must be a whole number of ${GRID_WORDS[grid]}; got ${show(inches, 5)} in., between ${below} and ${above}.`,
    );
  }
  return steps;
}

/** The shortest length on the grid that is not shorter [steps], for callers that round on purpose. */
export function roundUpToSteps(inches: number, grid: CutGrid): number {
  return Math.ceil(inches * STEPS_PER_INCH[grid] - ROUNDING);
}

/** Length [in] of whole steps. */
export function stepsToInches(steps: number, grid: CutGrid): number {
  return steps / STEPS_PER_INCH[grid];
}

/** Whole steps as people write them. */
export function showSteps(steps: number, grid: CutGrid): string {
  const inches = stepsToInches(steps, grid);
  if (grid === "0.1 mm") return `${show(steps / 10, 1)} mm`;
  return formatLength(inches, grid === "1/16" ? 16 : 32, "inches");
}
