import { NotListedError } from "../units/errors";
import shoes from "./data/shoes.json";
import { outsideDiameter } from "./dimensions";
import { minimumRadius } from "./minimumRadius";
import type { Raceway } from "./raceway";
import { sourceInWords, type Sourced } from "./sources";
import { TRADE_SIZES, type TradeSize } from "./tradeSize";

/** A built-in shoe, a starting value to be measured: lengths [in], springback [°]. */
export interface DefaultShoe {
  readonly radius: number;
  readonly deduct: number;
  readonly outsideDiameter: number;
  readonly springback: number;
  /** Where radius and deduct come from, in words. */
  readonly source: string;
}

const DEDUCTS: Partial<Record<Raceway, Partial<Record<TradeSize, Sourced>>>> = shoes.rows;

/**
 * The built-in shoe for a raceway and size: the code's one-shot radius and the trade's usual take-up.
 * PVC-coated conduit takes the shoe of RMC one size up, with its own outside diameter.
 *
 * @throws NotListedError when there is none; the Shoes table then needs a row
 * @example defaultShoe("EMT", "1/2").deduct //=> 5
 */
export function defaultShoe(raceway: Raceway, size: TradeSize): DefaultShoe {
  const shoe = shoeThatTakes(raceway, size);
  if (shoe === undefined) throw new NotListedError(noShoe(raceway, size));
  const oneSizeUp = raceway === "PVC-coated RMC" ? `The shoe of RMC ${shoe.size}, one size up. ` : "";
  return {
    radius: minimumRadius(shoe.size, "one-shot"),
    deduct: shoe.deduct.value,
    outsideDiameter: outsideDiameter(raceway, size),
    springback: 0,
    source: `${oneSizeUp}Radius: NEC chapter 9, table 2, one-shot. Deduct: ${sourceInWords(shoe.deduct.source)}.`,
  };
}

function shoeThatTakes(raceway: Raceway, size: TradeSize): { size: TradeSize; deduct: Sourced } | undefined {
  const coated = raceway === "PVC-coated RMC";
  const shoeSize = coated ? TRADE_SIZES[TRADE_SIZES.indexOf(size) + 1] : size;
  const deduct = shoeSize && DEDUCTS[coated ? "RMC" : raceway]?.[shoeSize];
  return deduct && { size: shoeSize, deduct };
}

function noShoe(raceway: Raceway, size: TradeSize): string {
  const sizes = TRADE_SIZES.filter((each) => shoeThatTakes(raceway, each) !== undefined);
  const has = sizes.length > 0 ? `only sizes ${sizes.join(", ")} have one` : "no size has one";
  return `There is no built-in shoe for ${raceway} ${size}: ${has}. Give its radius and deduct in the Shoes table.`;
}
