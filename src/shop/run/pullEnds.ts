import { BODIES, type Body, type PullEnd, type Whip } from "../../route/text/types";
import type { BuiltRun } from "./builtRun";

/** The body that a pull ends at, if it does. */
export const bodyOf = (end: PullEnd): Body | undefined => BODIES.find((body) => body === end);

/** The conduit bodies of a run, in their order. */
export const runBodies = ({ pulls }: BuiltRun): Body[] => pulls.flatMap(({ pull }) => bodyOf(pull.end) ?? []);

/** The flexible pieces of a run, in their order. */
export const runWhips = ({ pulls }: BuiltRun): Whip[] => pulls.flatMap(({ pull }) => pull.whip ?? []);

/** Boxes between the pulls of a run, before and after its flexible pieces too; that at its end is left out, and one that To names. */
export const innerBoxes = ({ pulls }: BuiltRun): number =>
  pulls.reduce((sum, { pull: { end, whip } }, index) => {
    const goesOn = whip !== undefined || index < pulls.length - 1;
    const box = end === "box" && goesOn ? 1 : 0;
    return sum + box + (whip?.toBox && index < pulls.length - 1 ? 1 : 0);
  }, 0);

/**
 * Ends of conduit that a connector, or locknuts and a bushing, hold: two for each pull, but for those in a body's hub or
 * joined to a flexible piece.
 */
export const heldEnds = ({ pulls }: BuiltRun): number =>
  pulls.reduce((sum, { pull: { end } }, index) => {
    const before = pulls[index - 1]?.pull;
    const startHeld = before === undefined || (before.whip ? before.whip.toBox : before.end === "box");
    const endHeld = end === "box" || end === "open";
    return sum + (startHeld ? 1 : 0) + (endHeld ? 1 : 0);
  }, 0);

/** What is between a pull and the next, in words: "a box", "the LB". */
export function endInWords({ end, whip }: { readonly end: PullEnd; readonly whip?: Whip }): string {
  if (end === "whip" && whip) return `a flexible piece of ${whip.flex}`;
  return bodyOf(end) ? `the ${end}` : "a box";
}
