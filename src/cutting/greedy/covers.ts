import { piecesLeft, takeFill } from "../model/model";
import type { BinFill, FillCount, Model } from "../model/model";
import type { Work } from "../model/work";

/**
 * A cover made stick by stick: each main bin takes heavy pieces first, as far as chance does not change their order, and
 * is repeated as often as the pieces allow. Good first columns for the linear program; ends early with the work.
 *
 * @param noise how far chance may reorder the pieces (0: not at all)
 */
export function noisyCover(model: Model, noise: number, random: () => number, work: Work): FillCount[] {
  const left = Int32Array.from(model.demands);
  const plan: FillCount[] = [];
  while (piecesLeft(left) > 0 && !work.over()) {
    const order: { item: number; score: number }[] = [];
    left.forEach((count, item) => {
      if (count > 0) order.push({ item, score: model.weights[item]! * (1 + noise * random()) });
    });
    order.sort((a, b) => b.score - a.score || a.item - b.item);
    const fill: BinFill = { bin: 0, items: [], copies: [] };
    let room = model.bins[0]!.capacity;
    for (const { item } of order) {
      const copies = Math.min(left[item]!, Math.floor(room / model.weights[item]!));
      if (copies === 0) continue;
      fill.items.push(item);
      fill.copies.push(copies);
      room -= copies * model.weights[item]!;
    }
    const count = Math.min(...fill.items.map((item, k) => Math.floor(left[item]! / fill.copies[k]!)));
    takeFill(fill, count, left);
    plan.push({ fill, count });
    work.add(100 + left.length + 60 * order.length);
  }
  return plan;
}
