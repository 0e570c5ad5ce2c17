import { InputError, quoteValue } from "../units/errors";
import { withinLimits } from "../units/limits";

/** The overcurrent device ahead of a run's conductors. */
export interface Breaker {
  /** [A] */
  readonly amperes: number;
  /** Sets of conductors that share it, one to each raceway. */
  readonly sets: number;
}

const BREAKER = /^\s*(\d+(?:\.\d+)?)\s*(?:a|amps?|amperes?)?\s*(?:[,;]?\s*(?:in\s+)?(\d{1,2})\s*sets?)?\s*$/i;
const LARGEST = 6000;

/**
 * Reads a Breaker cell: 60, `60 A`, `600 A, 2 sets` where each raceway holds one of two parallel sets.
 *
 * @throws InputError naming the argument, the limit and the value
 * @example readBreaker("600 A, 2 sets").sets //=> 2
 */
export function readBreaker(value: unknown, argument = "Breaker"): Breaker {
  const [, amperes, sets = "1"] = BREAKER.exec(String(value)) ?? [];
  if (amperes === undefined) {
    throw new InputError(`${argument} must be amperes, as in 60 or 600 A, 2 sets; got ${quoteValue(value)}.`);
  }
  return {
    amperes: withinLimits(Number(amperes), argument, { above: 0, max: LARGEST }),
    sets: withinLimits(Number(sets), `${argument} sets`, { min: 1 }),
  };
}

/** @example breakerInWords(readBreaker("600 A, 2 sets")) //=> "600 A, 2 sets" */
export const breakerInWords = ({ amperes, sets }: Breaker): string => `${amperes} A${sets > 1 ? `, ${sets} sets` : ""}`;
