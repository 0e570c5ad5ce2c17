import type { RuleBook } from "../../rules/rules";
import { daysBetween } from "../../units/day";
import type { TakeoffLine } from "../amounts/lineBook";
import type { PriceBook } from "../lists/prices";

/** A price that a vendor may not hold any longer. */
export interface OldQuote {
  readonly line: TakeoffLine;
  readonly finding: string;
}

/**
 * Quotes that lines are priced by and that are older than the rule "Oldest quote" on the day of the rule "Quotes as of", or
 * whose age cannot be told; none where no day is set.
 */
export function oldQuotes(lines: readonly TakeoffLine[], prices: PriceBook | undefined, rules: RuleBook): OldQuote[] {
  const day = rules.text("Quotes as of");
  if (day === "" || !prices) return [];
  const most = rules.number("Oldest quote");
  return lines.flatMap((line): OldQuote[] => {
    const quote = line.item.bought && line.quantity > 0 ? prices.quoteOf(line.item) : undefined;
    if (!quote) return [];
    const finding = findingOf(quote.vendor, quote.quoted, day, most);
    return finding === "" ? [] : [{ line, finding }];
  });
}

function findingOf(vendor: string, quoted: string, day: string, most: number): string {
  if (quoted === "") return `the price by ${vendor} has no day under Quoted by ${vendor}`;
  const age = daysBetween(quoted, day);
  if (age === undefined) return `Quoted by ${vendor} is no day as 2026-05-02: ${quoted}`;
  if (age < 0) return `quoted by ${vendor} on ${quoted}, after ${day}, the day of the rule Quotes as of`;
  return age > most ? `quoted by ${vendor} on ${quoted}, ${age} days before ${day}: more than ${most}` : "";
}
