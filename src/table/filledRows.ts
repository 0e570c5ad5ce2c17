import { InputError } from "../units/errors";

type Cells = readonly (readonly unknown[])[];

/** True for a cell that says nothing; the number 0 may stand for an empty cell. */
const isNothing = (cell: unknown): boolean => cell === null || cell === undefined || cell === "" || cell === 0;

/** A range without the empty rows at its end: whole columns are a million rows, most of them empty. */
export function filledRows(range: Cells): Cells {
  let count = range.length;
  while (count > 0 && range[count - 1]!.every(isNothing)) count--;
  return count === range.length ? range : range.slice(0, count);
}

/** Counts before anything is read. @throws InputError naming the argument, the limit and the count */
export function refuseMore(count: number, most: number, argument: string, unit: string): void {
  if (count > most) throw new InputError(`${argument} must have at most ${most} ${unit}; got ${count}.`);
}
