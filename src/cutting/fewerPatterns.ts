import { fillWeight } from "./model";
import type { Fill, FillCount, Model } from "./model";
import type { Work } from "./work";

interface Pattern {
  fill: Fill;
  count: number;
  /** Copies of every weight. */
  copies: Map<number, number>;
}

/**
 * Makes the saw operator's list shorter without touching the bins: two patterns cut once each are exchanged for one that
 * is cut anyway and one for the rest of their pieces. The fill that leaves the longest remnant stays.
 */
export function fewerPatterns(model: Model, plan: readonly FillCount[], work: Work): FillCount[] {
  const patterns = merge(plan);
  const lightest = keepLightest(model, patterns);
  let improved = true;
  while (improved && !work.over()) {
    improved = false;
    const list = [...patterns.values()];
    const singles = list.filter((pattern) => pattern.count === 1 && pattern !== lightest);
    for (let a = 0; a < singles.length && !improved && !work.over(); a++) {
      for (let b = a + 1; b < singles.length && !improved; b++) {
        improved = exchange(model, patterns, list, singles[a]!, singles[b]!);
        work.add(30 * list.length);
      }
    }
  }
  return [...patterns.values()].map(({ fill, count }) => ({ fill, count }));
}

/** Exchanges two single patterns for an existing one and a rest; true when that saves a pattern. */
function exchange(
  model: Model,
  patterns: Map<string, Pattern>,
  list: readonly Pattern[],
  one: Pattern,
  other: Pattern,
): boolean {
  const together = new Map(one.copies);
  for (const [item, count] of other.copies) together.set(item, (together.get(item) ?? 0) + count);
  for (const existing of list) {
    if (existing === one || existing === other) continue;
    const { bin } = existing.fill;
    if (bin !== one.fill.bin && bin !== other.fill.bin) continue;
    if (![...existing.copies].every(([item, count]) => count <= (together.get(item) ?? 0))) continue;
    const restBin = bin === one.fill.bin ? other.fill.bin : one.fill.bin;
    const rest = new Map([...together].map(([item, count]) => [item, count - (existing.copies.get(item) ?? 0)]));
    for (const [item, count] of rest) if (count === 0) rest.delete(item);
    if (rest.size === 0) continue;
    const fill: Fill = { bin: restBin, items: [...rest.keys()], copies: [...rest.values()] };
    if (fillWeight(model, fill) > model.bins[restBin]!.capacity) continue;
    patterns.delete(keyOf(one.fill));
    patterns.delete(keyOf(other.fill));
    existing.count++;
    const key = keyOf(fill);
    const there = patterns.get(key);
    if (there) there.count++;
    else patterns.set(key, { fill, count: 1, copies: rest });
    return true;
  }
  return false;
}

function merge(plan: readonly FillCount[]): Map<string, Pattern> {
  const patterns = new Map<string, Pattern>();
  for (const { fill, count } of plan) {
    const key = keyOf(fill);
    const there = patterns.get(key);
    if (there) there.count += count;
    else patterns.set(key, { fill, count, copies: new Map(fill.items.map((item, k) => [item, fill.copies[k]!])) });
  }
  return patterns;
}

/** The bought fill with the most room left. */
function keepLightest(model: Model, patterns: Map<string, Pattern>): Pattern | undefined {
  const room = ({ fill }: Pattern): number =>
    model.bins[fill.bin]!.cost > 0 ? model.bins[fill.bin]!.capacity - fillWeight(model, fill) : -1;
  return [...patterns.values()].reduce<Pattern | undefined>(
    (best, pattern) => (!best || room(pattern) > room(best) ? pattern : best),
    undefined,
  );
}

function keyOf(fill: Fill): string {
  const parts = fill.items.map((item, k) => `${item}x${fill.copies[k]!}`).sort();
  return `${fill.bin}:${parts.join()}`;
}
