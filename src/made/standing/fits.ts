import { PUT_UP_ANGLE, PUT_UP_LENGTH, ROUNDING } from "../../units/tolerances";
import { halfTurn } from "../../geometry/angle";
import { turnedAround, type PieceShape, type ShapeBend } from "../../shop/run/pieceShape";

/** How a finished piece becomes one that is needed. Lengths [in] along the straight stick of the finished piece. */
export interface PieceFit {
  /** To cut off its datum end and its far end; below a sixteenth is nothing. */
  readonly cutDatum: number;
  readonly cutFar: number;
  /** The bend still to be made: its number on the needed piece, 1 for the first; none when all are there. */
  readonly bend?: number;
  /** True when the finished piece lies the other way round. */
  readonly around: boolean;
}

/** True when there is nothing to do. */
export const fitsAsItIs = ({ cutDatum, cutFar, bend }: PieceFit): boolean =>
  bend === undefined && cutDatum < PUT_UP_LENGTH && cutFar < PUT_UP_LENGTH;

/**
 * How a finished piece can serve for a needed one with the least work: as it is, cut shorter, or cut and with one more
 * bend. Undefined when it cannot. The needed bends must be neighbors on the finished piece, as far apart and turned
 * alike; what lies beyond them is cut off on straight conduit.
 */
export function fitOf(made: PieceShape, needed: PieceShape): PieceFit | undefined {
  if (made.raceway !== needed.raceway || made.size !== needed.size) return undefined;
  const around = turnedAround(made);
  const whole = bestOf([cutFit(made, needed, false), cutFit(around, needed, true)]);
  if (whole) return whole;
  return bestOf(
    needed.bends.flatMap((_, index) => {
      const rest = withoutBend(needed, index);
      return [cutFit(made, rest, false), cutFit(around, rest, true)].map((fit) => fit && { ...fit, bend: index + 1 });
    }),
  );
}

const bestOf = (fits: readonly (PieceFit | undefined)[]): PieceFit | undefined =>
  fits.reduce((best, fit) => (fit && (!best || work(fit) < work(best)) ? fit : best), undefined);

/** Nothing to cut before one cut, one before two, little before much. */
const work = ({ cutDatum, cutFar }: PieceFit): number =>
  [cutDatum, cutFar].reduce((sum, cut) => sum + (cut < PUT_UP_LENGTH ? 0 : 1000 + cut), 0);

/** The piece without one of its bends: the straight stick is as long, the turns at that place add up. */
function withoutBend(shape: PieceShape, index: number): PieceShape {
  const after = shape.bends[index + 1];
  const turn = index === 0 ? 0 : halfTurn(shape.bends[index]!.turn + (after?.turn ?? 0));
  const bends = shape.bends.flatMap((bend, place): ShapeBend[] =>
    place === index ? [] : [bend === after ? { ...bend, turn } : bend],
  );
  return { ...shape, bends };
}

/** Looks for the needed bends along the finished piece, as it lies. */
function cutFit(made: PieceShape, needed: PieceShape, around: boolean): PieceFit | undefined {
  const count = needed.bends.length;
  const fits = Array.from({ length: made.bends.length - count + 1 }, (_, first): PieceFit | undefined => {
    const same = needed.bends.every((bend, place) => isSame(made.bends[first + place]!, bend, place === 0));
    if (!same) return undefined;
    const [from, to] = straightAround(made, first, count);
    // Without bends the needed piece is cut from the start of the straight.
    const start = count === 0 ? from : made.bends[first]!.start - needed.bends[0]!.start;
    if (needed.bends.some((bend, place) => !isNear(made.bends[first + place]!.start - bend.start, start)))
      return undefined;
    const end = start + needed.cut;
    if (start < from - PUT_UP_LENGTH || end > to + PUT_UP_LENGTH) return undefined;
    return { cutDatum: Math.max(0, start), cutFar: Math.max(0, made.cut - end), around };
  });
  return bestOf(fits);
}

/** Where straight conduit begins before a bend and ends after the last of `count` bends. */
function straightAround({ bends, cut }: PieceShape, first: number, count: number): [number, number] {
  return [bends[first - 1]?.end ?? 0, bends[first + count]?.start ?? cut];
}

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= PUT_UP_LENGTH + ROUNDING;

const isSame = (made: ShapeBend, needed: ShapeBend, first: boolean): boolean =>
  Math.abs(made.angle - needed.angle) <= PUT_UP_ANGLE &&
  isNear(made.radius, needed.radius) &&
  (first || Math.abs(halfTurn(made.turn - needed.turn)) <= PUT_UP_ANGLE);

/** The longest straight stretch of a piece [in]: what an offcut of it gives. */
export function longestStraight({ bends, cut }: PieceShape): number {
  const ends = [0, ...bends.map(({ end }) => end)];
  return Math.max(...ends.map((end, index) => (bends[index]?.start ?? cut) - end));
}
