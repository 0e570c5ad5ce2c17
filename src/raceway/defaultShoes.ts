import type { Degrees } from "../geometry/angle";
import { NotListedError } from "../units/errors";
import { outsideDiameter } from "./dimensions";
import { minimumRadius } from "./minimumRadius";
import { racewayRecord, type Raceway } from "./raceway";
import { sourceInWords, type Sourced } from "./sources";
import { TRADE_SIZES, type TradeSize } from "./tradeSize";

/** A built-in shoe, a starting value to be measured: lengths [in], springback [°]. */
export interface DefaultShoe {
  readonly radius: number;
  readonly deduct: number;
  readonly outsideDiameter: number;
  readonly springback: Degrees;
  /** Where radius and deduct come from, in words. */
  readonly source: string;
}

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
  const larger = shoe.of === undefined ? "" : `The shoe of ${shoe.of} ${shoe.size}, one size up. `;
  return {
    radius: minimumRadius(shoe.size, "one-shot"),
    deduct: shoe.deduct.value,
    outsideDiameter: outsideDiameter(raceway, size),
    springback: 0,
    source: `${larger}Radius: NEC chapter 9, table 2, one-shot. Deduct: ${sourceInWords(shoe.deduct.source)}.`,
  };
}

/** The size of shoe that takes a raceway, its deduct, and the kind it is made for where that is another. */
function shoeThatTakes(
  raceway: Raceway,
  size: TradeSize,
): { size: TradeSize; deduct: Sourced; of?: string } | undefined {
  const { shoes } = racewayRecord(raceway);
  if (!("sizesUp" in shoes)) {
    const deduct = shoes[size];
    return deduct && { size, deduct };
  }
  const shoeSize = TRADE_SIZES[TRADE_SIZES.indexOf(size) + shoes.sizesUp];
  const deduct = shoeSize && shoes.of[shoeSize];
  return deduct && { size: shoeSize, deduct, of: shoes.name };
}

function noShoe(raceway: Raceway, size: TradeSize): string {
  const sizes = TRADE_SIZES.filter((each) => shoeThatTakes(raceway, each) !== undefined);
  const has = sizes.length > 0 ? `only sizes ${sizes.join(", ")} have one` : "no size has one";
  return `There is no built-in shoe for ${raceway} ${size}: ${has}. Give its radius and deduct in the Shoes table.`;
}
