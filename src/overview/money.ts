import { centsOf, moneyOf, sumOf } from "../bid/amounts";
import type { JobRecap } from "../bid/recap";
import { classOf } from "../takeoff/amounts/item";
import type { PricedLine } from "../takeoff/lines/priceLine";
import type { Bar, OverviewPart } from "./part";

const PLURALS: Readonly<Record<string, string>> = { allowance: "allowances", "counted item": "counted items" };

/** Material by the classes that allowances go by; the classes add up to the material of the recap to the cent. */
export function materialByClass(lines: readonly PricedLine[]): OverviewPart {
  const cents = new Map<string, number>();
  for (const { line, extension } of lines) {
    if (extension === null) continue;
    const name = classOf(line.item.kind);
    cents.set(name, (cents.get(name) ?? 0) + centsOf(extension));
  }
  const bars = [...cents].map(([name, sum]): Bar => ({ label: PLURALS[name] ?? name, amount: moneyOf(sum) }));
  const note = bars.length > 0 ? "material with a price" : "no item has a price yet: Prices is where they stand";
  return { name: "Material by class", unit: "money", bars, note };
}

/** The lines of the bid that have an amount, in their order; subtotals and the total are lines, too. */
export function priceByLine(price: JobRecap | undefined): OverviewPart {
  const bars = (price?.lines ?? []).flatMap(({ name, basis, amount }): Bar[] =>
    amount ? [{ label: name, amount: moneyOf(sumOf(amount)), note: basis }] : [],
  );
  const isEmpty = bars.every(({ amount }) => amount === 0);
  const note = isEmpty ? "no price yet: Prices, Labor and the lines of Bid make it" : "";
  return { name: "Price by line", unit: "money", bars: isEmpty ? [] : bars, note };
}
