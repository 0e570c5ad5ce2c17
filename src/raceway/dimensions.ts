import { NotListedError } from "../units/errors";
import coat from "./data/coat.json";
import emt from "./data/emt.json";
import imc from "./data/imc.json";
import pvc40 from "./data/pvc40.json";
import pvc80 from "./data/pvc80.json";
import rmc from "./data/rmc.json";
import type { Raceway } from "./raceway";
import type { Sourced } from "./sources";
import { TRADE_SIZES, type TradeSize } from "./tradeSize";

/** What the dimension tables hold of a raceway and size: lengths [in], area [in²], weight [lb/100 ft]. */
export type Dimension = "outsideDiameter" | "insideDiameter" | "wall" | "area" | "weight";

type Rows = Partial<Record<TradeSize, Partial<Record<Dimension, Sourced>>>>;

const TABLES: Record<Raceway, Rows> = {
  EMT: emt.rows,
  IMC: imc.rows,
  RMC: rmc.rows,
  "PVC-coated RMC": coated(rmc.rows),
  "PVC 40": pvc40.rows,
  "PVC 80": pvc80.rows,
};

/** PVC-coated conduit: the coat is added outside, the bore stays; no wall and weight were found in print. */
function coated(rows: typeof rmc.rows): Rows {
  return Object.fromEntries(
    Object.entries(rows).map(([size, { outsideDiameter, insideDiameter, area }]) => [
      size,
      {
        outsideDiameter: overCoat(outsideDiameter),
        insideDiameter: { ...insideDiameter, source: "RMC inside" },
        area: { ...area, source: "RMC inside" },
      },
    ]),
  );
}

/** Tables give thousandths: the sum is rounded so that it shows no more. */
function overCoat({ value }: Sourced): Sourced {
  return { value: Number((value + 2 * coat.thickness.value).toFixed(3)), source: coat.thickness.source };
}

/**
 * A dimension with its source.
 *
 * @throws NotListedError when the raceway is not made in that size, or the value is not listed
 */
export function dimension(raceway: Raceway, size: TradeSize, which: Dimension): Sourced {
  checkSize(raceway, size);
  const sourced = TABLES[raceway][size]?.[which];
  if (sourced === undefined) throw new NotListedError(`No ${IN_WORDS[which]} is listed for ${raceway} ${size}.`);
  return sourced;
}

/** @throws NotListedError when the raceway is not made in that size */
export function checkSize(raceway: Raceway, size: TradeSize): void {
  if (size in TABLES[raceway]) return;
  throw new NotListedError(`${raceway} is not listed in size ${size}; its sizes are ${sizesOf(raceway).join(", ")}.`);
}

const IN_WORDS: Record<Dimension, string> = {
  outsideDiameter: "outside diameter",
  insideDiameter: "inside diameter",
  wall: "wall",
  area: "area",
  weight: "weight",
};

/** Trade sizes a raceway is listed in, smallest first. */
export const sizesOf = (raceway: Raceway): TradeSize[] => TRADE_SIZES.filter((size) => size in TABLES[raceway]);

/** Outside diameter [in]. @throws NotListedError @example outsideDiameter("EMT", "1/2") //=> 0.706 */
export const outsideDiameter = (raceway: Raceway, size: TradeSize): number =>
  dimension(raceway, size, "outsideDiameter").value;

/** Inside diameter [in]. @throws NotListedError @example insideDiameter("EMT", "1/2") //=> 0.622 */
export const insideDiameter = (raceway: Raceway, size: TradeSize): number =>
  dimension(raceway, size, "insideDiameter").value;
