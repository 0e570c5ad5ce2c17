import { refuseMore } from "../../table/filledRows";
import { InputError, NotListedError, quoteValue } from "../../units/errors";
import { mixedNumber } from "../../units/mixedNumber";
import table from "../data/pullBoxes.json";
import { inWords } from "../inWords";
import { commonRule, type Edition, type CodeRule } from "./rules";
import { readTradeSize, type TradeSize } from "../tradeSize";

/**
 * What a box is measured for: a straight pull (its length), an angle or U pull or splices (from the wall with the
 * entries to the one across), or the space between two entries of the same conductors.
 */
export type PullKind = "straight" | "angle" | "between";

const KINDS = new Map<string, PullKind>([
  ["straight", "straight"],
  ["angle", "angle"],
  ["u", "angle"],
  ["upull", "angle"],
  ["splice", "angle"],
  ["between", "between"],
]);

/** More entries than a wall of a box has. */
const MOST_ENTRIES = 2000;

/** Reads a kind of pull; an omitted one is straight. @throws InputError */
export function readPullKind(value: unknown, argument = "pull"): PullKind {
  if (value === null || value === undefined || value === "") return "straight";
  const word = String(value)
    .toLowerCase()
    .replace(/[^a-z]/g, "");
  const kind = KINDS.get(word);
  if (kind !== undefined) return kind;
  throw new InputError(
    `${argument} must be ${inWords(["straight", "angle", "U", "splice", "between"])}; got ${quoteValue(value)}.`,
  );
}

/**
 * Reads the entries of one wall: each row of the range is a row of entries, each cell a trade size; empty cells may come as 0.
 *
 * @throws InputError naming the cell, or when there is no entry
 */
export function readEntries(value: unknown, argument = "entries"): TradeSize[][] {
  const cells = Array.isArray(value) ? value.map((row: unknown) => (Array.isArray(row) ? row : [row])) : [[value]];
  refuseMore(
    cells.reduce((sum, row) => sum + row.length, 0),
    MOST_ENTRIES,
    argument,
    "cells",
  );
  const single = cells.length === 1 && cells[0]?.length === 1;
  const rows = cells
    .map((row, r) =>
      row.flatMap((cell: unknown, c) =>
        cell === null || cell === undefined || cell === "" || cell === 0
          ? []
          : [readTradeSize(cell, single ? argument : `${argument} row ${r + 1}, column ${c + 1}`)],
      ),
    )
    .filter((row) => row.length > 0);
  if (rows.length === 0) throw new InputError(`${argument} must hold at least one trade size; all cells are empty.`);
  return rows;
}

/**
 * Least dimension of a box [in], by trade sizes.
 *
 * @param rows entries of one wall, row by row; each row is reckoned alone and the largest result stands
 * @example pullBoxDimension([["3", "2"]], "angle") //=> 20
 */
export function pullBoxDimension(rows: readonly (readonly TradeSize[])[], kind: PullKind): number {
  return Math.max(...rows.map((row) => rowDimension(row.map(inInches), kind)));
}

const inInches = (size: TradeSize): number => mixedNumber(size, "size");

function rowDimension(sizes: readonly number[], kind: PullKind): number {
  const largest = Math.max(...sizes);
  const others = sizes.reduce((sum, size) => sum + size, 0) - largest;
  return table[kind] * largest + (kind === "angle" ? others : 0);
}

const TO_COVER: Record<string, number> = table.toCover;

/**
 * Least distance from a wall with entries to a removable cover opposite it [in], for angle pulls: the exception of 314.28(A)(2).
 *
 * @param size of the largest conductor, AWG or kcmil
 * @throws NotListedError for conductors smaller than 4 AWG, which no box is measured for, and above 1250 kcmil
 * @example distanceToCover("250") //=> 4.5
 */
export function distanceToCover(size: string): number {
  const distance = TO_COVER[size];
  if (distance !== undefined) return distance;
  throw new NotListedError(`No distance to a cover is listed for ${size}; sizes are 4 AWG to 1250 kcmil.`);
}

/** The code's rule for a kind of pull. */
export const pullBoxRule = (kind: PullKind, edition: Edition): CodeRule =>
  commonRule(kind === "straight" ? "straightPull" : "anglePull", edition);
