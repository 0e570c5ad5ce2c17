import type { JointFitting } from "../../route/text/types";
import { ROUNDING } from "../../units/tolerances";
import { pullParts, type BuiltPull, type Piece } from "./builtRun";

/** What joins a piece to what comes before it in its pull; undefined where its pull begins. */
export const jointBefore = (pull: BuiltPull, piece: Piece): JointFitting | undefined =>
  jointAt(pull, partPlace(pull, piece) - 1);

/** What joins a piece to what comes after it in its pull; undefined where its pull ends. */
export const jointAfter = (pull: BuiltPull, piece: Piece): JointFitting | undefined =>
  jointAt(pull, partPlace(pull, piece));

const partPlace = (pull: BuiltPull, piece: Piece): number => pullParts(pull).indexOf(piece);

function jointAt({ joints, asked }: BuiltPull, place: number): JointFitting | undefined {
  const joint = joints[place];
  if (joint === undefined) return undefined;
  return asked.find(({ at }) => Math.abs(at - joint) < ROUNDING)?.fitting ?? "coupling";
}
