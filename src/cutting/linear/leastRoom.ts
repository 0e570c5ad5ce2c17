import type { Cut } from "../model/counts";
import { worthTable } from "./knapsackTable";
import type { Model } from "../model/model";
import type { Work } from "../model/work";

/**
 * The smallest room that, beside the other bins, can be worth what the pieces still lack at the prices of the cut.
 *
 * @param others bins of each kind beside the one looked at
 * @param most what that one holds at most
 */
export function leastRoom(model: Model, cut: Cut, others: readonly number[], most: number, work: Work): number {
  const { weights, demands } = model;
  const need = others.reduce((sum, count, k) => sum - count * cut.worths[k]!, cut.demand);
  if (need <= 0) return 0;
  const { best } = worthTable({ weights, prices: cut.prices, bounds: demands }, most, work);
  const room = best.findIndex((worth) => worth >= need);
  return room < 0 ? most : room;
}
