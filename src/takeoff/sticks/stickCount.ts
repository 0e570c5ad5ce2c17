import { leastCost, roundUpToSteps, type CutGrid, type CutPiece } from "../../cutting";
import { isOnGrid, GRIDS } from "../cuts/cutGrid";

/** How many sticks pieces are cut from. */
export interface StickCount {
  readonly sticks: number;
  /** No fewer will do: proven. */
  readonly least: number;
}

/**
 * The steps that pieces of a stick are counted in: sixteenths, as the schedule is rounded, or the coarsest grid the stick
 * stands on; for one that stands on none, tenths of a millimeter. A kerf between two steps is taken up to the next.
 *
 * @param stick [in]
 */
export const countGrid = (stick: number): CutGrid => GRIDS.find((grid) => isOnGrid(stick, grid)) ?? "0.1 mm";

/** Whole steps in a stick [in]: one between two steps holds no more than the lower. */
export const stickSteps = (stick: number): number => -roundUpToSteps(-stick, countGrid(stick));

/**
 * Sticks of one length for pieces no longer than it.
 *
 * @param pieces in steps of the stick's countGrid
 * @param stick [in]
 * @param kerf [in]
 * @param steps work that a plan may take
 */
export function countSticks(pieces: readonly CutPiece[], stick: number, kerf: number, steps: number): StickCount {
  const grid = countGrid(stick);
  const stocks = [{ length: stickSteps(stick) }];
  const { cost, bound } = leastCost({ pieces, stocks, grid, kerf: roundUpToSteps(kerf, grid) }, { steps });
  return { sticks: cost, least: bound };
}
