import { remember } from "../../memory/remember";
import type { RuleBook } from "../../rules/rules";
import { lookUpKey } from "../../units/names/lookUpKey";

/** A cell that names an alternate, or says that a row is there without it. */
export const WITHOUT = /^not\s+(?=\S)/i;

/** Why a row of an alternate is not in the job, in words; undefined where it is. */
export type WhyNot = (alternate: string) => string | undefined;

const BY_RULE = "the rule Alternates in the job";

/** True for the words of a row that an alternate leaves out: no lack of the job. */
export const isLeftOutByAlternate = (words: string): boolean => words.includes(BY_RULE);

/**
 * Which rows are in the job by the rule "Alternates in the job": none, all, or names parted by commas. A row whose Alternate
 * is empty always is; one that says `A1` with alternate A1, one that says `not A1` without it.
 */
export const whyNotOf: (rules: RuleBook) => WhyNot = remember((rules) => {
  const chosen = rules.text("Alternates in the job").split(/[,;]/).map(lookUpKey).filter(Boolean);
  const all = chosen.includes("all");
  return (alternate) => {
    if (alternate === "") return undefined;
    const name = alternate.replace(WITHOUT, "");
    const isChosen = all || chosen.includes(lookUpKey(name));
    if (isChosen !== WITHOUT.test(alternate)) return undefined;
    return isChosen
      ? `stands for the job without alternate ${name}, which ${BY_RULE} has in it`
      : `alternate ${name} is not in the job: ${BY_RULE} names those that are`;
  };
});
