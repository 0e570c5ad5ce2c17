import { remember } from "../../memory/remember";
import type { Run } from "./runsTable";

/** Names that are told before the rest is only counted. */
const NAMED = 12;

/**
 * A Quantity of 0 counts as 1, and this says so: some versions of Excel hand an empty cell over as 0, and one that was
 * typed cannot be told from it. Empty when no run has one.
 */
export const zeroQuantities: (runs: readonly Run[]) => readonly string[] = remember((runs) => {
  const names = runs.flatMap(({ name, quantityWasZero }) => (quantityWasZero ? [name] : []));
  if (names.length === 0) return [];
  const more = names.length > NAMED ? ` and ${names.length - NAMED} more` : "";
  return [`Quantity is 0 or empty and counts as 1: ${names.slice(0, NAMED).join(", ")}${more}`];
});
