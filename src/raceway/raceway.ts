import { InputError, quoteValue } from "../units/errors";
import { inWords } from "./inWords";
import { KINDS } from "./kinds";
import type { RacewayRecord } from "./kinds/record";

export type Raceway = keyof typeof KINDS;

/** Kinds of raceway the tables know, in the trade's order. */
export const RACEWAYS = Object.keys(KINDS) as readonly Raceway[];

/** Those that come in sticks; the others are bought by the foot and laid by hand. */
export type StickRaceway = {
  [R in Raceway]: (typeof KINDS)[R] extends { readonly flexible: true } ? never : R;
}[Raceway];

/** All that is to be known of a kind. */
export const racewayRecord = (raceway: Raceway): RacewayRecord => KINDS[raceway];

/** True for what is laid by hand: not bent on a shoe, not cut from sticks. */
export const isFlexible = (raceway: Raceway): boolean => racewayRecord(raceway).flexible === true;

/** Those that a shoe may bend, or a shop buys elbows for. */
export const BENT_KINDS: readonly Raceway[] = RACEWAYS.filter((raceway) => !isFlexible(raceway));

const BY_WORD: ReadonlyMap<string, Raceway> = new Map(
  RACEWAYS.flatMap((raceway) => KINDS[raceway].words.map((word) => [word, raceway] as const)),
);

/**
 * Reads a kind of raceway, whatever its case and punctuation; the trade's other words are understood.
 *
 * @param argument its name in messages
 * @throws InputError that lists the kinds that are known
 * @example readRaceway("galvanized rigid") //=> "RMC"
 */
export function readRaceway(value: unknown, argument = "raceway"): Raceway {
  const word = typeof value === "string" ? value.toLowerCase().replace(/[^a-z0-9]+/g, "") : "";
  const raceway = BY_WORD.get(word);
  if (raceway !== undefined) return raceway;
  const hint = word === "pvc" ? " Write the schedule too." : "";
  throw new InputError(`${argument} must be ${inWords(RACEWAYS)}; got ${quoteValue(value)}.${hint}`);
}
