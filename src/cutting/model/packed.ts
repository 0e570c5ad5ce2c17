import type { FillCount, Model } from "./model";

/** A bin and the items in it, one entry a piece. */
export interface OpenBin {
  kind: number;
  items: number[];
}

/** Bins with pieces in them, one by one, and pieces that are in no bin. */
export interface Packed {
  bins: OpenBin[];
  loose: number[];
}

/** The bins of a plan, one by one. */
export function openBins(plan: readonly FillCount[]): OpenBin[] {
  return plan.flatMap(({ fill, count }) => {
    const items = fill.items.flatMap((item, k) => new Array<number>(fill.copies[k]!).fill(item));
    return Array.from({ length: count }, () => ({ kind: fill.bin, items: [...items] }));
  });
}

/** The bins as a plan; empty ones are left out. */
export function planOf(bins: readonly OpenBin[]): FillCount[] {
  return bins.flatMap(({ kind, items }) => {
    if (items.length === 0) return [];
    const copies = new Map<number, number>();
    for (const item of [...items].sort((a, b) => a - b)) copies.set(item, (copies.get(item) ?? 0) + 1);
    return [{ fill: { bin: kind, items: [...copies.keys()], copies: [...copies.values()] }, count: 1 }];
  });
}

/** Weight of the pieces in a bin. */
export function binWeight(model: Model, bin: OpenBin): number {
  return bin.items.reduce((sum, item) => sum + model.weights[item]!, 0);
}

/**
 * The bins of a plan as far as they are among `counts` [bins of each kind], the heaviest of a kind first, and empty bins
 * where the plan has fewer; pieces of the other bins are loose.
 */
export function refit(model: Model, plan: readonly FillCount[], counts: readonly number[]): Packed {
  const free = [...counts];
  const bins: OpenBin[] = [];
  const loose: number[] = [];
  const weighed = openBins(plan).map((bin) => ({ bin, weight: binWeight(model, bin) }));
  for (const { bin } of weighed.sort((a, b) => b.weight - a.weight)) {
    if (free[bin.kind]! > 0) bins.push(bin);
    else loose.push(...bin.items);
    free[bin.kind]!--;
  }
  free.forEach((count, kind) => {
    for (let n = 0; n < count; n++) bins.push({ kind, items: [] });
  });
  return { bins, loose };
}
