import { SAME_COUNT } from "../units/tolerances";
import table from "./data/risers.json";
import type { WireMetal } from "./groundingSize";
import { circularMils } from "./wireSizes";

const ROWS = table.rows as [upTo: string, copper: number, aluminum: number][];

/**
 * How far apart supports of conductors in a vertical raceway may be [in]: NEC 300.19(A) and its table.
 *
 * @param size AWG or kcmil, 18 to 1250
 * @example riserSpacing("4/0", "copper") //=> 960
 */
export function riserSpacing(size: string, metal: WireMetal): number {
  const [, copper, aluminum] = ROWS.find(([upTo]) => circularMils(size) <= circularMils(upTo)) ?? ROWS.at(-1)!;
  return 12 * (metal === "copper" ? copper : aluminum);
}

/**
 * Supports of the conductors in a vertical raceway: none up to the spacing; above it one at the top, and others below it no farther
 * apart.
 *
 * @param rise [in] @example riserSupports(1200, 960) //=> 2
 */
export const riserSupports = (rise: number, spacing: number): number =>
  rise <= spacing * (1 + SAME_COUNT) ? 0 : Math.ceil(rise / spacing - SAME_COUNT);
