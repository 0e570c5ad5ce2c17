import type { Spot } from "./scene";

/** A plane of the shop, in inches: x right, y up. */
export type Flat = readonly [x: number, y: number];

export interface Room {
  /** Where the drawing may lie on the page. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly maxHeight: number;
  /** Most page units to an inch, so that a small thing does not fill the page. */
  readonly maxScale?: number;
}

export interface PageFit {
  /** Page units to the inch, the same both ways. */
  readonly scale: number;
  readonly bottom: number;
  toPage(point: Flat): Spot;
}

/** The largest scale at which all points lie in the room, and the drawing in its middle. */
export function fitTo(points: readonly Flat[], room: Room): PageFit {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const [width, height] = [room.right - room.left, room.maxHeight];
  const scale = Math.min(width / (right - left), height / (high - low), room.maxScale ?? Infinity);
  const finite = Number.isFinite(scale) ? scale : 1;
  const shift = room.left + (width - (right - left) * finite) / 2;
  return {
    scale: finite,
    bottom: room.top + (high - low) * finite,
    toPage: ([x, y]) => [shift + (x - left) * finite, room.top + (high - y) * finite],
  };
}
