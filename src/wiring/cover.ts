import { InputError, NotListedError, quoteValue } from "../units/errors";
import { inWords } from "../raceway/inWords";
import { readRaceway, type Raceway } from "../raceway/raceway";
import table from "./data/cover.json";

/** What is over a buried run: a row of the code's table. */
export type CoverPlace = keyof typeof table.rows;

const ROWS: Record<CoverPlace, Partial<Record<"direct" | "metal" | "other", number>>> = table.rows;

export const COVER_PLACES = Object.keys(ROWS) as CoverPlace[];

/**
 * Least cover of a buried raceway, or of cable without one [in], from the top of it to grade.
 *
 * @param place general, under concrete (2 in. in the trench), under a building, under a slab (4 in., no vehicles), under a road,
 *   dwelling driveway or airport
 * @param what a raceway, or direct for cable without one
 * @throws InputError for another place; NotListedError where the table has none
 * @example leastCover("general", "RMC") //=> 6
 */
export function leastCover(place: unknown, what: unknown): number {
  const name = String(place ?? "")
    .trim()
    .toLowerCase();
  const row = COVER_PLACES.find((each) => each === name);
  if (!row) throw new InputError(`place must be ${inWords(COVER_PLACES)}; got ${quoteValue(place)}.`);
  const direct =
    String(what ?? "")
      .trim()
      .toLowerCase() === "direct";
  if (!direct) return racewayCover(row, readRaceway(what));
  const cover = ROWS[row].direct;
  if (cover === undefined)
    throw new NotListedError(`${name} wants a raceway: no cover is listed for cable without one.`);
  return cover;
}

/** Least cover of a buried raceway [in]. @example racewayCover("general", "PVC 40") //=> 18 */
export const racewayCover = (place: CoverPlace, raceway: Raceway): number =>
  ROWS[place][/RMC|IMC/.test(raceway) ? "metal" : "other"]!;
