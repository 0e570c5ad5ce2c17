import { binFor } from "./binOrder";
import type { FillCount, Model } from "../model/model";
import { NumberSet } from "./numberSet";
import type { Work } from "../model/work";

/** Opened bins by the room that is left in them. */
class OpenBins {
  private readonly byRoom = new Map<number, FillCount[]>();
  private readonly rooms: NumberSet;

  constructor(most: number) {
    this.rooms = new NumberSet(most);
  }

  put(room: number, bins: FillCount): void {
    const there = this.byRoom.get(room);
    if (there && there.length > 0) return void there.push(bins);
    this.byRoom.set(room, [bins]);
    this.rooms.add(room);
  }

  /** The fullest bins that have this much room; they are taken out. */
  take(weight: number): { room: number; bins: FillCount } | undefined {
    const room = this.rooms.next(weight);
    if (room < 0) return undefined;
    const there = this.byRoom.get(room)!;
    const bins = there.pop()!;
    if (there.length === 0) this.rooms.remove(room);
    return { room, bins };
  }

  all(): FillCount[] {
    return [...this.byRoom.values()].flat();
  }
}

/**
 * Best-fit decreasing: each piece left, heaviest first, into the bin that it leaves least of. Bins that are alike are
 * filled together, so that the work depends on how many kinds of fills there are, not on how many bins. Answers a whole
 * plan.
 *
 * @param left pieces wanted of each weight
 * @param available bins left of each kind
 * @param order kinds of bins in the order they are opened
 */
export function bestFit(
  model: Model,
  left: Int32Array,
  available: readonly number[],
  order: readonly number[],
  work: Work,
): FillCount[] {
  const most = Math.max(...model.bins.map((bin) => bin.capacity));
  const free = [...available];
  const open = new OpenBins(most);
  work.add(left.length + (most >> 4));
  for (let item = 0; item < left.length; item++) {
    const weight = model.weights[item]!;
    for (let n = left[item]!; n > 0;) {
      const { room, bins } = open.take(weight) ?? openBins(model, free, order, weight, n);
      const each = Math.min(n, Math.floor(room / weight));
      const count = Math.min(bins.count, Math.floor(n / each));
      const { fill } = bins;
      if (count < bins.count) open.put(room, { fill, count: bins.count - count });
      open.put(room - each * weight, {
        fill: { bin: fill.bin, items: [...fill.items, item], copies: [...fill.copies, each] },
        count,
      });
      n -= each * count;
      work.add(50 + 2 * fill.items.length);
    }
  }
  return open.all();
}

/** New bins for `n` pieces of a weight, empty still; no more than there are. */
function openBins(
  model: Model,
  free: number[],
  order: readonly number[],
  weight: number,
  n: number,
): { room: number; bins: FillCount } {
  const bin = binFor(model, free, order, weight);
  const room = model.bins[bin]!.capacity;
  const count = Math.min(free[bin]!, Math.ceil(n / Math.floor(room / weight)));
  free[bin]! -= count;
  return { room, bins: { fill: { bin, items: [], copies: [] }, count } };
}
