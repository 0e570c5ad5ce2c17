/**
 * How many letters must be put in, left out, changed or swapped with their neighbor (Damerau and Levenshtein).
 * @example lettersApart("srtap", "strap") //=> 1
 */
export function lettersApart(from: string, to: string): number {
  const table = Array.from({ length: from.length + 1 }, (_, row) =>
    Array.from({ length: to.length + 1 }, (_, column) => (row === 0 ? column : column === 0 ? row : 0)),
  );
  const at = (row: number, column: number) => table[row]![column]!;
  for (let row = 1; row <= from.length; row++) {
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1] ? 0 : 1;
      const swapped = row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      table[row]![column] = Math.min(
        at(row - 1, column) + 1,
        at(row, column - 1) + 1,
        at(row - 1, column - 1) + same,
        swapped ? at(row - 2, column - 2) + 1 : Infinity,
      );
    }
  }
  return at(from.length, to.length);
}
