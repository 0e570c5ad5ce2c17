import { halfTurn } from "../../geometry/angle";
import type { Piece } from "../run/builtRun";
import { dialOrWords } from "../shoe/dialOrWords";
import type { Hook, LineUp } from "../shoe/marks";
import type { Shoe } from "../shoe/shoe";
import { tailProblem } from "./heldTail";
import { settingFor } from "./lineUp";

/** One stroke of the bender, in the order they are made. */
export interface Stroke {
  /** Place of the bend in the piece, 0 for the first from the datum end. */
  readonly index: number;
  readonly lineUp: LineUp;
  readonly hook: Hook;
  /** From the plane of the stroke before to this one's [°], clockwise seen from the datum end; 0 for the first. */
  readonly roll: number;
}

/**
 * The strokes of a piece as the schedule gives them: from the datum end on, but the center of a three-bend saddle before
 * its outer bends (common practice, no source), where the dial reaches it and the shoe can then hold them.
 */
export const usualStrokes = (piece: Piece, shoe: Shoe): Stroke[] =>
  rolled(
    piece,
    usualOrder(piece, shoe).map((index) => ({ index, ...settingFor(piece, index, shoe) })),
  );

/** Strokes with the roll from each to the next. */
export function rolled(piece: Piece, strokes: readonly Omit<Stroke, "roll">[]): Stroke[] {
  const turn = azimuths(piece);
  return strokes.map((stroke, place): Stroke => {
    const before = strokes[place - 1];
    return { ...stroke, roll: before ? halfTurn(turn[stroke.index]! - turn[before.index]!) : 0 };
  });
}

/** Azimuth of each bend round the straight piece [°], the first at 0: what the planes add up to. */
export function azimuths(piece: Piece): number[] {
  let sum = 0;
  return piece.bends.map((bend, index) => (sum += index === 0 ? 0 : bend.plane));
}

function usualOrder(piece: Piece, shoe: Shoe): number[] {
  const order = piece.bends.map((_, index) => index);
  for (const center of order.filter((index) => isSaddleCenter(piece, index))) {
    const first = centerFirst(piece, center, shoe);
    if (first) order.splice(center - 1, 3, ...first);
  }
  return order;
}

/** True for the middle bend of a three-bend saddle that stands on one piece. */
export function isSaddleCenter({ bends }: Piece, index: number): boolean {
  const [before, bend, after] = [bends[index - 1]?.corner, bends[index]?.corner, bends[index + 1]?.corner];
  if (bend?.kind !== "three-bend saddle" || bend.place !== 2) return false;
  return before?.group === bend.group && after?.group === bend.group;
}

/** The bends of a saddle, its center first, then the outer one that is hooked as the center is; undefined where that cannot be. */
function centerFirst(piece: Piece, center: number, shoe: Shoe): number[] | undefined {
  if (typeof dialOrWords(shoe, piece.bends[center]!.angle) !== "number") return undefined;
  const hookOf = (index: number) => settingFor(piece, index, shoe).hook;
  const outer = [center - 1, center + 1];
  if (hookOf(outer[0]!) !== hookOf(center)) outer.reverse();
  const order = [center, ...outer];
  const held = order.every((index, place) => {
    const done = piece.bends.map((_, other) => other < center - 1 || order.indexOf(other) < place);
    return tailProblem(piece, done, index, hookOf(index), shoe) === undefined;
  });
  return held ? order : undefined;
}
