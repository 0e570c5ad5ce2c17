import { rememberTable } from "../memory/tables";
import { optionalRows, takeRows } from "../table/takeRows";
import { InputError, quoteValue } from "../units/errors";
import { RULES } from "./data/rules";
import { bodyOfRule, readTakeOut, ruleOfBody, type BodyTakeOut } from "./bodyTakeOuts";
import type { TakeoffRule } from "./data/takeoffRule";
import { lookUpKey } from "../units/names/lookUpKey";
import { readRuleValue } from "./ruleValue";
import { placingRule, readPlacing, type Placing } from "./typicals";

/** The name of a rule: one that the data has not does not compile. */
export type RuleName = (typeof RULES)[number]["rule"];

/** The rules in force: the built-in ones with the user's in their place. */
export interface RuleBook {
  readonly all: readonly TakeoffRule[];
  /** Where typicals are placed, and how often, in the order of the user's rows. */
  readonly typicals: readonly Placing[];
  /** Rows of the user's table that could not be used, in words. */
  readonly problems: readonly string[];
  number(rule: RuleName): number;
  text(rule: RuleName): string;
  /** What the shop measured of its conduit bodies: rows like `Take-out LB EMT 1`, which are no built-in rules. */
  readonly bodies: readonly BodyTakeOut[];
  /** True for a rule whose row in the user's table is more than a copy of the built-in one: its value or its source is another. */
  isOwn(rule: RuleName): boolean;
}

const COLUMNS = [{ name: "Rule", required: true }, { name: "Value", required: true, zero: true }, { name: "Source" }];

/**
 * Reads a Rules range over the built-in rules. A row that names no known rule, or has a value it cannot take, is told
 * in words and leaves the built-in value in force.
 *
 * @param range Rule and Value columns, or nothing
 */
export const readRules: (range: unknown) => RuleBook = rememberTable((range) => {
  const rules = new Map<string, TakeoffRule>(RULES.map((rule) => [lookUpKey(rule.rule), rule]));
  const seen = new Set<string>();
  const own = new Set<string>();
  const placings = new Map<string, TakeoffRule>();
  const typicals: Placing[] = [];
  const bodies: BodyTakeOut[] = [];
  const problems = takeRows(optionalRows(range, "rules", COLUMNS), "rules", (row) => {
    const body = bodyOfRule(row.get("Rule"));
    const key = lookUpKey(body ? ruleOfBody(body) : row.get("Rule"));
    const placing = readPlacing(row.get("Rule"), row.get("Value"));
    if (placing) {
      const rule = { ...placingRule(placing), source: `rules row ${row.rowNumber}` };
      const placingKey = lookUpKey(rule.rule);
      if (placings.has(placingKey)) throw new InputError(`"${rule.rule}" stands twice; keep one row for each rule.`);
      placings.set(placingKey, rule);
      typicals.push(placing);
      return;
    }
    const rule = body ? bodyRule(ruleOfBody(body)) : rules.get(key);
    if (!rule) throw new InputError(`no rule is called ${quoteValue(row.get("Rule"))}; JOB.RULES lists the rules.`);
    if (seen.has(key)) throw new InputError(`"${rule.rule}" stands twice; keep one row for each rule.`);
    seen.add(key);
    if (body) bodies.push({ ...body, ...readTakeOut(row.get("Value"), rule.rule) });
    const value = readRuleValue(row.get("Value"), rule);
    if (String(value) !== String(rule.value) || row.get("Source") !== rule.source) own.add(rule.rule);
    rules.set(key, { ...rule, value, source: `rules row ${row.rowNumber}` });
  });
  const named = new Map([...rules.values()].map((rule) => [rule.rule, rule]));
  const find = (name: RuleName): TakeoffRule => {
    const rule = named.get(name);
    if (!rule) throw new RangeError(`no rule "${name}"`);
    return rule;
  };
  return {
    all: [...rules.values(), ...placings.values()],
    typicals,
    problems,
    number: (name) => Number(find(name).value),
    text: (name) => String(find(name).value),
    bodies,
    isOwn: (name) => own.has(name),
  };
});

const bodyRule = (rule: string): TakeoffRule => ({ rule, value: "", unit: "in by side", source: "" });

/** The rules in force as a table with a header row; last, the user's rows that could not be used, in words. */
export const rulesTable = (book: RuleBook): (string | number)[][] => [
  ["Rule", "Value", "Unit", "Source"],
  ...book.all.map(({ rule, value, unit, source }) => [rule, value, unit, source]),
  ...book.problems.map((problem) => ["not read", "", "", problem]),
];
