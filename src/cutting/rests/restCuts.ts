import type { BinCounts, Cut } from "../model/counts";
import { leastCounts } from "../model/counts";
import type { Model } from "../model/model";
import type { Work } from "../model/work";
import { worthTable } from "../linear/knapsackTable";

/** Whole prices, and what pieces in a room of any size can be worth by them. */
export interface RoomCut extends Cut {
  /** By room, from 0 to the largest bin's. */
  worthOf: Float64Array;
}

/** Prices as a cut for every size of room. */
export function roomCut({ weights, demands, bins }: Model, prices: Float64Array, work: Work): RoomCut {
  const most = Math.max(...bins.map((bin) => bin.capacity));
  const worthOf = worthTable({ weights, prices, bounds: demands }, most, work).best;
  const demand = prices.reduce((sum, price, item) => sum + price * demands[item]!, 0);
  return { prices, demand, worthOf, worths: bins.map((bin) => worthOf[bin.capacity]!) };
}

/** The smallest room that, beside the other bins, can be worth what the pieces still lack; `most` when none below is. */
export function leastRoom(cut: RoomCut, others: readonly number[], most: number): number {
  const need = others.reduce((sum, count, k) => sum - count * cut.worths[k]!, cut.demand);
  let room = 0;
  while (room < most && cut.worthOf[room]! < need) room++;
  return room;
}

/** How many bins that cost nothing may be used: these very ones, or any so many. */
export type FreeBins = readonly number[] | number;

/**
 * The cheapest numbers of bins that cost something which, beside one bin of kind `bin` with no more than `room` in it,
 * satisfy every cut. Its own cost is not counted.
 *
 * @param free bins without cost beside it
 * @param skip numbers that are of no interest, written with commas
 */
export function leastBeside(
  model: Model,
  cuts: readonly RoomCut[],
  bin: number,
  room: number,
  free: FreeBins,
  work: Work,
  skip?: ReadonlySet<string>,
): BinCounts | undefined {
  const bins = model.bins.map(({ capacity, cost, limit }, k) => {
    return { capacity, cost, limit: cost === 0 && k > 0 ? 0 : k === bin ? limit - 1 : limit };
  });
  const lacking = cuts.map((cut) => ({
    ...cut,
    demand: cut.demand - cut.worthOf[room]! - freeWorth(model, cut, bin, free),
  }));
  return leastCounts(bins, lacking, work, skip);
}

/** What bins without cost can be worth together: the given ones, or the most of any `free`. */
function freeWorth({ bins }: Model, { worths }: Cut, bin: number, free: FreeBins): number {
  if (typeof free !== "number") return free.reduce((sum, count, k) => sum + count * worths[k]!, 0);
  const kinds = bins.map((_, k) => k).filter((k) => k > 0 && bins[k]!.cost === 0);
  let left = free;
  return kinds
    .sort((a, b) => worths[b]! - worths[a]!)
    .reduce((sum, k) => {
      const count = Math.min(left, bins[k]!.limit - (k === bin ? 1 : 0));
      left -= count;
      return sum + count * worths[k]!;
    }, 0);
}
