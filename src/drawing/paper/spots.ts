/** Steps on the page. */
import type { Spot } from "./scene";

export const spread = (a: Spot, b: Spot): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** Unit direction from one spot to another; to the right where they fall together. */
export function toward(a: Spot, b: Spot): Spot {
  const length = spread(a, b);
  return length > 0 ? [(b[0] - a[0]) / length, (b[1] - a[1]) / length] : [1, 0];
}

export const move = (spot: Spot, way: Spot, by: number): Spot => [spot[0] + way[0] * by, spot[1] + way[1] * by];

/** To the left of a direction, as one sees it on the page. */
export const perpendicular = ([x, y]: Spot): Spot => [y, -x];

export const between = (a: Spot, b: Spot, share: number): Spot => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
];
