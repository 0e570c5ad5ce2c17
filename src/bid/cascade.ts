import { show } from "../units/show";
import { showMoney } from "../units/money";
import { addParts, moneyOf, sharedCents, sumOf, type Cents } from "./amounts";
import type { BidLine } from "./bidTable";

/** What a bid begins with, group by group. */
export interface BidBase {
  readonly material: Cents;
  /** [h], conditions and all */
  readonly hours: readonly number[];
  /** How many of them conditions add. */
  readonly addedHours?: readonly number[];
  readonly costs: Cents;
  /** How material and costs are said to come about. */
  readonly materialWords: string;
  readonly costWords: string;
}

/** A line of the recap. */
export interface RecapLine {
  readonly name: string;
  /** How it comes about, in words. */
  readonly basis: string;
  /** By group; null for words, and for a line that waits to be filled in. */
  readonly amount: Cents | null;
  /** A subtotal or total: it says what stands above it and adds nothing. */
  readonly isSum: boolean;
}

/** Where a bid ends: its lines, its total, and what is in no line. */
export interface Recap {
  readonly lines: readonly RecapLine[];
  readonly total: Cents;
  readonly problems: readonly string[];
}

const TOTAL: BidLine = { name: "Total", unit: "total", value: undefined, words: "", of: [], note: "" };

/**
 * Works a bid out line by line, in whole cents: each line of the whole job is rounded to the cent once, then shared out to
 * the groups, so that the lines add up to the total and the groups to the whole.
 *
 * - `%` of a base is that much of it (a markup); `margin %` makes the line that share of base and line together
 * - `per hour` goes by the labor hours, `lump sum` by what stands above it
 */
export function cascade(table: readonly BidLine[], base: BidBase): Recap {
  const ends = table.some(({ unit }) => unit === "total");
  const lines: RecapLine[] = [];
  const amounts = new Map<string, Cents>();
  let above: Cents = base.material.map(() => 0);
  for (const line of ends ? table : [...table, TOTAL]) {
    if (line.unit === "words" && line.words === "") continue;
    const of = line.of.length === 0 ? above : line.of.map((name) => amounts.get(name)!).reduce(addParts);
    const { amount, basis } = workOut(line, of, above, base);
    const isSum = line.unit === "subtotal" || line.unit === "total";
    amounts.set(line.name, amount ?? above.map(() => 0));
    if (!isSum && amount) above = addParts(above, amount);
    lines.push({ name: line.name, basis, amount, isSum });
  }
  return { lines, total: above, problems: [...notesOf(table), ...leftOut(table, base)] };
}

type WorkedOut = Pick<RecapLine, "amount" | "basis">;

const WAITS: WorkedOut = { amount: null, basis: "not filled in: nothing is added" };

function workOut({ unit, value, words, of, share }: BidLine, part: Cents, above: Cents, base: BidBase): WorkedOut {
  const whole = moneyOf(sumOf(part));
  const ofWords = of.length === 0 ? "all above" : of.join(" + ");
  switch (unit) {
    case "words":
      return { amount: null, basis: words };
    case "material":
      return { amount: base.material, basis: base.materialWords };
    case "costs":
      return { amount: base.costs, basis: base.costWords };
    case "subtotal":
    case "total":
      return { amount: part, basis: of.length === 0 ? "" : ofWords };
  }
  if (value === undefined) return WAITS;
  switch (unit) {
    case "per hour": {
      const part = share === undefined ? 1 : share / 100;
      const words = `${share === undefined ? "" : `${show(share)} % of `}${hoursWords(base)} at ${showMoney(value)}`;
      return { amount: sharedCents(sumOf(base.hours) * part * value, base.hours), basis: words };
    }
    case "%":
      return {
        amount: sharedCents((whole * value) / 100, part),
        basis: `${show(value)} % of ${ofWords}, ${showMoney(whole)}`,
      };
    case "margin %":
      return {
        amount: sharedCents(whole / (1 - value / 100) - whole, part),
        basis: `margin: ${show(value)} % of the price, on ${ofWords}, ${showMoney(whole)}`,
      };
    case "lump sum":
      return { amount: sharedCents(value, above), basis: "lump sum" };
  }
}

function hoursWords({ hours, addedHours = [] }: BidBase): string {
  const [all, added] = [sumOf(hours), sumOf(addedHours)];
  const parts = added === 0 ? "" : ` (${show(all - added, 2)} and ${show(added, 2)} by factors)`;
  return `${show(all, 2)} h${parts}`;
}

const notesOf = (table: readonly BidLine[]): string[] =>
  table.flatMap(({ name, note }) => (note === "" ? [] : [`${name}: ${note}`]));

/** What the job has and no line asks for. */
function leftOut(table: readonly BidLine[], { material, hours, costs }: BidBase): string[] {
  const has = (unit: BidLine["unit"]): boolean => table.some((line) => line.unit === unit);
  const words = (what: string, unit: string): string => `left out: ${what}; no line of the bid has the Unit ${unit}`;
  return [
    ...(!has("material") && sumOf(material) !== 0
      ? [words(`material of ${showMoney(moneyOf(sumOf(material)))}`, "material")]
      : []),
    ...(!has("per hour") && sumOf(hours) > 0 ? [words(`${show(sumOf(hours), 2)} h of labor`, "per hour")] : []),
    ...(!has("costs") && sumOf(costs) !== 0
      ? [words(`job costs of ${showMoney(moneyOf(sumOf(costs)))}`, "costs")]
      : []),
    ...table
      .filter(({ unit, value }) => value === undefined && ["per hour", "%", "margin %", "lump sum"].includes(unit))
      .map(({ name }) => `not filled in: ${name}`),
  ];
}
