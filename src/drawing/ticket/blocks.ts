import type { Scene } from "../paper/scene";
import type { TicketLine } from "./ticketLines";

/** A drawing laid over a block's rows: its column and the row whose top it hangs from, its size [pt]. */
export interface BlockPicture {
  readonly line: number;
  readonly column: number;
  readonly width: number;
  readonly height: number;
  /** How many pixels wide it is painted. */
  readonly pixels: number;
  readonly scene: Scene;
}

/** Rows that stay on one page, counted from the block's first. */
export interface TicketBlock {
  readonly lines: readonly TicketLine[];
  readonly pictures?: readonly BlockPicture[];
}

/** A picture hangs so far below the top of its row, whose line it would hide else [pt]. */
export const PICTURE_DOWN = 2;
/** Pixels to the point: 216 to the inch, twice what a screen shows. */
const SHARPNESS = 3;
/** Pixels to the module of a code, whole ones so that its edges are sharp. */
const MODULE = 6;

/** A drawing so wide on paper, at a row and column. */
export function picture(scene: Scene, width: number, { line = 0, column = 0 } = {}): BlockPicture {
  const height = (scene.height * width) / scene.width;
  return { line, column, width, height, pixels: Math.round(width * SHARPNESS), scene };
}

/** A code of a piece, each of its modules whole pixels wide. */
export const codePicture = (scene: Scene, width: number, at: { line?: number; column?: number }): BlockPicture => ({
  ...picture(scene, width, at),
  pixels: scene.width * MODULE,
});
