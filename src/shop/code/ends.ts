import { InputError, quoteValue } from "../../units/errors";
import { lookUpKey } from "../../units/names/lookUpKey";
import { toNumber } from "../../units/number";
import { isOpen } from "../fittings/endKind";
import type { BuiltRun } from "../run/builtRun";
import { heldEnds } from "../run/pullEnds";

/** How many ends of a run are left open, and how many are held by a fitting: the others, but for those in bodies and at flexible pieces. */
export function endsOf(built: BuiltRun): { open: number; ends: number } {
  const { run } = built;
  const open = [run.from, run.to].filter(isOpen).length;
  return { open, ends: Math.max(0, heldEnds(built) - open) };
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
