import { InputError, NotListedError, quoteValue } from "../units/errors";
import { inWords } from "./inWords";
import table from "./data/wiring.json";
import { readRaceway } from "./raceway";

const ROWS: Record<string, Partial<Record<"direct" | "metal" | "other", number>>> = table.cover.rows;

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
  const row = ROWS[name];
  if (!row) throw new InputError(`place must be ${inWords(Object.keys(ROWS))}; got ${quoteValue(place)}.`);
  const direct =
    String(what ?? "")
      .trim()
      .toLowerCase() === "direct";
  const column = direct ? "direct" : /RMC|IMC/.test(readRaceway(what)) ? "metal" : "other";
  const cover = row[column];
  if (cover === undefined)
    throw new NotListedError(`${name} wants a raceway: no cover is listed for cable without one.`);
  return cover;
}
