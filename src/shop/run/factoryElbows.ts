import { isAngle, type Degrees } from "../../geometry/angle";
import { remember } from "../../memory/remember";
import { racewayRecord } from "../../raceway/raceway";
import { outsideDiameter } from "../../raceway/dimensions";
import { minimumRadius } from "../../raceway/minimumRadius";
import { TRADE_SIZES, type TradeSize } from "../../raceway/tradeSize";
import { readRules, type RuleBook } from "../../rules/rules";
import type { Run } from "./runsTable";
import type { Shoe } from "../shoe/shoe";

/**
 * Above which size bends are bought as factory elbows: a trade size, "none" where the shop bends every size, "all" where
 * it buys every bend, "no shoe" where it buys those of the sizes it has no shoe for.
 */
export type ElbowsAbove = TradeSize | "none" | "all" | "no shoe";

/** Which bends a shop buys as factory elbows. */
export interface ElbowRule {
  readonly metal: ElbowsAbove;
  readonly pvc: ElbowsAbove;
  /** Angles there are elbows of [°]; bends of other angles are made in the shop. */
  readonly angles: readonly number[];
}

/** Which bends are bought as factory elbows, by the rules in force. */
export const elbowRule: (rules: RuleBook) => ElbowRule = remember((rules) => ({
  metal: rules.text("Factory elbows above size, metal") as ElbowsAbove,
  pvc: rules.text("Factory elbows above size, PVC") as ElbowsAbove,
  angles: rules.text("Factory elbow angles").split(/[,;]/).map(Number),
}));

/** The same by the built-in rules. */
export const USUAL_ELBOWS: ElbowRule = elbowRule(readRules(null));

/**
 * Angles at which a run has factory elbows [°]; none when the shop bends its size.
 * @param listed false where neither the user's nor the built-in shoes have one for the run
 */
export function elbowAngles({ raceway, size }: OfSize, rule: ElbowRule, listed: boolean): readonly number[] {
  const above = racewayRecord(raceway).elbows === "PVC" ? rule.pvc : rule.metal;
  return isBought(above, size, listed) ? rule.angles : [];
}

/** True where a rule, not the lack of a shoe, says that the shop bends a run itself. */
export const isBentInShop = ({ raceway }: OfSize, rule: ElbowRule): boolean =>
  (racewayRecord(raceway).elbows === "PVC" ? rule.pvc : rule.metal) !== "no shoe";

function isBought(above: ElbowsAbove, size: TradeSize, listed: boolean): boolean {
  if (above === "none" || above === "all") return above === "all";
  return above === "no shoe" ? !listed : TRADE_SIZES.indexOf(size) > TRADE_SIZES.indexOf(above);
}

/** True when one of the factory elbows has this angle. */
export const isElbow = (angle: Degrees, angles: readonly number[]): boolean =>
  angles.some((listed) => isAngle(angle, listed));

type OfSize = Pick<Run, "raceway" | "size">;

/** Centerline radius of a standard elbow [in]: the code's for one-shot bends, as steel elbows have it (common practice). */
export const standardElbowRadius = ({ size }: OfSize): number => minimumRadius(size, "one-shot");

/**
 * What a run is laid out with when every bend of it is a factory elbow: the code's radius for one-shot bends, as steel
 * elbows have it (common practice), and nothing to hold.
 */
export const elbowShoe = (run: OfSize): Shoe => noShoe(run, "one-shot", "no shoe: every bend is a factory elbow");

/** What straight conduit is laid out with. */
export const straightOnly = (run: OfSize): Shoe => noShoe(run, "other", "no shoe: straight conduit");

function noShoe({ raceway, size }: OfSize, bends: "one-shot" | "other", source: string): Shoe {
  const radius = minimumRadius(size, bends);
  const outside = outsideDiameter(raceway, size);
  return {
    ...{ raceway, size, radius, outsideDiameter: outside, deduct: radius + outside / 2, springback: 0 },
    ...{ dialFrom: 0, dialTo: 90, dialStart: 0, shortestTail: 0, source },
  };
}
