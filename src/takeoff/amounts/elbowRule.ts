import type { ElbowRule, ElbowsAbove } from "../../shop/run/factoryElbows";
import { readRules, type RuleBook } from "../../rules/rules";

/** Which bends are bought as factory elbows, by the rules in force. */
export const elbowRule = (rules: RuleBook): ElbowRule => ({
  metal: rules.text("Factory elbows above size, metal") as ElbowsAbove,
  pvc: rules.text("Factory elbows above size, PVC") as ElbowsAbove,
  angles: rules.text("Factory elbow angles").split(/[,;]/).map(Number),
  problems: rules.problems,
});

/** Which bends are bought, by a Rules range or, without one, by the built-in rules. */
export const readElbowRule = (range: unknown): ElbowRule => elbowRule(readRules(range));
