import type { CutPiece } from "../../cutting";

/** A piece of a run, as the schedule numbers it. */
export interface PieceName {
  readonly run: string;
  readonly piece: number;
}

/** Equal pieces of one run: what the request takes, and which they are. */
export type LabeledPiece = CutPiece & PieceName;

/** Equal pieces of one run that come from one cut. */
export interface TakenPieces extends PieceName {
  readonly count: number;
}

/** Hands out the pieces of each length in their order, to name what a cut is for. */
export class CutLabels {
  private readonly waiting = new Map<number, (PieceName & { left: number })[]>();

  constructor(pieces: readonly LabeledPiece[]) {
    for (const { length, quantity, run, piece } of pieces) {
      const queue = this.waiting.get(length) ?? [];
      queue.push({ run, piece, left: quantity });
      this.waiting.set(length, queue);
    }
  }

  /** The next `count` pieces of a length [steps]. */
  take(length: number, count: number): TakenPieces[] {
    const taken: TakenPieces[] = [];
    const queue = this.waiting.get(length) ?? [];
    for (let left = count; left > 0 && queue[0] !== undefined;) {
      const first = queue[0];
      const now = Math.min(left, first.left);
      taken.push({ run: first.run, piece: first.piece, count: now });
      first.left -= now;
      left -= now;
      if (first.left === 0) queue.shift();
    }
    return taken;
  }
}

/** @example takenWords([{ run: "TH-01", piece: 1, count: 4 }, { run: "TH-07", piece: 2, count: 1 }]) //=> "TH-01/1 ×4, TH-07/2" */
export const takenWords = (taken: readonly TakenPieces[]): string =>
  taken.map(({ run, piece, count }) => `${run}/${piece}${count === 1 ? "" : ` ×${count}`}`).join(", ");
