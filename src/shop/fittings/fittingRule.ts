import { remember } from "../../memory/remember";
import { isFlexible, racewayRecord, type Raceway } from "../../raceway/raceway";
import { TRADE_SIZES, type TradeSize } from "../../raceway/tradeSize";
import { readRules, type RuleBook, type RuleName } from "../../rules/rules";
import { lengthsOf } from "../../rules/lengthsRule";
import type { Lengths } from "../../units/formatLength";
import type { BodyTakeOut } from "../../rules/bodyTakeOuts";
import type { EndKind } from "./endKind";
import { readSizedLengths, type SizedLengths } from "../../rules/sizedLengths";

/**
 * Above which size bends are bought as factory elbows: a trade size, "none" where the shop bends every size, "all" where
 * it buys every bend, "no shoe" where it buys those of the sizes it has no shoe for.
 */
export type ElbowsAbove = TradeSize | "none" | "all" | "no shoe";

/** Which bends a shop buys as factory elbows, what these are like, and what other fittings take of a run. */
export interface FittingRule {
  readonly metal: ElbowsAbove;
  readonly pvc: ElbowsAbove;
  /** Angles there are elbows of [°]; bends of other angles are made in the shop. */
  readonly angles: readonly number[];
  /** Radii other than the standard one, and straight ends other than those listed [in]. */
  readonly radius: SizedLengths;
  readonly ends: SizedLengths;
  /** Straight conduit that lies in a coupling, other than listed [in]. */
  readonly seat: SizedLengths;
  /** What is left between two conduits in a coupling, the bell of a stick, take-outs at ends [in]. */
  readonly gap: SizedLengths;
  readonly bell: SizedLengths;
  readonly takeOut: Readonly<Record<EndKind, SizedLengths>>;
  /** What the shop measured of its conduit bodies. */
  readonly bodies: readonly BodyTakeOut[];
  /** How lengths of a run are told. */
  readonly lengths: Lengths;
}

/** Which bends are bought as factory elbows, by the rules in force. */
export const fittingRule: (rules: RuleBook) => FittingRule = remember((rules) => ({
  metal: rules.text("Factory elbows above size, metal") as ElbowsAbove,
  pvc: rules.text("Factory elbows above size, PVC") as ElbowsAbove,
  angles: rules.text("Factory elbow angles").split(/[,;]/).map(Number),
  radius: ownLengths(rules, "Factory elbow radius"),
  ends: ownLengths(rules, "Factory elbow straight ends"),
  seat: ownLengths(rules, "Straight for a coupling"),
  gap: ownLengths(rules, "Gap in a coupling"),
  bell: ownLengths(rules, "Bell in a stick"),
  takeOut: {
    box: ownLengths(rules, "Take-out at a box"),
    hub: ownLengths(rules, "Take-out at a hub"),
    body: ownLengths(rules, "Take-out at a body"),
  },
  bodies: rules.bodies,
  lengths: lengthsOf(rules),
}));

/** The lengths of a rule that the shop has written; none where its word leaves them to the program. */
const ownLengths = (rules: RuleBook, name: RuleName): SizedLengths =>
  /\d/.test(rules.text(name)) ? readSizedLengths(rules.text(name), name) : [];

/** The same by the built-in rules. */
export const USUAL_FITTINGS: FittingRule = fittingRule(readRules(null));

interface OfSize {
  readonly raceway: Raceway;
  readonly size: TradeSize;
}

/**
 * Angles at which a run has factory elbows [°]; none when the shop bends its size.
 * @param listed false where neither the user's nor the built-in shoes have one for the run
 */
export function elbowAngles({ raceway, size }: OfSize, rule: FittingRule, listed: boolean): readonly number[] {
  if (isFlexible(raceway)) return [];
  return isAbove(elbowsAbove(raceway, rule), size, listed) ? rule.angles : [];
}

/** True where a rule, not the lack of a shoe, says that the shop bends a run itself. */
export const isBentInShop = ({ raceway }: OfSize, rule: FittingRule): boolean =>
  elbowsAbove(raceway, rule) !== "no shoe";

const elbowsAbove = (raceway: Raceway, rule: FittingRule): ElbowsAbove =>
  racewayRecord(raceway).elbows === "PVC" ? rule.pvc : rule.metal;

function isAbove(above: ElbowsAbove, size: TradeSize, listed: boolean): boolean {
  if (above === "none" || above === "all") return above === "all";
  return above === "no shoe" ? !listed : TRADE_SIZES.indexOf(size) > TRADE_SIZES.indexOf(above);
}
