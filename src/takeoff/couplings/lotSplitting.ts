import type { CutGrid } from "../../cutting";
import { couplingZones } from "../../shop/run/buildPull";
import { NO_PUP } from "../../shop/run/pieceEnds";
import { runPieces } from "../../shop/run/builtRun";
import { SAME_PLACE } from "../../units/tolerances";
import type { RowWork } from "../amounts/jobWork";
import type { PriceBook } from "../lists/prices";
import type { LabeledPiece } from "../saw/cutLabels";
import type { Stretch } from "./rack";
import type { SplitPiece } from "./splitPieces";

/** Steps of an inch that couplings are placed on: sixteenths, whole millimeters on their grid. */
const PLACES: Readonly<Record<CutGrid, { readonly perInch: number; readonly steps: number }>> = {
  "1/16": { perInch: 16, steps: 1 },
  "1/32": { perInch: 16, steps: 2 },
  "0.1 mm": { perInch: 25.4, steps: 10 },
};

/** A piece that may be parted, and where it starts along its run [in]. */
export interface RunPiece extends SplitPiece {
  readonly work: RowWork;
  readonly start: number;
  /** Steps of its length in an inch. */
  readonly perInch: number;
}

/**
 * The pieces of a lot in the order of {@link lotPieces}, each with the places where its run may be coupled: on straight
 * conduit, clear of bends and ends, not inside an offset, saddle or kick. None where a coupling has no price.
 */
export function runPiecesOf(
  works: readonly RowWork[],
  pieces: readonly LabeledPiece[],
  grid: CutGrid,
  prices: PriceBook,
): RunPiece[] {
  let next = 0;
  return works.flatMap((work) => {
    const { unitPrice } = prices.priceOf(work.coupling);
    const starts = unitPrice === null ? undefined : startsOf(work);
    return runPieces(work.row.built).flatMap((piece, index): RunPiece[] => {
      if ((work.left?.[index] ?? work.run.quantity) === 0) return [];
      const { length, quantity } = pieces[next++]!;
      const start = starts?.[index];
      const places = start === undefined ? [] : placesOn(work, piece.pull, start.inPull, piece.cutLength, grid);
      const perInch = PLACES[grid].perInch * PLACES[grid].steps;
      const coupling = unitPrice ?? Infinity;
      return [{ work, start: start?.inRun ?? 0, perInch, length, copies: quantity, coupling, places }];
    });
  });
}

/** Where each piece starts; undefined where nothing may be moved: the run has elbows, or some of it is made. */
function startsOf({ row: { built }, run: { rack }, left }: RowWork): { inRun: number; inPull: number }[] | undefined {
  if (left || rack || built.pulls.some(({ elbows, asked }) => elbows.length > 0 || asked.length > 0)) return undefined;
  let run = 0;
  return built.pulls.flatMap(({ joints, parts }) => {
    const starts = [0, ...joints].map((inPull) => ({ inRun: run + inPull, inPull }));
    run += parts.developed;
    return starts;
  });
}

function placesOn({ row: { built } }: RowWork, pull: number, start: number, length: number, grid: CutGrid): Stretch[] {
  const { perInch, steps } = PLACES[grid];
  return couplingZones(built.pulls[pull - 1]!, built).flatMap(({ from, to, parting }) => {
    const first = Math.ceil(Math.max(from - start, 0) * perInch - SAME_PLACE) * steps;
    const last = Math.floor(Math.min(to - start, length) * perInch + SAME_PLACE) * steps;
    return parting || last < first ? [] : [{ from: first, to: last }];
  });
}

/** Shortest part [steps of the grid]. */
export const shortestPart = (grid: CutGrid): number => Math.ceil(NO_PUP * PLACES[grid].perInch) * PLACES[grid].steps;
