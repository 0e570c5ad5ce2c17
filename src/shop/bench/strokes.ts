import { remember } from "../../memory/remember";
import type { Bench } from "./bench";
import { azimuths } from "./benchSides";
import type { Piece } from "../run/builtRun";
import { halfTurn } from "../../geometry/angle";
import { settingFor } from "../schedule/lineUp";
import type { Hook, LineUp } from "../shoe/marks";
import { findSetup, type Setup } from "./setupSearch";
import type { Shoe } from "../shoe/shoe";

/** One stroke of the bender, in the order they are made. */
export interface Stroke {
  /** Place of the bend in the piece, 0 for the first from the datum end. */
  readonly index: number;
  readonly lineUp: LineUp;
  readonly hook: Hook;
  /** From the plane of the stroke before to this one's [°], clockwise seen from the datum end; 0 for the first. */
  readonly roll: number;
}

/** The strokes of a piece as the schedule gives them: from the datum end on, whatever the bench. */
export function usualStrokes(piece: Piece, shoe: Shoe): Stroke[] {
  return piece.bends.map((bend, index) => ({
    index,
    ...settingFor(piece, index, shoe),
    roll: index === 0 ? 0 : bend.plane,
  }));
}

/** The strokes of a piece in the order and with the hooks that suit a bench. */
export const benchStrokes = remember((piece: Piece, shoe: Shoe, bench: Bench): BenchStrokes => {
  const setup = findSetup(piece, shoe, bench);
  const turn = azimuths(piece);
  const strokes = setup.steps.map(({ index, hook }, place): Stroke => {
    const before = setup.steps[place - 1];
    return {
      index,
      lineUp: lineUpFor(piece, shoe, index, hook),
      hook,
      roll: before ? halfTurn((turn[index] ?? 0) - (turn[before.index] ?? 0)) : 0,
    };
  });
  return { strokes, setup };
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
