import { InputError } from "../../units/errors";
import { show } from "../../units/show";
import table from "../data/pulling.json";
import type { WireMetal } from "../groundingSize";
import { circularMils } from "../wireSizes";

const { stress, many, most } = table;

/** How cables lie in a raceway. */
export type Lay = "single" | "cradled" | "triangular" | "complex";

/** Four cables and more. */
const COMPLEX = 1.4;

/**
 * Weight correction factor: by how much cables press more on the raceway than their weight says.
 *
 * @param ratio of the raceway's bore to one cable's diameter
 * @throws InputError where three cables do not fit side by side
 * @example weightCorrection("triangular", 3) //=> 1.1547
 */
export function weightCorrection(lay: Lay, ratio: number): number {
  if (lay === "single") return 1;
  if (lay === "complex") return COMPLEX;
  if (!(ratio > 2)) {
    throw new InputError(`the bore must be more than 2 times the cable's diameter; it is ${show(ratio, 2)} times.`);
  }
  const part = 1 / (ratio - 1);
  return lay === "cradled" ? 1 + (4 / 3) * part ** 2 : 1 / Math.sqrt(1 - part ** 2);
}

/**
 * Sidewall pressure where cables leave a bend [lb/ft].
 *
 * @param tension leaving the bend [lb] @param radius [in]
 */
export function sidewallPressure(lay: Lay, tension: number, radius: number, correction: number): number {
  const perFoot = tension / (radius / 12);
  if (lay === "cradled") return ((3 * correction - 2) / 3) * perFoot;
  return lay === "triangular" ? (correction / 2) * perFoot : perFoot;
}

/**
 * Most tension on conductors pulled by their metal [lb].
 *
 * @example pullingLimit(4, "4/0", "copper") //=> 5416.96
 */
export function pullingLimit(count: number, size: string, metal: WireMetal): number {
  const share = count > 3 ? many : 1;
  return Math.min(most, share * count * stress[metal] * circularMils(size));
}

/** What jams three cables at a bend: the ratio of bore to cable at which they slip into a row. */
export const JAM = { from: 2.8, to: 3.2 };
