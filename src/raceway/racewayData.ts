import { InputError, quoteValue } from "../units/errors";
import designators from "./data/designators.json";
import { checkSize, dimension } from "./dimensions";
import { minimumRadiusRow } from "./minimumRadius";
import { elbowStraightEnd, standardElbowRadius } from "./elbows";
import { inWords } from "./inWords";
import type { Raceway } from "./raceway";
import { sourceInWords, type Sourced } from "./sources";
import { couplingLength, socketDepth, stickLength } from "./sticks";
import { thread } from "./threads";
import type { TradeSize } from "./tradeSize";

type Reader = (raceway: Raceway, size: TradeSize) => Sourced;

/** What can be asked of a raceway and size, by the name people write. */
export const ITEMS: Record<string, Reader> = {
  "outside diameter": (raceway, size) => dimension(raceway, size, "outsideDiameter"),
  "inside diameter": (raceway, size) => dimension(raceway, size, "insideDiameter"),
  wall: (raceway, size) => dimension(raceway, size, "wall"),
  area: (raceway, size) => dimension(raceway, size, "area"),
  weight: (raceway, size) => dimension(raceway, size, "weight"),
  "minimum radius": (_, size) => minimumRadiusRow(size, "one-shot"),
  "minimum radius other": (_, size) => minimumRadiusRow(size, "other"),
  "metric designator": (_, size) => ({ value: designators.designators[size], source: designators.source }),
  "stick length": stickLength,
  "coupling length": couplingLength,
  "socket depth": socketDepth,
  "elbow radius": (_, size) => standardElbowRadius(size),
  "elbow straight end": elbowStraightEnd,
  "thread length": (raceway, size) => thread(raceway, size, "length"),
  "threads per inch": (raceway, size) => thread(raceway, size, "perInch"),
};

const READERS = new Map(Object.entries(ITEMS));

/**
 * One value of the tables; or, with "source" after the item's name, where that value comes from.
 *
 * @param item such as "outside diameter" [in], "area" [in²], "weight" [lb/100 ft], "weight source"
 * @throws InputError when the item is not known; NotListedError when the raceway is not made in that size or nothing is listed
 * @example racewayData("EMT", "1/2", "outside diameter") //=> 0.706
 */
export function racewayData(raceway: Raceway, size: TradeSize, item: unknown): number | string {
  const words = typeof item === "string" ? (item.toLowerCase().match(/[a-z]+/g) ?? []) : [];
  const wantsSource = words[words.length - 1] === "source";
  const read = READERS.get((wantsSource ? words.slice(0, -1) : words).join(" "));
  if (read === undefined) {
    throw new InputError(`item must be ${inWords(Object.keys(ITEMS))}; got ${quoteValue(item)}.`);
  }
  checkSize(raceway, size);
  const { value, source } = read(raceway, size);
  return wantsSource ? sourceInWords(source) : value;
}
