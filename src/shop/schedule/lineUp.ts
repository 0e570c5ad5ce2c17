import { isAngle, toRadians } from "../../geometry/angle";
import type { Piece, PieceBend } from "../run/builtRun";
import type { Hook, LineUp } from "../shoe/marks";
import { NOTCH_ANGLES, tailNeeded, type Shoe } from "../shoe/shoe";

/** The trade's word for one bend of a run. */
export type BendKind =
  | "stub-up"
  | "back-to-back"
  | "90"
  | "kick"
  | "offset"
  | "rolling offset"
  | "box offset"
  | "three-bend saddle"
  | "four-bend saddle"
  | "sweep";

/**
 * Names a bend: what the route step says, or for plain corners: the first 90 of a pull is a stub-up; a 90 that follows
 * a 90 and turns the same way in the same plane is the back of a back-to-back; any other angle is a kick.
 */
export function bendKind(bend: PieceBend, before: PieceBend | undefined): BendKind {
  const kind = bend.corner.kind;
  if (kind !== "bend") return kind;
  if (!isAngle(bend.angle, 90)) return "kick";
  if (bend.place === 0) return "stub-up";
  return before && isBackToBack(before, bend) ? "back-to-back" : "90";
}

const isBackToBack = (first: PieceBend, second: PieceBend): boolean =>
  first.corner.kind === "bend" &&
  second.corner.kind === "bend" &&
  isAngle(first.angle, 90) &&
  isAngle(second.angle, 90) &&
  isAngle(second.plane, 0);

/** What to line up and which end to hook for a bend of a piece. */
export interface Setting {
  readonly lineUp: LineUp;
  readonly hook: Hook;
}

/**
 * Chooses the mark as the trade does: the center notch for the middle bend of a saddle, the star for the second 90 of
 * a back-to-back, the arrow for the rest. The arrow hooks the datum end unless that end is shorter than the shoe needs
 * and the far end is not; the first outer bend of a three-bend saddle is hooked toward its center, as the last one is,
 * so that both outer marks stand as far from the center mark.
 */
export function settingFor(piece: Piece, index: number, shoe: Shoe): Setting {
  const bend = piece.bends[index];
  const before = piece.bends[index - 1];
  if (!bend) throw new RangeError(`piece ${piece.number} has no bend ${index + 1}`);
  const { kind, place } = bend.corner;
  const notched = NOTCH_ANGLES.some((angle) => isAngle(bend.angle, angle));
  if (kind === "three-bend saddle" && place === 2 && notched) {
    // A notch serves from both ends: the conduit stays as the bend before left it.
    return { lineUp: "notch", hook: before ? settingFor(piece, index - 1, shoe).hook : "datum" };
  }
  if (before && isBackToBack(before, bend)) return { lineUp: "star", hook: "far" };
  const wanted = kind === "three-bend saddle" && place === 1 ? "far" : "datum";
  return { lineUp: "arrow", hook: hookThatHolds(piece, bend, shoe, wanted) };
}

/** The wanted hook, or the other one when only that has a tail long enough. */
function hookThatHolds(piece: Piece, bend: PieceBend, shoe: Shoe, wanted: Hook): Hook {
  const farTail = piece.cutLength - (bend.start + bend.radius * toRadians(bend.angle));
  const tails = { datum: bend.start, far: farTail };
  const other = wanted === "datum" ? "far" : "datum";
  return tails[wanted] < tailNeeded(shoe) && tails[other] >= tailNeeded(shoe) ? other : wanted;
}
