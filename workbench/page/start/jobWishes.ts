import { RACEWAYS, type Raceway } from "../../../src/raceway/raceway";
import { TRADE_SIZES, type TradeSize } from "../../../src/raceway/tradeSize";
import { type Bench, USUAL_BENCH } from "../../../src/shop/bench/bench";
import { builtInShoe } from "../../../src/shop/shoe/shoeBook";
import type { LengthStyle } from "../../../src/units/formatLength";
import { isUserError } from "../../../src/units/errors";

/** What a job of one's own starts from. */
export interface JobWishes {
  name: string;
  /** How lengths are shown and written. */
  style: LengthStyle;
  plane: Bench["plane"];
  /** What the shop bends. */
  raceways: readonly Raceway[];
  sizes: readonly TradeSize[];
  /** Whether Runs begins with a run to keep or type over. */
  example: boolean;
}

/** Raceways and sizes that there are shoes for to start with. */
export const BENT_RACEWAYS = RACEWAYS.filter((raceway) => TRADE_SIZES.some((size) => hasShoe(raceway, size)));
export const BENT_SIZES = TRADE_SIZES.filter((size) => RACEWAYS.some((raceway) => hasShoe(raceway, size)));

/** What stands in the form before anybody touches it. */
export const usualWishes = (): JobWishes => ({
  name: "My job",
  style: "feet",
  plane: USUAL_BENCH.plane,
  raceways: BENT_RACEWAYS,
  sizes: BENT_SIZES,
  example: true,
});

export function hasShoe(raceway: Raceway, size: TradeSize): boolean {
  try {
    builtInShoe(raceway, size);
    return true;
  } catch (error) {
    if (isUserError(error)) return false;
    throw error;
  }
}
