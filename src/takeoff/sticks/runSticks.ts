import { rememberPlanned, type CutPiece } from "../../cutting";
import { lotPieces } from "../cuts/cutLots";
import { partsBySize, partsByStick } from "../amounts/jobWork";
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
  const lots = partsBySize(works).flatMap((part) => partsByStick(part));
  const steps = workShare(maxSteps, lots.length);
  return lots.map((lot) => countLot(lot, rules, steps));
}

const countLot = rememberPlanned((works: readonly RowWork[], rules: RuleBook, steps: number): CountedSticks => {
  const length = works[0]!.run.stick;
  const { sticks, least } = countSticks(stickPieces(works, rules), length, rules.number("Saw kerf"), steps);
  return { works, length, sticks, notes: least < sticks ? [`at least ${least} are needed`] : [] };
});

/** Pieces no longer than their stick: an allowance beyond it is for JOB.CUTS to refuse. */
function stickPieces(works: readonly RowWork[], rules: RuleBook): CutPiece[] {
  const { stick } = works[0]!.run;
  const longest = stickSteps(stick);
  return lotPieces(works, countGrid(stick), rules).map((piece) => ({
    ...piece,
    length: Math.min(piece.length, longest),
  }));
}
