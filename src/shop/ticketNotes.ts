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

/** What the ends of a piece go to. */
export function pieceNotes(built: BuiltRun, piece: Piece): string[] {
  const { from, to } = built.run;
  const [isFirst, isLast] = [piece.pull === 1, piece.pull === built.pulls.length];
  return [
    endNote("datum", piece.coupledBefore, piece.number - 1, isFirst ? from : "box"),
    endNote("far", piece.coupledAfter, piece.number + 1, isLast ? to : "box"),
  ].filter((note) => note !== "");
}

function endNote(end: string, coupled: boolean, neighbor: number, goesTo: string): string {
  if (coupled) return `the ${end} end couples to piece ${neighbor}`;
  return goesTo === "" ? "" : `the ${end} end goes to ${goesTo === "box" ? "a box" : goesTo}`;
}
