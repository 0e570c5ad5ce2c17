import type { Degrees } from "../geometry/angle";
import { NotListedError } from "../units/errors";
import { outsideDiameter } from "./dimensions";
import { minimumRadius } from "./minimumRadius";
import type { KindOfShoe } from "./kinds/record";
import { isFlexible, racewayRecord, type Raceway } from "./raceway";
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
 * The built-in shoe for a raceway and size, radius and deduct of one tool: the trade's usual take-up, and the code's
 * one-shot radius for the size the tool is made for. Rigid and IMC are bent on EMT's shoe one size larger; PVC-coated
 * conduit takes the shoe of RMC one size up, with its own outside diameter. No print gives radius and take-up of one
 * shoe together: the pair is a start, to be measured.
 *
 * @throws NotListedError when there is none; the Shoes table then needs a row
 * @example defaultShoe("EMT", "1/2").deduct //=> 5
 */
export function defaultShoe(raceway: Raceway, size: TradeSize): DefaultShoe {
  const tool = toolThatTakes(racewayRecord(raceway).shoes, size);
  if (tool === undefined) throw new NotListedError(noShoe(raceway, size));
  return {
    radius: minimumRadius(tool.madeFor, "one-shot"),
    deduct: tool.deduct.value,
    outsideDiameter: outsideDiameter(raceway, size),
    springback: 0,
    source:
      `${tool.words}Radius: NEC chapter 9, table 2, one-shot${tool.of}. ` +
      `Deduct: ${sourceInWords(tool.deduct.source)}.`,
  };
}

/** A tool: the size of EMT or of the raceway it is made for, its deduct, and what is to be said of it. */
interface Tool {
  readonly madeFor: TradeSize;
  readonly deduct: Sourced;
  /** Which shoe it is, and whose radius; both empty for a shoe of the raceway's own size. */
  readonly words: string;
  readonly of: string;
}

function toolThatTakes(shoes: KindOfShoe, size: TradeSize): Tool | undefined {
  if ("of" in shoes) {
    const larger = sizeAbove(size, shoes.sizesUp);
    const tool = larger && toolThatTakes(shoes.of, larger);
    const which = shoes.sizesUp === 0 ? "" : ", one size up";
    return tool && { ...tool, words: `The shoe of ${shoes.name} ${larger}${which}. ${tool.words}` };
  }
  const deduct = shoes.deducts[size];
  const madeFor = sizeAbove(size, shoes.onEmt?.sizesUp ?? 0);
  if (!deduct || !madeFor) return undefined;
  if (!shoes.onEmt) return { madeFor, deduct, words: "", of: "" };
  const words = `The shoe of EMT ${madeFor} (${sourceInWords(shoes.onEmt.source)}). `;
  return { madeFor, deduct, words, of: `, of size ${madeFor}` };
}

const sizeAbove = (size: TradeSize, sizesUp: number): TradeSize | undefined =>
  TRADE_SIZES[TRADE_SIZES.indexOf(size) + sizesUp];

function noShoe(raceway: Raceway, size: TradeSize): string {
  if (isFlexible(raceway)) return `${raceway} is laid by hand and not bent on a shoe.`;
  const sizes = TRADE_SIZES.filter((each) => toolThatTakes(racewayRecord(raceway).shoes, each) !== undefined);
  const has = sizes.length > 0 ? `only sizes ${sizes.join(", ")} have one` : "no size has one";
  return `There is no built-in shoe for ${raceway} ${size}: ${has}. Give its radius and deduct in the Shoes table.`;
}
