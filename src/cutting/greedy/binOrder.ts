import type { Model } from "../model/model";

/** Order in which bins are opened: free ones first, the shortest that fits; then the cheapest for what they hold. */
export function thriftyOrder({ bins }: Model): number[] {
  const rate = (k: number): number => bins[k]!.cost / bins[k]!.capacity;
  return bins.map((_, k) => k).sort((a, b) => rate(a) - rate(b) || bins[a]!.capacity - bins[b]!.capacity || a - b);
}

/** Order in which bins are opened when all but the main one are there to be used. */
export function mainLast({ bins }: Model): number[] {
  const others = bins.map((_, k) => k).slice(1);
  return [...others.sort((a, b) => bins[a]!.capacity - bins[b]!.capacity || a - b), 0];
}

/** The first kind of bin in the order that holds this weight and of which there are some; the main one if none is. */
export function binFor(model: Model, free: readonly number[], order: readonly number[], weight: number): number {
  return order.find((kind) => free[kind]! > 0 && model.bins[kind]!.capacity >= weight) ?? 0;
}
