import type { StockKind } from "../model/kinds";
import type { Branch } from "../model/packing";
import type { StopReason } from "../model/work";

/** Pieces of one length in a pattern. */
export interface Cuts {
  length: number;
  count: number;
}

/** Sticks cut alike: one line for the saw. */
export interface CutPattern {
  /** Index into `stocks` of the plan. */
  stock: number;
  /** How many sticks are cut this way. */
  count: number;
  /** Longest first. */
  cuts: Cuts[];
  /** What is left of each stick after the last cut [steps]. */
  remnant: number;
}

/** What proves the bound; verify.ts states the argument. */
export interface Certificate {
  /**
   * Sticks that some best plan has, in the order they were taken out: a piece length, and the longest that fits beside
   * it (0: none does). Only where one kind of stick is as good as any other.
   */
  pairs: { lengths: [number, number]; count: number }[];
  /** Each list prices the piece lengths of the request (longest first) in whole numbers; about the other pieces. */
  prices: number[][];
  /** That one stick fewer will not do for the other pieces, where the lists do not prove it. */
  branches?: Branch;
  /** The same about plans with a longer rest: that there are none. Empty unless that is proven. */
  rest: { pairs: Certificate["pairs"]; prices: number[][] };
}

/** A cutting plan. All lengths in steps of the grid. */
export interface CutPlan {
  /** The kinds of stock of the request, put in order; `patterns` point into it. */
  stocks: StockKind[];
  /** Most used first. */
  patterns: CutPattern[];
  /** Sticks taken of each kind of stock. */
  used: number[];
  /** Sticks to be bought: of the stocks without a quantity. */
  sticks: number;
  /** Sticks taken from what is on hand: of the stocks with a quantity. */
  onHand: number;
  /** Pieces for which there is no stick, longest first. Empty unless all stocks have a quantity. */
  missing: Cuts[];
  /** How many more of the longest sticks would hold them. */
  missingSticks: number;
  /** How these would be cut. */
  missingPatterns: Pick<CutPattern, "count" | "cuts">[];
  /** Sum of the costs of the sticks. Unpriced sticks to be bought count 1, so this is their number then. */
  cost: number;
  /** No plan at all costs less than this. */
  bound: number;
  /** True when no plan costs less than this one (and none leaves fewer pieces without a stick). */
  proven: boolean;
  /** Longest remnant of a stick cut, when at least the minimum offcut; else 0. */
  longestRemnant: number;
  /**
   * True when no plan of the same cost that takes no more sticks without cost from what is on hand leaves a longer rest on
   * any of its sticks, bought or on hand.
   */
  longestProven: boolean;
  /** Remnants worth keeping, longest first. */
  remnants: number[];
  /** Length of all sticks taken. */
  stockLength: number;
  /** Length of all pieces placed. */
  pieceLength: number;
  /** Kerf and remnants too short to keep. */
  waste: number;
  /** Waste over stock length. */
  wasteShare: number;
  certificate: Certificate;
  /** What ended the search. */
  stopped: StopReason;
  /** Elementary steps it took: the same on every machine. */
  steps: number;
}

/** How far a search is. */
export interface CutProgress {
  cost: number;
  bound: number;
  /** Share of the allowed steps used, 0 to 1. */
  share: number;
  doing: "fewest sticks" | "fewest offcuts" | "longest remnant" | "fewest patterns";
}
