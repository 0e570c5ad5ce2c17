import { arcLength } from "../../geometry/arc";
import { ROUNDING } from "../../units/tolerances";
import type { ShowLength } from "../../units/formatLength";
import type { Piece } from "../run/builtRun";
import type { Hook } from "../shoe/marks";
import { tailNeeded, type Shoe } from "../shoe/shoe";

/** Words with lengths in them, for whoever tells lengths. */
export type Told = (show: ShowLength) => string;

/**
 * What is wrong with the straight that the hook holds, from the bend to the last bend already made on that side or to
 * the end; undefined when it is long enough.
 *
 * @param done which bends of the piece are made already
 */
export function tailProblem(
  piece: Piece,
  done: readonly boolean[],
  index: number,
  hook: Hook,
  shoe: Shoe,
): Told | undefined {
  const bend = piece.bends[index]!;
  const needed = tailNeeded(shoe);
  const bends = piece.bends.filter((_, place) => done[place]);
  const ends = bends.map((other) => other.start + arcLength(other.angle, other.radius));
  const from = Math.max(0, ...ends.filter((end) => end <= bend.start + ROUNDING));
  const to = Math.min(piece.cutLength, ...bends.map((other) => other.start).filter((start) => start > bend.start));
  const tail = hook === "datum" ? bend.start - from : to - (bend.start + arcLength(bend.angle, bend.radius));
  if (tail >= needed - ROUNDING) return undefined;
  return (show) => `the ${hook} side has ${show(tail, 2)} straight to hold; the shoe needs ${show(needed, 2)}`;
}
