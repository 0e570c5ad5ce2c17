import type { Box, Spot } from "./scene";

/** How much two boxes lie over each other, as an area; 0 when they only touch. */
export function overlap(a: Box, b: Box): number {
  const width = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const height = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return width > 0 && height > 0 ? width * height : 0;
}

/** Part of the line from `from` to `to` that lies in a box, as shares of the line; undefined when none does. */
export function clipLine(from: Spot, to: Spot, box: Box): { enter: number; leave: number } | undefined {
  let [enter, leave] = [0, 1];
  const sides: [start: number, change: number, least: number, most: number][] = [
    [from[0], to[0] - from[0], box.left, box.right],
    [from[1], to[1] - from[1], box.top, box.bottom],
  ];
  for (const [start, change, least, most] of sides) {
    if (change === 0) {
      if (start <= least || start >= most) return undefined;
      continue;
    }
    const ends = [(least - start) / change, (most - start) / change];
    enter = Math.max(enter, Math.min(...ends));
    leave = Math.min(leave, Math.max(...ends));
  }
  return enter < leave ? { enter, leave } : undefined;
}

/** Box around spots. */
export function around(spots: readonly Spot[]): Box {
  const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}
