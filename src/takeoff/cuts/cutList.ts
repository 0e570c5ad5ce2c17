import { planCuts, roundUpToSteps, showSteps, toSteps, type CutPiece } from "../../cutting";
import { STICK } from "../../shop/run/runsTable";
import { refuseMore } from "../../table/filledRows";
import { InputError } from "../../units/errors";
import { toInches } from "../../units/length";
import { toNumber } from "../../units/number";
import { gridFor } from "./cutGrid";
import { CutLabels } from "../saw/cutLabels";
import { CUT_HEADERS, cutSheet, wordsRow } from "./cutSheet";
import { DropNames } from "../saw/drops";
import { isPriced, readSticks, stocksOf } from "./cutStock";
import { readRules } from "../../rules/rules";
import { readSaw } from "../saw/saw";

type Cell = string | number;

/** Columns of a plan for plain lengths: it has no runs to name. */
const HEADERS = CUT_HEADERS.filter((header) => header !== "For");

/**
 * A cutting plan for a list of lengths as a table with a header row: what it comes to with its proof, then how each
 * stick is cut.
 *
 * @param lengths range of lengths [in] or length texts; empty cells are passed over
 * @param quantities range of the same shape; omitted: one of each
 * @param stock a stick's length, or a range with Length, On hand and Price; omitted: 10 ft
 * @param kerf width of the saw cut [in]; omitted: none
 * @throws InputError naming the argument, the limit and the value
 */
export function cutList(lengths: unknown, quantities: unknown, stock: unknown, kerf: unknown, keep: unknown): Cell[][] {
  const pieces = readPieces(lengths, quantities);
  const sticks = readSticks(stock, STICK);
  const saw = readSaw(kerf ?? 0, keep, readRules(null));
  const grid = gridFor([...pieces, ...sticks, { length: saw.kerf }].map(({ length }) => length));
  const minimumOffcut = roundUpToSteps(saw.keep, grid);
  const onGrid: CutPiece[] = pieces.map(({ length, quantity }) => ({
    length: toSteps(length, grid, "length"),
    quantity,
  }));
  const plan = planCuts({
    ...{ pieces: onGrid, stocks: stocksOf(sticks, grid), grid, minimumOffcut },
    kerf: toSteps(saw.kerf, grid, "kerf"),
  });
  const rows = [
    ...cutSheet(plan, {
      grid,
      told: (steps) => showSteps(steps, grid),
      keep: minimumOffcut,
      priced: isPriced(sticks),
      ...noNames(),
    }),
    ...pieces.flatMap(({ place, quantity }) =>
      quantity === 0 ? wordsRow("not cut", `quantity ${place} is 0 or empty`) : [],
    ),
  ];
  return [[...HEADERS], ...rows.map((row) => HEADERS.map((header) => row[header]))];
}

/** Pieces of a plain list have no names. */
const noNames = () => ({ labels: new CutLabels([]), drops: new DropNames() });

/** Lengths [in] with their quantities, each with its place in the range. A length of 0 is an empty cell. */
function readPieces(lengths: unknown, quantities: unknown): (CutPiece & { place: number })[] {
  refuseMore(cellCount(lengths), MOST_CELLS, "lengths", "cells");
  refuseMore(cellCount(quantities), MOST_CELLS, "quantities", "cells");
  const [lengthCells, quantityCells] = [cellsOf(lengths), cellsOf(quantities)];
  const each = quantityCells.length === 1 && quantityCells[0] === null;
  if (!each && quantityCells.length !== lengthCells.length) {
    throw new InputError(
      `quantities must have as many cells as lengths, ${lengthCells.length}; got ${quantityCells.length}.`,
    );
  }
  const pieces = lengthCells.flatMap((cell, index) => {
    const quantity = each ? 1 : quantityCells[index];
    if ((cell === null || cell === 0) && (each || quantity === null || quantity === 0)) return [];
    return [
      {
        place: index + 1,
        length: toInches(cell, `length ${index + 1}`, { above: 0 }),
        quantity: toNumber(quantity, `quantity ${index + 1}`, { min: 0, integer: true }),
      },
    ];
  });
  if (pieces.length === 0) throw new InputError("lengths must have at least one length; got an empty range.");
  return pieces;
}

/** Most cells of a list. */
const MOST_CELLS = 50_000;

const cellCount = (value: unknown): number =>
  Array.isArray(value)
    ? value.reduce((sum: number, row: unknown) => sum + (Array.isArray(row) ? row.length : 1), 0)
    : 1;

/** Cells of a range row by row, or the one value; empty ones as null. */
const cellsOf = (value: unknown): unknown[] =>
  (Array.isArray(value) ? value.flat() : [value]).map((cell: unknown) =>
    cell === undefined || cell === "" ? null : cell,
  );
