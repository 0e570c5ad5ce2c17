import type { CutPattern, CutPlan } from "../../cutting";
import type { CutLabels, TakenPieces } from "./cutLabels";
import type { Drop, DropNames } from "./drops";
import { sawOrder } from "./sawOrder";

/** One way that sticks are cut, in its place at the saw. */
export interface CutLine {
  /** Its cuts in their order. */
  readonly pattern: CutPattern;
  /** The pieces that each of the cuts is for. */
  readonly taken: readonly (readonly TakenPieces[])[];
  /** What is left of each stick; undefined when that is nothing. */
  readonly drop: Drop | undefined;
}

/** What a plan's lines name. */
export interface LineNames {
  readonly labels: CutLabels;
  readonly drops: DropNames;
  /** Shortest drop that is kept [steps]. */
  readonly keep: number;
}

/** The lines of a plan in the order of sawing, with what each cut is for and what is left. */
export const cutLines = (plan: CutPlan, { labels, drops, keep }: LineNames): CutLine[] =>
  sawOrder(plan).map((pattern) => ({
    pattern,
    taken: pattern.cuts.map((cut) => labels.take(cut.length, cut.count * pattern.count)),
    drop: drops.of(pattern, keep),
  }));
