import type { BuiltRun, Piece } from "./buildRun";
import { dialOrWords } from "./dialOrWords";
import { shortTail } from "./scheduleNotes";

/** What the person at the bench should know about one bend. */
export function bendNotes(built: BuiltRun, piece: Piece, index: number): string[] {
  const tail = shortTail(built, piece, index);
  const notes = tail ? [`${tail}: cut it long and trim it after bending`] : [];
  if (typeof dialOrWords(built.shoe, piece.bends[index]!.angle) === "string") {
    notes.push("the dial does not reach this: start it below zero by the springback, or make the bend in two");
  }
  return notes;
}

/** What each end of a piece goes to, in words; empty where nothing is said. */
export function endsOf(built: BuiltRun, piece: Piece): { datum: string; far: string } {
  const { from, to } = built.run;
  const [isFirst, isLast] = [piece.pull === 1, piece.pull === built.pulls.length];
  const couples = (neighbor: number): string => `couples to piece ${neighbor}`;
  return {
    datum: piece.coupledBefore ? couples(piece.number - 1) : isFirst ? from : "a box",
    far: piece.coupledAfter ? couples(piece.number + 1) : isLast ? to : "a box",
  };
}
