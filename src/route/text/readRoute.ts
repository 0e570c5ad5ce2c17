import { InputError, quoteValue } from "../../units/errors";
import { readStep } from "./readStep";
import type { RouteStep } from "./types";

/** Longest route text [characters]; a run of a hundred bends stays below it. */
const LONGEST_ROUTE = 4000;

/**
 * Reads the text of a route into its steps, from the datum end to the far end. Commas, semicolons and line breaks part
 * the steps; case and spacing do not matter; empty steps are passed over and not counted.
 *
 * @param text as in `up 4', east 12' 6", offset 6 up at 30, east 40`
 * @returns one step for each; {@link writeRoute} is the inverse
 * @throws InputError with the number of the first wrong step, what was read and what was expected
 * @example readRoute("up 4'; bend 30 north")
 * //=> [{ kind: "leg", direction: "up", length: 48 }, { kind: "bend", angle: 30, toward: "north" }]
 */
export function readRoute(text: unknown): RouteStep[] {
  if (typeof text !== "string" || text.trim() === "") {
    throw new InputError(`route must be text, as in up 4', east 12' 6"; got ${quoteValue(text)}.`);
  }
  if (text.length > LONGEST_ROUTE) {
    throw new InputError(
      `route must be at most ${LONGEST_ROUTE} characters long; got ${text.length}. Part it at a box.`,
    );
  }
  const parts = text.split(/[,;\r\n]/).filter((part) => part.trim() !== "");
  if (parts.length === 0) throw new InputError(`route must have at least one step; got ${quoteValue(text)}.`);
  return parts.map((part, index) => readStep(part, index + 1));
}
