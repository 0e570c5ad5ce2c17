import { showDegrees } from "../../units/show";
import type { Run } from "../run/runsTable";
import { isPiece, partsBeside, type BuiltRun, type Piece, type PullPart } from "../run/builtRun";
import { dialOrWords } from "../shoe/dialOrWords";
import { untested } from "../shoe/springback";
import { sawnEndsOf, type SawnEnds } from "../schedule/sawnEnds";
import { shortTail } from "../schedule/scheduleNotes";
import { endInWords } from "../run/pullEnds";
import type { Pull } from "../../route/text/types";
import type { Setup } from "../bench/setupSearch";

/** What the person at the bench should know where the end to hold is short. */
export function tailNotes(built: BuiltRun, piece: Piece, index: number): string[] {
  const tail = shortTail(built, piece, index);
  return tail ? [`${tail}: cut it long and trim it after bending`] : [];
}

/** What the person at the bench should know where the dial ends. */
export function dialNotes(built: BuiltRun, piece: Piece, index: number): string[] {
  const { angle } = piece.bends[index]!;
  if (typeof dialOrWords(built.shoe, angle) === "number") return [];
  const why = untested(built.shoe, angle);
  if (why !== "") return [`no test bend tells the springback: ${why}`];
  return ["the dial does not reach this: start it below zero by the springback, or make the bend in two"];
}

/** What the bench has to say about a stroke: what is in its way, and why the order is not the usual one. */
export function benchNotes({ lengths }: BuiltRun, { steps, order }: Setup, place: number): string[] {
  const notes = steps[place]!.room.blocked.map((reason) => `on this bench: ${reason(lengths.show)}`);
  if (place === 0 && order === "searched")
    notes.push("keep this order and these ends: the bench has no room for the usual way");
  return notes;
}

/** What each end of a piece goes to, in words; empty where nothing is said. */
export function endsOf(built: BuiltRun, piece: Piece): { datum: string; far: string } {
  const { from, to } = built.run;
  const [isFirst, isLast] = [piece.pull === 1, piece.pull === built.pulls.length];
  const { pull } = built.pulls[piece.pull - 1]!;
  const { before, after } = partsBeside(built, piece);
  return {
    datum: piece.coupledBefore
      ? couples(before.at(-1)!)
      : isFirst
        ? from
        : startInWords(built.pulls[piece.pull - 2]!.pull),
    far: piece.coupledAfter ? couples(after[0]!) : isLast && isEnd(pull) ? to : endInWords(pull),
  };
}

/** True where nothing goes on after a pull but what To names. */
const isEnd = ({ end, whip }: Pull): boolean => (end === "box" || end === "open") && !whip;

/** What a pull starts at: the box after a flexible piece, or what the pull before it ends at. */
const startInWords = (before: Pull): string =>
  before.whip?.toBox ? "a box" : endInWords(before.whip ? { ...before, end: "whip" } : before);

/**
 * Which ends are threaded again, reamed or trimmed. A stick's own thread goes to the datum end; a piece from the middle of a stick
 * has none. Common practice, no source.
 */
export const sawnEnds = (run: Run, { cutLength }: Piece): string => SAWN_WORDS[sawnEndsOf(run, cutLength)];

const SAWN_WORDS: Readonly<Record<SawnEnds, string>> = {
  none: "none: a whole stick",
  trimmed: "trim them",
  reamed: "ream them",
  "threaded and reamed": "thread and ream the far end; the datum end too, unless it has the stick's own thread",
};

const couples = (neighbor: PullPart): string =>
  `couples to ${isPiece(neighbor) ? `piece ${neighbor.number}` : `a factory elbow, ${showDegrees(neighbor.angle)}`}`;
