import type { LabeledPiece } from "./cutLots";

/** Hands out the pieces of each length in their order, to name what a cut is for. */
export class CutLabels {
  private readonly waiting = new Map<number, { label: string; left: number }[]>();

  constructor(pieces: readonly LabeledPiece[]) {
    for (const { length, quantity, label } of pieces) {
      const queue = this.waiting.get(length) ?? [];
      queue.push({ label, left: quantity });
      this.waiting.set(length, queue);
    }
  }

  /** The next `count` pieces of a length [steps] in words. @example "TH-01/1 ×4, TH-07/2" */
  take(length: number, count: number): string {
    const taken: string[] = [];
    const queue = this.waiting.get(length) ?? [];
    for (let left = count; left > 0 && queue[0] !== undefined;) {
      const first = queue[0];
      const now = Math.min(left, first.left);
      taken.push(now === 1 ? first.label : `${first.label} ×${now}`);
      first.left -= now;
      left -= now;
      if (first.left === 0) queue.shift();
    }
    return taken.join(", ");
  }
}
