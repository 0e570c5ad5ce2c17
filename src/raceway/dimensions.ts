import { NotListedError } from "../units/errors";
import type { RacewayDimension } from "./kinds/record";
import { racewayRecord, type Raceway } from "./raceway";
import type { Sourced } from "./sources";
import { TRADE_SIZES, type TradeSize } from "./tradeSize";

/**
 * A dimension with its source.
 *
 * @throws NotListedError when the raceway is not made in that size, or the value is not listed
 */
export function dimension(raceway: Raceway, size: TradeSize, which: RacewayDimension): Sourced {
  checkSize(raceway, size);
  const sourced = racewayRecord(raceway).sizes[size]?.[which];
  if (sourced === undefined) throw new NotListedError(`No ${IN_WORDS[which]} is listed for ${raceway} ${size}.`);
  return sourced;
}

/** @throws NotListedError when the raceway is not made in that size */
export function checkSize(raceway: Raceway, size: TradeSize): void {
  if (size in racewayRecord(raceway).sizes) return;
  throw new NotListedError(`${raceway} is not listed in size ${size}; its sizes are ${sizesOf(raceway).join(", ")}.`);
}

const IN_WORDS: Record<RacewayDimension, string> = {
  outsideDiameter: "outside diameter",
  insideDiameter: "inside diameter",
  wall: "wall",
  area: "area",
  weight: "weight",
};

/** Trade sizes a raceway is listed in, smallest first. */
export const sizesOf = (raceway: Raceway): TradeSize[] =>
  TRADE_SIZES.filter((size) => size in racewayRecord(raceway).sizes);

/** Outside diameter [in]. @throws NotListedError @example outsideDiameter("EMT", "1/2") //=> 0.706 */
export const outsideDiameter = (raceway: Raceway, size: TradeSize): number =>
  dimension(raceway, size, "outsideDiameter").value;
