import table from "./data/minimumRadii.json";
import type { Sourced } from "./sources";
import type { TradeSize } from "./tradeSize";

/** Columns of the code's table: bends by one-shot or full-shoe benders, and all other bends. */
export type BendMethod = "one-shot" | "other";

/** Least centerline radius with its source [in]. */
export const minimumRadiusRow = (size: TradeSize, method: BendMethod): Sourced => table.rows[size][method];

/**
 * Least centerline radius of a bend [in]: NEC chapter 9, table 2.
 *
 * @example minimumRadius("3/4", "one-shot") //=> 4.5
 */
export const minimumRadius = (size: TradeSize, method: BendMethod): number => minimumRadiusRow(size, method).value;
