/** Pieces of one length. */
export interface PieceCount {
  /** [in] */
  readonly length: number;
  readonly count: number;
}

/** A tape reads sixteenths: pieces are cut to the nearest one. */
const STEPS = 16;

/**
 * Sticks that pieces are cut from, best fit first, longest piece first. Saw kerf aside.
 *
 * @param stick [in]
 */
export function countSticks(pieces: readonly PieceCount[], stick: number): number {
  const room = Math.round(stick * STEPS);
  /** Opened sticks by what is left of them, in sixteenths. */
  const left = new Array<number>(room + 1).fill(0);
  const sorted = pieces
    .map(({ length, count }) => ({ length: Math.min(room, Math.round(length * STEPS)), count }))
    .sort((a, b) => b.length - a.length);
  let sticks = 0;
  for (const { length, count } of sorted) {
    for (let piece = 0; piece < count; piece++) {
      let fit = length;
      while (fit <= room && left[fit] === 0) fit++;
      if (fit > room) sticks++;
      else left[fit]!--;
      const rest = (fit > room ? room : fit) - length;
      left[rest]!++;
    }
  }
  return sticks;
}
