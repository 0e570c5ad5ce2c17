import { toSteps, type CutGrid } from "../../cutting";
import { InputError } from "../../units/errors";
import { show } from "../../units/show";

/** Coarsest first. */
export const GRIDS: readonly CutGrid[] = ["1/16", "1/32", "0.1 mm"];

/**
 * The coarsest grid that every length stands on. Lengths are never rounded.
 *
 * @param lengths [in]
 * @throws InputError that names the first length that shares no grid with the ones before it
 */
export function gridFor(lengths: readonly number[]): CutGrid {
  let left = GRIDS;
  for (const length of lengths) {
    left = left.filter((grid) => isOnGrid(length, grid));
    if (left.length === 0) {
      throw new InputError(
        `lengths, sticks and kerf must all be whole numbers of 1/32 in., or all of 0.1 mm; ` +
          `got ${show(length, 6)} in. among them. Round it first.`,
      );
    }
  }
  return left[0]!;
}

/** True when a length [in] is a whole number of the grid's steps. */
export function isOnGrid(length: number, grid: CutGrid): boolean {
  try {
    toSteps(length, grid, "length");
    return true;
  } catch {
    return false;
  }
}
