import { quoteValue } from "../../units/errors";
import { show } from "../../units/show";
import { labelKey, type TakeoffLine } from "../amounts/lineBook";
import type { PriceBook } from "../lists/prices";
import type { Allowance, AllowanceBook } from "./allowanceTable";
import { heldBy, putUps, putUpWords } from "./putUps";

/** Less of a quantity than this is none [ft or pieces]. */
const NONE = 1e-9;

/**
 * The lines of a take-off with what is allowed for: each allowance of each item in a line of its own below the item, with
 * how it comes about; last, what is left over of whole packages where Prices has them. What stands for the item itself is
 * not touched, and no labor goes with an allowance.
 *
 * @param prices the list that names packages; omitted: nothing is rounded up to them
 */
export function addAllowances(
  lines: readonly TakeoffLine[],
  { allowances }: AllowanceBook,
  prices: Pick<PriceBook, "packagesOf"> | undefined,
): readonly TakeoffLine[] {
  if (allowances.length === 0 && prices?.packagesOf === undefined) return lines;
  const parts = allowances.filter(({ unit }) => unit !== "lump sum");
  const sums = allowances.filter(({ unit }) => unit === "lump sum");
  return [
    ...lines.flatMap((line) => withItsOwn(line, parts, prices)),
    ...sums.map((allowance) => lumpSum(allowance, lines[0]?.group.map(() => "") ?? [])),
  ];
}

function withItsOwn(
  line: TakeoffLine,
  allowances: readonly Allowance[],
  prices: Pick<PriceBook, "packagesOf"> | undefined,
): TakeoffLine[] {
  const { item, quantity } = line;
  if (!item.bought || quantity <= NONE) return [line];
  const lines = [line];
  let all = quantity;
  const add = (name: string, more: number, words: string): void => {
    if (more <= NONE) return;
    all += more;
    lines.push(allowed(line, name, more, words));
  };
  const whole = (amount: number): number => (item.unit === "each" ? Math.ceil(amount - NONE) : amount);
  for (const { name, unit, value } of allowances.filter((allowance) => allowance.fits(item))) {
    const amount = show(quantity, 1);
    if (unit === "%") {
      const more = whole((quantity * value) / 100);
      const rounded = Math.abs(more - (quantity * value) / 100) > NONE ? ", rounded up" : "";
      add(name, more, `${show(value)} % of ${amount}${item.unit === "ft" ? " ft" : ""}${rounded}`);
    } else add(name, value - all, `up to a minimum of ${show(value)}`);
  }
  const sizes = prices?.packagesOf?.(item) ?? [];
  if (sizes.length > 0) {
    const packages = putUps(all, sizes);
    add("left over of packages", heldBy(packages) - all, `${putUpWords(packages, item.unit)} for ${show(all, 1)}`);
  }
  return lines;
}

/** A line of its own: priced as its item, from the same rows in the same proportion. */
function allowed(line: TakeoffLine, name: string, quantity: number, words: string): TakeoffLine {
  const { group, item, sources } = line;
  const part = quantity / line.quantity;
  return {
    ...{ group, quantity, operations: new Map(), notes: new Set([words]) },
    item: { ...item, name: `${item.name}: ${name}`, pricedAs: item.name },
    sources: sources.map((source) => ({ ...source, each: source.each * part, note: "" })),
  };
}

const lumpSum = ({ name, value }: Allowance, group: readonly string[]): TakeoffLine => ({
  ...{ group, quantity: 1, operations: new Map(), notes: new Set(["an allowance, lump sum"]) },
  item: { name, kind: "allowance", unit: "each", bought: true, setPrice: value },
  sources: [{ rows: [], each: 1, times: 1, note: "", operation: "allowance" }],
});

/** Allowances that are for nothing in a take-off, in words. */
export const idleAllowances = (lines: readonly TakeoffLine[], { allowances }: AllowanceBook): string[] =>
  allowances
    .filter(({ unit, fits }) => unit !== "lump sum" && !lines.some(({ item }) => item.bought && fits(item)))
    .map(({ name, of }) => `${name}: nothing that is bought goes by ${quoteValue(of)}; nothing is allowed for it`);

/** The items of lines, each with its allowances: the first line of each is the item's own. */
export function byItem(lines: readonly TakeoffLine[]): TakeoffLine[][] {
  const items = new Map<string, TakeoffLine[]>();
  for (const line of lines) {
    const key = labelKey([...line.group, line.item.pricedAs ?? line.item.name]);
    items.set(key, [...(items.get(key) ?? []), line]);
  }
  return [...items.values()];
}
