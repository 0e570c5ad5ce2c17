import { planCutsInSteps, roundUpToSteps, type CutGrid, type CutPiece, type CutRequest } from "../../cutting";
import { isOnGrid, GRIDS } from "../cuts/cutGrid";

/** How many sticks pieces are cut from. */
export interface StickCount {
  readonly sticks: number;
  /** No fewer will do: proven. */
  readonly least: number;
  /** Work it took. */
  readonly steps: number;
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

/** Most pieces that a plan is made for while a sheet waits; beyond, best fit has to do, a stick or two off the least. */
const MOST_PIECES = 10_000;

/**
 * Sticks of one length for pieces no longer than it: by best fit where that needs no more than the bare length of the
 * pieces does, otherwise by a cutting plan.
 *
 * @param pieces in steps of the stick's countGrid
 * @param stick [in]
 * @param kerf [in]
 * @param steps work that a plan may take
 */
export function countSticks(pieces: readonly CutPiece[], stick: number, kerf: number, steps: number): StickCount {
  const grid = countGrid(stick);
  const cut = roundUpToSteps(kerf, grid);
  const length = stickSteps(stick);
  const weights = pieces.map((piece) => ({ weight: piece.length + cut, quantity: piece.quantity }));
  const weight = weights.reduce((sum, piece) => sum + piece.weight * piece.quantity, 0);
  const least = Math.ceil(weight / (length + cut));
  const fitted = bestFit(weights, length + cut);
  const count = pieces.reduce((sum, { quantity }) => sum + quantity, 0);
  if (fitted === least || count > MOST_PIECES || steps === 0) return { sticks: fitted, least, steps: 0 };
  const planned = planUntilProven({ pieces, stocks: [{ length }], grid, kerf: cut }, steps);
  return { ...planned, sticks: Math.min(fitted, planned.sticks), least: Math.max(least, planned.least) };
}

/** Plans until the number of sticks is proven; how they are cut best does not matter here. */
function planUntilProven(request: CutRequest, steps: number): StickCount {
  const search = planCutsInSteps(request, { steps });
  let step = search.next();
  for (; !step.done; step = search.next()) {
    const { cost, bound, share } = step.value;
    if (cost <= bound) return { sticks: cost, least: bound, steps: Math.ceil(share * steps) };
  }
  const plan = step.value;
  return { sticks: plan.sticks, least: plan.bound, steps: plan.steps };
}

/** Best fit decreasing: each piece, longest first, into the opened stick that it leaves least of. */
function bestFit(pieces: readonly { weight: number; quantity: number }[], capacity: number): number {
  /** Opened sticks by what is left of them. */
  const opened = new Array<number>(capacity + 1).fill(0);
  let sticks = 0;
  for (const { weight, quantity } of [...pieces].sort((a, b) => b.weight - a.weight)) {
    for (let piece = 0; piece < quantity; piece++) {
      let room = weight;
      while (room <= capacity && opened[room] === 0) room++;
      if (room > capacity) sticks++;
      else opened[room]!--;
      const left = Math.min(room, capacity) - weight;
      opened[left]!++;
    }
  }
  return sticks;
}
