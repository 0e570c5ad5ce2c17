import { TRADE_SIZES, type TradeSize } from "../raceway/tradeSize";
import type { RuleBook } from "./rules";

/** Angles of factory elbows for a size [°]; none when the shop bends it. */
export function elbowAngles(size: TradeSize, rules: RuleBook): number[] {
  const above = rules.text("Factory elbows above size");
  const largestBent = TRADE_SIZES.indexOf(above as TradeSize);
  if (largestBent < 0 || TRADE_SIZES.indexOf(size) <= largestBent) return [];
  return rules.text("Factory elbow angles").split(/[,;]/).map(Number);
}
