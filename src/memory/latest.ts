import { cellsKey } from "./cells";

/**
 * Work on plain cells that is asked for again and again: the latest answers are kept by their cells, an error is not.
 *
 * @param most answers that are kept
 */
export function rememberLatest<Cells extends unknown[], T>(
  work: (...cells: Cells) => T,
  most: number,
): (...cells: Cells) => T {
  const known = new Map<string, T>();
  return (...cells) => {
    const key = cellsKey(cells);
    const answer = known.has(key) ? (known.get(key) as T) : work(...cells);
    known.delete(key);
    known.set(key, answer);
    if (known.size > most) known.delete(known.keys().next().value as string);
    return answer;
  };
}
