import { halfTurn, toRadians, type Degrees } from "../../geometry/angle";
import type { Raceway } from "../../raceway/raceway";
import type { TradeSize } from "../../raceway/tradeSize";
import type { Run } from "./runsTable";
import type { Piece } from "./builtRun";

/** A bend of a shape. Lengths [in], angles [°]. */
export interface ShapeBend {
  /** Where it starts and ends, along the straight stick. */
  readonly start: number;
  readonly end: number;
  readonly angle: Degrees;
  readonly radius: number;
  /** Rotation against the bend before it on this piece; 0 for the first: a piece can be rolled as one likes. */
  readonly turn: number;
}

/** What a finished piece is, whatever run it was made for. */
export interface PieceShape {
  readonly raceway: Raceway;
  readonly size: TradeSize;
  /** [in] */
  readonly cut: number;
  readonly bends: readonly ShapeBend[];
}

/** The name a piece goes by. @example pieceName("TH-01", 2) //=> "TH-01/2" */
export const pieceName = (run: string, number: number): string => `${run}/${number}`;

/** The shape of a piece of a run. */
export function pieceShape({ raceway, size }: Pick<Run, "raceway" | "size">, piece: Piece): PieceShape {
  const bends = piece.bends.map(({ start, angle, radius, plane }, index): ShapeBend => ({
    ...{ start, end: start + radius * toRadians(angle), angle, radius },
    turn: index === 0 ? 0 : halfTurn(plane),
  }));
  return { raceway, size, cut: piece.cutLength, bends };
}

/**
 * The same piece turned end for end. Its bends come in the opposite order; the rotation from one to the next stays what
 * it is, for both the order and the side it is seen from are turned around.
 */
export function turnedAround({ bends, cut, ...conduit }: PieceShape): PieceShape {
  const around = bends.map(({ start, end, angle, radius }, index): ShapeBend => ({
    ...{ start: cut - end, end: cut - start, angle, radius },
    turn: bends[index + 1]?.turn ?? 0,
  }));
  return { ...conduit, cut, bends: around.reverse() };
}

/** Letters and digits that are not taken for one another. */
const DIGITS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
/** Lengths are told apart to a sixteenth of an inch, angles to a tenth of a degree. */
const [LENGTH_STEPS, ANGLE_STEPS] = [16, 10];
/** What is this near to the middle between two steps is rounded up on every machine [steps]. */
const BIAS = 1e-6;

/**
 * A short code of a shape: the same for pieces of the same raceway and size with the same cut length, bends and rotations,
 * to 1/16 in. and 0.1°, from whichever end they are looked at. Two shapes share a code by chance once in some 10¹² pairs.
 *
 * @example shapeCode({ raceway: "EMT", size: "1/2", cut: 120, bends: [] }) //=> "GMP3-TN8Y"
 */
export function shapeCode(shape: PieceShape): string {
  const [one, other] = [inWords(shape), inWords(turnedAround(shape))];
  return codeOf(one < other ? one : other);
}

function inWords({ raceway, size, cut, bends }: PieceShape): string {
  const length = (inches: number) => Math.floor(inches * LENGTH_STEPS + 0.5 + BIAS);
  const angle = (degrees: number) => Math.floor(degrees * ANGLE_STEPS + 0.5 + BIAS);
  return [
    ...[raceway, size, length(cut)],
    ...bends.map((bend) => [length(bend.start), angle(bend.angle), length(bend.radius), angle(bend.turn)].join(" ")),
  ].join("|");
}

/** Eight digits of 32: forty bits of two FNV-1a hashes (public domain). */
function codeOf(words: string): string {
  const [high, low] = [fnv(words, 0x811c9dc5), fnv(words, 0x01000193)];
  const digits = [high, low].flatMap((hash) => [0, 5, 10, 15].map((shift) => DIGITS[(hash >>> shift) & 31]));
  return `${digits.slice(0, 4).join("")}-${digits.slice(4).join("")}`;
}

function fnv(words: string, seed: number): number {
  let hash = seed;
  for (let at = 0; at < words.length; at++) hash = Math.imul(hash ^ words.charCodeAt(at), 0x01000193);
  return hash ^ (hash >>> 20);
}
