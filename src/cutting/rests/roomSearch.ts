import type { FillCount, Model } from "../model/model";
import type { Work } from "../model/work";
import { leastRoom, roomCut, type RoomCut } from "./restCuts";

/** The search for the smallest room that will do in place of one bin: what is known so far. */
export class RoomSearch {
  /** A plan that needs no more room than `enough`, once there is one. */
  plan: FillCount[] | undefined;
  /** Less room than this will not do. */
  least: number;

  /**
   * @param others bins of each kind beside the one to be emptied
   * @param bin the kind of the one to be emptied
   * @param known fills that may be of use
   * @param enough only less room than this is of interest; what was found last will do with it
   * @param cuts all that is proven; more are added
   */
  constructor(
    readonly model: Model,
    readonly others: readonly number[],
    readonly bin: number,
    readonly known: readonly FillCount[],
    public enough: number,
    readonly cuts: RoomCut[],
  ) {
    // An empty bin could be left out.
    this.least = model.weights.at(-1) ?? 0;
    for (const cut of cuts) this.least = Math.max(this.least, leastRoom(cut, others, enough));
  }

  get open(): boolean {
    return this.least < this.enough;
  }

  /** What the prices prove about the room. */
  learn(prices: Float64Array, work: Work): void {
    const cut = roomCut(this.model, prices, work);
    const least = leastRoom(cut, this.others, this.enough);
    if (least <= this.least) return;
    this.least = least;
    this.cuts.push(cut);
  }

  /** The model with a bin of this room beside the others, as its last kind, and how many there are of each. */
  withRoom(room: number): { model: Model; counts: number[] } {
    const { model, others } = this;
    return {
      model: { ...model, bins: [...model.bins, { capacity: room, cost: 0, limit: 1 }] },
      counts: [...others, 1],
    };
  }
}
