import { fillWeight } from "../model/model";
import type { BinFill, FillCount, Model } from "../model/model";
import type { Sticks } from "../model/toModel";
import type { Work } from "../model/work";
import { Regrouping } from "./regroup";

/**
 * Makes the saw operator's list shorter without touching the bins: of two patterns it makes one, of three two, where their
 * pieces allow that, until no more are found or the work is spent. The fill that leaves the longest rest stays.
 */
export function* fewerPatterns(
  model: Model,
  sticks: Sticks,
  plan: readonly FillCount[],
  work: Work,
): Generator<void, FillCount[]> {
  const patterns = alike(plan);
  const keep = emptiest(model, sticks, patterns);
  // Patterns cut once go together most easily.
  const waiting = patterns.filter((pattern) => pattern !== keep).sort((a, b) => b.count - a.count);
  const done: FillCount[] = [];
  const regrouping = new Regrouping(model, work);
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    yield;
    const merged = work.over() ? undefined : withOthers(next, done, regrouping);
    if (!merged) done.push(next);
    else {
      for (const gone of merged.gone) if (gone !== next) done.splice(done.indexOf(gone), 1);
      waiting.push(...merged.made);
    }
  }
  return alike(keep ? [...done, keep] : done);
}

interface Merged {
  readonly gone: readonly FillCount[];
  readonly made: FillCount[];
}

/** What a pattern and one or two others can be made into. */
function withOthers(one: FillCount, others: readonly FillCount[], regrouping: Regrouping): Merged | undefined {
  for (const [place, other] of others.entries()) {
    const made = regrouping.of(one, other);
    if (made) return { gone: [one, other], made };
    for (let at = 0; at < place; at++) {
      if (regrouping.work.over()) return undefined;
      const third = others[at]!;
      const made = regrouping.of(one, other, third);
      if (made) return { gone: [one, other, third], made };
    }
  }
  return undefined;
}

/** Fills that are the same as one. */
function alike(plan: readonly FillCount[]): FillCount[] {
  const patterns = new Map<string, FillCount>();
  for (const { fill, count } of plan) {
    const key = keyOf(fill);
    patterns.set(key, { fill, count: count + (patterns.get(key)?.count ?? 0) });
  }
  return [...patterns.values()];
}

function emptiest(model: Model, { lengths, step }: Sticks, patterns: readonly FillCount[]): FillCount | undefined {
  const rest = ({ fill }: FillCount): number => lengths[fill.bin]! - step * fillWeight(model, fill);
  return [...patterns].sort((a, b) => rest(b) - rest(a))[0];
}

function keyOf({ bin, items, copies }: BinFill): string {
  const order = items.map((_, k) => k).sort((a, b) => items[a]! - items[b]!);
  return `${bin}:${order.map((k) => `${items[k]!}x${copies[k]!}`).join()}`;
}
