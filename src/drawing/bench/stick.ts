import { HOOK_WORDS } from "./hookWords";
import type { LineUpSymbol } from "../paper/symbols";

/** A mark on a straight stick. */
export interface StickMark {
  readonly bend: number;
  /** From the datum end [in]. */
  readonly distance: number;
  readonly lineUp: LineUpSymbol;
  /** What it is called, where its symbol's name does not say enough: `45° notch`. */
  readonly lineUpWords?: string;
  readonly hook: keyof typeof HOOK_WORDS;
}

/** A piece before it is bent. */
export interface StickPicture {
  readonly name: string;
  /** [in] */
  readonly cutLength: number;
  readonly marks: readonly StickMark[];
  readonly coupledBefore?: boolean;
  readonly coupledAfter?: boolean;
}

/** The cells of a schedule that a stick is drawn from. */
export interface StickRow {
  readonly Run: unknown;
  readonly Piece: unknown;
  readonly "Cut length": unknown;
  readonly Bend: unknown;
  readonly Mark: unknown;
  readonly "Line up": unknown;
  readonly Hook: unknown;
}

/** The stick that the schedule's rows of one piece tell of. */
export function stickOf(rows: readonly [StickRow, ...StickRow[]]): StickPicture {
  return {
    name: `${String(rows[0].Run)} piece ${String(rows[0].Piece)}`,
    cutLength: Number(rows[0]["Cut length"]),
    marks: rows
      .filter(({ Bend }) => Bend !== "")
      .map((row) => ({
        bend: Number(row.Bend),
        distance: Number(row.Mark),
        lineUp: row["Line up"] as LineUpSymbol,
        hook: row.Hook as keyof typeof HOOK_WORDS,
      })),
  };
}
