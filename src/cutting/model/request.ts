import type { CutGrid } from "./grid";

/** Pieces of one length to be cut. */
export interface CutPiece {
  /** Length [steps of the grid], whole, above 0. */
  length: number;
  /** How many, whole, from 0. */
  quantity: number;
}

/** Sticks of one length to cut from. */
export interface CutStock {
  /** Length [steps of the grid], whole, above 0. */
  length: number;
  /** How many there are; left out: as many as needed. */
  quantity?: number;
  /**
   * Price of one [any whole unit, for example cents]. Left out for all sticks to be bought: they count 1 each, so the
   * plan takes the fewest. What is on hand (a quantity is given) costs 0 unless priced.
   */
  cost?: number;
}

/** What to cut, and from what. All lengths in whole steps of the grid. */
export interface CutRequest {
  pieces: readonly CutPiece[];
  stocks: readonly CutStock[];
  /** What the steps are; used in messages. Default 1/16 in. */
  grid?: CutGrid;
  /** Width of the saw cut [steps], from 0. */
  kerf?: number;
  /** Shortest offcut worth keeping [steps]; shorter ones are waste. Default 0: any. */
  minimumOffcut?: number;
  /** Start of the chance used in the search; the same seed gives the same plan. Default 1. */
  seed?: number;
}
