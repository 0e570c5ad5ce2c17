import code from "../data/codeRules.json";
import { EDITIONS, type Edition } from "./edition";
import { racewayRecord, type Raceway } from "../raceway";

export { readEdition, type Edition } from "./edition";

/** A rule of the code: where it stands, what it says in our own words, and its limit. */
export interface CodeRule {
  /** Section, for example "358.24(B)". */
  readonly section: string;
  readonly edition: Edition;
  readonly text: string;
}

export interface LimitRule extends CodeRule {
  /** The number the rule holds things to; its unit stands with the function that gives the rule. */
  readonly limit: number;
}

/** A rule of the raceway's own article, by its name in the data file. */
export function racewayRule(name: keyof typeof code.racewayRules, raceway: Raceway, edition: Edition): CodeRule {
  const section = EDITIONS[edition].racewayRules[name].replace("{article}", racewayRecord(raceway).article);
  return { section, edition, text: code.racewayRules[name] };
}

/** A rule for every raceway alike, by its name in the data file. */
export function commonRule(name: keyof typeof code.rules, edition: Edition): CodeRule {
  return { section: EDITIONS[edition].rules[name], edition, text: code.rules[name] };
}

/** How a message names a rule. @example "NEC 2023, 358.24(B)" */
export const nameRule = ({ section, edition }: CodeRule): string => `NEC ${edition}, ${section}`;

/** A rule as a cell shows it: its name and its words. */
export const ruleInWords = (rule: CodeRule): string => `${nameRule(rule)}: ${rule.text}`;

/** Most degrees of bend between pull points [°]. */
export const degreesLimitRule = (raceway: Raceway, edition: Edition): LimitRule => ({
  ...racewayRule("degrees", raceway, edition),
  limit: 360,
});

/** Least centerline radius; the radius itself is `minimumRadius`. */
export const radiusRule = (raceway: Raceway, edition: Edition): CodeRule => racewayRule("radius", raceway, edition);
