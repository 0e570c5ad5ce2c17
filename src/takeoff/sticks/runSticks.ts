import type { CutPiece } from "../../cutting";
import { lotPieces } from "../cuts/cutLots";
import { labelKey } from "../amounts/lineBook";
import type { RuleBook } from "../../rules/rules";
import type { RowWork } from "../amounts/jobWork";
import { countGrid, countSticks, stickSteps } from "./stickCount";
import type { CountedSticks } from "./stickLots";
import { WorkShares } from "../cuts/workShares";

/** Sticks, and the work it took to count them. */
export interface StickCounts {
  readonly counted: CountedSticks[];
  readonly steps: number;
}

/**
 * The sticks of runs, all to be bought, each run cut from sticks of its own length.
 * @param maxSteps work that the cutting plans may take
 */
export function countRunSticks(works: readonly RowWork[], rules: RuleBook, maxSteps: number): StickCounts {
  const lots = new Map<string, RowWork[]>();
  for (const work of works) {
    const { raceway, size, stick } = work.run;
    const key = labelKey([raceway, size, String(stick)]);
    const lot = lots.get(key) ?? [];
    lots.set(key, lot);
    lot.push(work);
  }
  const shares = new WorkShares(maxSteps, lots.size);
  let spent = 0;
  const counted = [...lots.values()].map((lot): CountedSticks => {
    const length = lot[0]!.run.stick;
    const { sticks, least, steps } = shares.next((share) =>
      countSticks(stickPieces(lot, rules), length, rules.number("Saw kerf"), share),
    );
    spent += steps;
    return { works: lot, length, sticks, notes: least < sticks ? [`at least ${least} are needed`] : [] };
  });
  return { counted, steps: spent };
}

/** Pieces no longer than their stick: an allowance beyond it is for JOB.CUTS to refuse. */
function stickPieces(works: readonly RowWork[], rules: RuleBook): CutPiece[] {
  const { stick } = works[0]!.run;
  const longest = stickSteps(stick);
  return lotPieces(works, countGrid(stick), rules).map((piece) => ({
    ...piece,
    length: Math.min(piece.length, longest),
  }));
}
