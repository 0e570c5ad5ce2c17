import { InputError } from "../units/errors";
import { show } from "../units/show";
import table from "./data/pulling.json";
import type { WireMetal } from "./groundingSize";
import { circularMils } from "./wireSizes";

const GRIPS: Record<string, number> = table.gripsOf;

/** How cables lie in a raceway: one alone; two side by side; three in a cradle or a triangle; four in a diamond; more, or unlike ones. */
export const LAYS = ["single", "pair", "cradled", "triangular", "diamond", "complex"] as const;

export type Lay = (typeof LAYS)[number];

/** How so many cables lie where nobody says it: three cradled, which presses most. */
export const usualLay = (count: number): Lay => (["single", "pair", "cradled"] as const)[count - 1] ?? "complex";

/**
 * Weight correction factor: by how much cables press more on the raceway than their weight says.
 *
 * Two side by side: no formula was read. Derived: their centers lie (D − d)/2 from the raceway's and d apart, so each presses on the
 * wall at an angle whose sine is d/(D − d) from straight down, and both together by their weight over its cosine.
 *
 * @param ratio of the raceway's bore to one cable's diameter
 * @throws InputError where the cables do not fit side by side
 * @example weightCorrection("triangular", 3) //=> 1.1547
 */
export function weightCorrection(lay: Lay, ratio: number): number {
  if (lay === "single") return 1;
  if (lay === "complex") return table.complex;
  const part = 1 / (fitting(ratio) - 1);
  if (lay === "cradled") return 1 + (4 / 3) * part ** 2;
  return lay === "diamond" ? 1 + 2 * part ** 2 : 1 / Math.sqrt(1 - part ** 2);
}

function fitting(ratio: number): number {
  if (ratio > 2) return ratio;
  throw new InputError(`the bore must be more than 2 times the cable's diameter; it is ${show(ratio, 2)} times.`);
}

/**
 * Sidewall pressure where cables leave a bend [lb/ft]: on the cable that is pressed most. Two side by side share it, as the lower
 * two of a triangle do (derived).
 *
 * @param tension leaving the bend [lb] @param radius [in]
 */
export function sidewallPressure(lay: Lay, tension: number, radius: number, correction: number): number {
  const perFoot = tension / (radius / 12);
  if (lay === "cradled") return ((3 * correction - 2) / 3) * perFoot;
  if (lay === "diamond") return (correction - 1) * perFoot;
  return lay === "triangular" || lay === "pair" ? (correction / 2) * perFoot : perFoot;
}

/**
 * Clearance between cables and the top of the raceway [in].
 *
 * @param bore [in] @param diameter of one cable [in]
 * @returns undefined for lays that have no formula
 * @throws InputError where the cables do not fit side by side
 * @example clearance("triangular", 3, 1) //=> 1.00003
 */
export function clearance(lay: Lay, bore: number, diameter: number): number | undefined {
  if (lay === "single") return bore - diameter;
  if (lay === "complex" || lay === "pair") return undefined;
  const part = 1 / (fitting(bore / diameter) - 1);
  if (lay === "diamond") return bore - diameter - 2 * diameter * part;
  return bore / 2 - 1.366 * diameter + ((bore - diameter) / 2) * Math.sqrt(1 - part ** 2);
}

/**
 * Most tension on conductors pulled by their metal [lb].
 *
 * @example pullingLimit(4, "4/0", "copper") //=> 5416.96
 */
export function pullingLimit(count: number, size: string, metal: WireMetal): number {
  const share = count > 3 ? table.many : 1;
  return Math.min(table.most, share * count * table.stress[metal] * circularMils(size));
}

/** Most tension on cables pulled by a grip over them [lb]. @example gripLimit(3) //=> 2000 */
export const gripLimit = (count: number): number => table.grip * GRIPS[String(Math.min(4, count))]!;

/** What jams three cables at a bend: the ratio of bore to cable at which they slip into a row. */
export const mayJam = (count: number, ratio: number): boolean =>
  count === 3 && ratio >= table.jam.from && ratio <= table.jam.to;
