/**
 * Places for labels that belong to positions on a line, each as near its own as can be and no two closer than `gap`.
 * Positions come in rising order; so do the places. Where they cannot all fit between `least` and `most`, they are
 * spaced evenly.
 *
 * @example spreadOut([10, 12, 80], 20, 0, 100) //=> [1, 21, 80]
 */
export function spreadOut(positions: readonly number[], gap: number, least: number, most: number): number[] {
  const count = positions.length;
  const step = count > 1 ? Math.min(gap, (most - least) / (count - 1)) : gap;
  /** Neighbors that had to move together, around the middle of what they wanted. */
  const groups: { first: number; size: number; wanted: number }[] = [];
  const startOf = ({ size, wanted }: { size: number; wanted: number }): number =>
    Math.max(least, Math.min(wanted / size, most - (size - 1) * step));
  positions.forEach((position, index) => {
    let group = { first: index, size: 1, wanted: position };
    for (let last = groups.at(-1); last && startOf(last) + last.size * step > startOf(group); last = groups.at(-1)) {
      groups.pop();
      // Each member wants to stand `place · step` after the group's start.
      const wanted = last.wanted + group.wanted - group.size * last.size * step;
      group = { first: last.first, size: last.size + group.size, wanted };
    }
    groups.push(group);
  });
  return groups.flatMap((group) => Array.from({ length: group.size }, (_, place) => startOf(group) + place * step));
}
