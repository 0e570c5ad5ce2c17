import type { FillCount, Model } from "../model/model";

/** The search for the smallest room that will do in place of one bin: what is known so far. */
export interface RoomSearch {
  readonly model: Model;
  /** Bins of each kind beside the one to be emptied. */
  readonly others: readonly number[];
  /** The kind of the one to be emptied. */
  readonly bin: number;
  /** Fills that may be of use; with no pieces taken out of the model before, a whole plan. */
  readonly known: readonly FillCount[];
  /** A plan that needs no more room than `enough`, once there is one. */
  plan: FillCount[] | undefined;
  /** This much room will do … */
  enough: number;
  /** … and less than this will not. */
  least: number;
}

/** The model with a bin of this room beside the others, as its last kind, and how many there are of each. */
export function withRoom({ model, others }: RoomSearch, room: number): { model: Model; counts: number[] } {
  return { model: { ...model, bins: [...model.bins, { capacity: room, cost: 0, limit: 1 }] }, counts: [...others, 1] };
}
