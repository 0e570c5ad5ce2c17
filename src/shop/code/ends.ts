import { InputError, quoteValue } from "../../units/errors";
import { lookUpKey } from "../../units/names/lookUpKey";
import { toNumber } from "../../units/number";
import { isOpen } from "../fittings/endKind";
import type { Run } from "../run/runsTable";

/** How many ends of a run are left open, and how many are terminated: two for each pull, less those. */
export function endsOf(run: Pick<Run, "from" | "to">, pulls: number): { open: number; ends: number } {
  const open = [run.from, run.to].filter(isOpen).length;
  return { open, ends: 2 * pulls - open };
}

/** Grounding bushings by the word in the cell. */
const GROUNDING_WORDS: ReadonlyMap<string, number> = new Map([
  ...["", "no", "none", "false"].map((word) => [word, 0] as const),
  ...["from", "to"].map((word) => [word, 1] as const),
  ...["yes", "true", "both"].map((word) => [word, 2] as const),
  ["all", Infinity],
]);

/**
 * Reads a Grounding bushing cell: no, from, to, both, all (pull boxes too) or a number.
 * @throws InputError when it cannot be read or asks for more than there are ends
 */
export function groundingBushings(text: string, ends: number): number {
  const asked = GROUNDING_WORDS.get(lookUpKey(text));
  if (asked !== undefined) return Math.min(asked, ends);
  if (Number.isNaN(Number(text))) {
    throw new InputError(
      `Grounding bushing must be no, from, to, both, all or a number up to ${ends}; got ${quoteValue(text)}.`,
    );
  }
  return toNumber(Number(text), "Grounding bushing", { min: 0, max: ends, integer: true });
}
