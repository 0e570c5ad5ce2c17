import type { CutPiece } from "../../cutting";
import { lotPieces } from "../cuts/cutLots";
import { labelKey } from "../amounts/lineBook";
import type { RuleBook } from "../../rules/rules";
import type { RowWork } from "../amounts/jobWork";
import { countGrid, countSticks, stickSteps } from "./stickCount";
import type { CountedSticks } from "./stickLots";
import { workShare } from "../cuts/workShare";

/**
 * The sticks of runs, all to be bought, each run cut from sticks of its own length.
 * @param maxSteps work that the cutting plans may take
 */
export function countRunSticks(works: readonly RowWork[], rules: RuleBook, maxSteps: number): CountedSticks[] {
  const lots = new Map<string, RowWork[]>();
  for (const work of works) {
    const { raceway, size, stick } = work.run;
    const key = labelKey([raceway, size, String(stick)]);
    const lot = lots.get(key) ?? [];
    lots.set(key, lot);
    lot.push(work);
  }
  const steps = workShare(maxSteps, lots.size);
  return [...lots.values()].map((lot): CountedSticks => {
    const length = lot[0]!.run.stick;
    const { sticks, least } = countSticks(stickPieces(lot, rules), length, rules.number("Saw kerf"), steps);
    return { works: lot, length, sticks, notes: least < sticks ? [`at least ${least} are needed`] : [] };
  });
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
