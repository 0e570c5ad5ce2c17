import { SAME_COUNT } from "../units/tolerances";
import { NotListedError } from "../units/errors";
import type { Conductors } from "./conductors";
import table from "./data/fill.json";
import { dimension, sizesOf } from "../raceway/dimensions";
import type { Raceway } from "../raceway/raceway";
import { commonRule, nameRule, type Edition, type LimitRule } from "../raceway/code/rules";
import type { TradeSize } from "../raceway/tradeSize";

/** How full a raceway is. */
export interface ConductorFill {
  /** Conductor area over inside area, 0 and up. */
  readonly ratio: number;
  /** Area of all conductors [in²]. */
  readonly area: number;
  readonly rule: LimitRule;
  readonly fits: boolean;
}

/**
 * The code's limit on fill, a fraction of the inside area: one conductor, two, more; or a nipple.
 *
 * @param length of the raceway from box to box [in]; undefined: longer than a nipple
 * @example fillRule(3, 2023).limit //=> 0.4
 */
export function fillRule(count: number, edition: Edition, length?: number): LimitRule {
  if (length !== undefined && length <= table.longestNipple) {
    return { ...commonRule("nippleFill", edition), limit: table.nipple };
  }
  const limit = count === 1 ? table.oneConductor : count === 2 ? table.twoConductors : table.moreConductors;
  return { ...commonRule("fill", edition), limit };
}

/**
 * Fill of a raceway. Conductors of one size fit by note 7 too: their greatest number is rounded up from a decimal of 0.8.
 *
 * @param length of the raceway from box to box [in], for nipples
 * @throws NotListedError when the raceway is not made in that size
 * @example raceway EMT 1/2 with 9 #12 THHN: fillOf("EMT", "1/2", readConductors("9 #12 THHN"), 2023).fits //=> true
 */
export function fillOf(
  raceway: Raceway,
  size: TradeSize,
  conductors: readonly Conductors[],
  edition: Edition,
  length?: number,
): ConductorFill {
  const inside = dimension(raceway, size, "area").value;
  const count = conductors.reduce((sum, kind) => sum + kind.count, 0);
  const area = conductors.reduce((sum, kind) => sum + kind.count * kind.area, 0);
  const rule = fillRule(count, edition, length);
  const allowed = rule.limit * inside;
  const alike = conductors.every((kind) => kind.area === conductors[0]?.area);
  const most = alike ? mostAlike(allowed, area / count) : 0;
  return { ratio: area / inside, area, rule, fits: area <= allowed + SAME_COUNT || count <= most };
}

/** Note 7: the greatest number of conductors of one area. */
const mostAlike = (allowed: number, each: number): number =>
  Math.floor(allowed / each + 1 - table.roundUpFrom + SAME_COUNT);

/**
 * The smallest trade size that takes the conductors.
 *
 * @throws NotListedError when the largest one does not
 * @example fillSize("EMT", readConductors("10 #12 THHN"), 2023) //=> "3/4"
 */
export function fillSize(
  raceway: Raceway,
  conductors: readonly Conductors[],
  edition: Edition,
  length?: number,
): TradeSize {
  const sizes = sizesOf(raceway);
  const size = sizes.find((each) => fillOf(raceway, each, conductors, edition, length).fits);
  if (size !== undefined) return size;
  const largest = sizes[sizes.length - 1]!;
  const { ratio, rule } = fillOf(raceway, largest, conductors, edition, length);
  throw new NotListedError(
    `No listed size of ${raceway} takes the conductors: they fill the largest, ${largest}, to ${percent(ratio)}; ` +
      `the limit is ${percent(rule.limit)} (${nameRule(rule)}).`,
  );
}

const percent = (ratio: number): string => `${Number((100 * ratio).toFixed(1))} %`;
