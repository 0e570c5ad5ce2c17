import { fillWeight } from "../model/model";
import type { BinFill, FillCount, Model } from "../model/model";
import type { Sticks } from "../model/toModel";
import type { Work } from "../model/work";

/** Patterns by what they hold. One that is gone has count 0. */
type Patterns = Map<string, FillCount>;

/**
 * Makes the saw operator's list shorter without touching the bins: two patterns cut once each are exchanged for one that
 * is cut anyway and one for the rest of their pieces. The fill that leaves the longest rest stays.
 */
export function* fewerPatterns(
  model: Model,
  sticks: Sticks,
  plan: readonly FillCount[],
  work: Work,
): Generator<void, FillCount[]> {
  const patterns: Patterns = new Map();
  for (const { fill, count } of plan) add(patterns, fill, count);
  const keep = emptiest(model, sticks, patterns);
  const together = new Int32Array(model.weights.length);
  for (let before = Infinity; patterns.size < before && !work.over();) {
    before = patterns.size;
    for (const one of singles(patterns, keep)) {
      yield;
      if (work.over()) break;
      if (one.count !== 1) continue;
      const byHeaviest = indexByHeaviest(patterns);
      work.add(40 * patterns.size);
      for (const other of singles(patterns, keep)) {
        if (other === one || other.count !== 1) continue;
        if (work.over()) break;
        if (exchange(model, patterns, byHeaviest, together, one, other, work)) break;
      }
    }
  }
  return [...patterns.values()];
}

/** Exchanges two single patterns for one there is and a rest; true when that saves a pattern. */
function exchange(
  model: Model,
  patterns: Patterns,
  byHeaviest: ReadonlyMap<number, readonly FillCount[]>,
  together: Int32Array,
  one: FillCount,
  other: FillCount,
  work: Work,
): boolean {
  work.add(100);
  count(one.fill, 1);
  const items = [...one.fill.items, ...other.fill.items.filter((item) => together[item] === 0)];
  count(other.fill, 1);
  const done = items.some((item) => byHeaviest.get(item)?.some(replaceBy) ?? false);
  for (const item of items) together[item] = 0;
  return done;

  function count(fill: BinFill, sign: number): void {
    for (let k = 0; k < fill.items.length; k++) together[fill.items[k]!]! += sign * fill.copies[k]!;
  }
  function replaceBy(existing: FillCount): boolean {
    const { fill } = existing;
    work.add(10);
    if (existing === one || existing === other || existing.count === 0) return false;
    if (fill.bin !== one.fill.bin && fill.bin !== other.fill.bin) return false;
    for (let k = 0; k < fill.items.length; k++) if (together[fill.items[k]!]! < fill.copies[k]!) return false;
    count(fill, -1);
    const left = items.filter((item) => together[item]! > 0);
    const bin = fill.bin === one.fill.bin ? other.fill.bin : one.fill.bin;
    const rest: BinFill = { bin, items: left, copies: left.map((item) => together[item]!) };
    count(fill, 1);
    if (left.length === 0 || fillWeight(model, rest) > model.bins[bin]!.capacity) return false;
    for (const gone of [one, other]) {
      patterns.delete(keyOf(gone.fill));
      gone.count = 0;
    }
    existing.count++;
    add(patterns, rest, 1);
    return true;
  }
}

function singles(patterns: Patterns, keep: FillCount | undefined): FillCount[] {
  return [...patterns.values()].filter((pattern) => pattern.count === 1 && pattern !== keep);
}

function indexByHeaviest(patterns: Patterns): Map<number, FillCount[]> {
  const index = new Map<number, FillCount[]>();
  for (const pattern of patterns.values()) {
    const heaviest = Math.min(...pattern.fill.items);
    const there = index.get(heaviest);
    if (there) there.push(pattern);
    else index.set(heaviest, [pattern]);
  }
  return index;
}

function add(patterns: Patterns, fill: BinFill, count: number): void {
  const key = keyOf(fill);
  const there = patterns.get(key);
  if (there) there.count += count;
  else patterns.set(key, { fill, count });
}

function emptiest(model: Model, { lengths, step }: Sticks, patterns: Patterns): FillCount | undefined {
  const rest = ({ fill }: FillCount): number => lengths[fill.bin]! - step * fillWeight(model, fill);
  return [...patterns.values()].sort((a, b) => rest(b) - rest(a))[0];
}

function keyOf({ bin, items, copies }: BinFill): string {
  const order = items.map((_, k) => k).sort((a, b) => items[a]! - items[b]!);
  return `${bin}:${order.map((k) => `${items[k]!}x${copies[k]!}`).join()}`;
}
