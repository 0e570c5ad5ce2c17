import { remember } from "../../memory/remember";
import type { Bench } from "./bench";
import type { Piece } from "../run/builtRun";
import { settingFor } from "../schedule/lineUp";
import { rolled, type Stroke } from "../schedule/usualStrokes";
import type { Hook, LineUp } from "../shoe/marks";
import { findSetup, type Setup } from "./setupSearch";
import type { Shoe } from "../shoe/shoe";

/** The strokes of a piece in the order and with the hooks that suit a bench. */
export const benchStrokes = remember((piece: Piece, shoe: Shoe, bench: Bench): BenchStrokes => {
  const setup = findSetup(piece, shoe, bench);
  const strokes = setup.steps.map(({ index, hook }) => ({ index, hook, lineUp: lineUpFor(piece, shoe, index, hook) }));
  return { strokes: rolled(piece, strokes), setup };
});

export interface BenchStrokes {
  readonly strokes: readonly Stroke[];
  readonly setup: Setup;
}

/** The schedule's mark when the hook is the schedule's, else the arrow (a notch serves both ways). */
function lineUpFor(piece: Piece, shoe: Shoe, index: number, hook: Hook): LineUp {
  const usual = settingFor(piece, index, shoe);
  return usual.lineUp === "notch" || usual.hook === hook ? usual.lineUp : "arrow";
}
