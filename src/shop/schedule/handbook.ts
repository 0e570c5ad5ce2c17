import { cos, sin, toRadians } from "../../geometry/angle";
import { printedConstants } from "../../bends/shapes/printedConstants";
import type { CornerKind } from "../../route/text/types";
import { show } from "../../units/show";
import type { Piece, PieceBend } from "../run/builtRun";
import { settingFor } from "./lineUp";
import { markFor } from "../shoe/marks";
import type { Shoe } from "../shoe/shoe";

/** The spacing a handbook gives for two marks of an offset or saddle, beside the exact one. All [in]. */
export interface HandbookSpacing {
  readonly handbook: number;
  readonly exact: number;
  /** How the handbook gets there, for example "2 × rise". */
  readonly rule: string;
}

/**
 * Compares the marks of a bend with the mark its handbook spacing is counted from: the first bend of an offset, the
 * center of a three-bend saddle. Undefined when the bend has no such partner on the same piece.
 */
export function handbookSpacing(piece: Piece, index: number, shoe: Shoe): HandbookSpacing | undefined {
  const bend = piece.bends[index] as PieceBend;
  const { kind, place } = bend.corner;
  if (kind === "three-bend saddle" && place !== 2) {
    return saddleSpacing(piece, index, place === 1 ? index + 1 : index - 1, shoe);
  }
  return CLOSING[kind]?.includes(place) ? offsetPair(piece, index) : undefined;
}

/** Places in a group of the bends that close an offset: the bend before them, if on the piece, opened it. */
const CLOSING: Partial<Record<CornerKind, readonly number[]>> = {
  offset: [2],
  "rolling offset": [2],
  "box offset": [2],
  "four-bend saddle": [2, 4],
};

function markOf(piece: Piece, index: number, shoe: Shoe): number {
  const bend = piece.bends[index] as PieceBend;
  const { lineUp, hook } = settingFor(piece, index, shoe);
  return markFor(shoe, bend.start, bend.angle, lineUp, hook);
}

function offsetPair(piece: Piece, index: number): HandbookSpacing | undefined {
  const bend = piece.bends[index] as PieceBend;
  const first = piece.bends[index - 1];
  if (!first) return undefined;
  const rise = bend.legBefore * sin(toRadians(bend.angle));
  const printed = printedConstants(bend.angle)?.multiplier;
  const multiplier = printed ?? 1 / sin(toRadians(bend.angle));
  return {
    handbook: multiplier * rise,
    exact: bend.start - first.start,
    rule: printed === undefined ? `cosecant ${show(multiplier)} × rise` : `${show(printed)} × rise`,
  };
}

function saddleSpacing(piece: Piece, index: number, center: number, shoe: Shoe): HandbookSpacing | undefined {
  const outer = piece.bends[index] as PieceBend;
  const middle = piece.bends[center];
  if (!middle) return undefined;
  // Both legs of a saddle are equally long.
  const cornerHeight = middle.legBefore * sin(toRadians(outer.angle));
  const height = cornerHeight - middle.radius * (1 / cos(toRadians(middle.angle / 2)) - 1);
  const printed = printedConstants(middle.angle)?.saddleMultiplier;
  const multiplier = printed ?? 1 / sin(toRadians(outer.angle));
  return {
    handbook: multiplier * height,
    exact: Math.abs(markOf(piece, center, shoe) - markOf(piece, index, shoe)),
    rule: printed === undefined ? `cosecant ${show(multiplier)} × height` : `${show(printed)} × height`,
  };
}
