import { lengthsIn, type Lengths, type LengthUnit } from "../units/formatLength";
import type { RuleBook, RuleName } from "./rules";

/** The rule that says in what lengths are told. */
export const LENGTHS_RULE = "Lengths shown in" satisfies RuleName;

/** The unit of a job, by its rules. */
export const lengthUnitOf = (rules: RuleBook): LengthUnit => rules.text(LENGTHS_RULE) as LengthUnit;

/** How a job tells lengths, by its rules. */
export const lengthsOf = (rules: RuleBook): Lengths => lengthsIn(lengthUnitOf(rules));
