import { binCounts, fillWeight } from "../model/model";
import type { FillCount, Model } from "../model/model";

/** Moves fills into cheaper bins that hold them as well, fullest gain first, as far as there are any. */
export function downsize(model: Model, plan: readonly FillCount[]): FillCount[] {
  const { bins } = model;
  if (bins.every((bin) => bin.cost === bins[0]!.cost)) return [...plan];
  const free = binCounts(model, plan).map((count, k) => bins[k]!.limit - count);
  const cheapest = bins.map((_, k) => k).sort((a, b) => bins[a]!.cost - bins[b]!.cost || a - b);
  const result: FillCount[] = [];
  const byWeight = [...plan].sort((a, b) => fillWeight(model, b.fill) - fillWeight(model, a.fill));
  for (const { fill, count } of byWeight) {
    const weight = fillWeight(model, fill);
    let left = count;
    for (const bin of cheapest) {
      if (left === 0 || bins[bin]!.cost >= bins[fill.bin]!.cost) break;
      const some = bins[bin]!.capacity >= weight ? Math.min(left, free[bin]!) : 0;
      if (some <= 0) continue;
      result.push({ fill: { ...fill, bin }, count: some });
      free[bin]! -= some;
      free[fill.bin]! += some;
      left -= some;
    }
    if (left > 0) result.push({ fill, count: left });
  }
  return result;
}
