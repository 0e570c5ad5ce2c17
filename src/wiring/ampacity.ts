import { InputError, NotListedError } from "../units/errors";
import { show } from "../units/show";
import type { ConductorType } from "./conductors";
import table from "./data/ampacity.json";
import types from "./data/protection.json";
import type { WireMetal } from "./groundingSize";

const { columns, adjustment, ambient } = table;
const AMPERES: Record<WireMetal, Record<string, readonly number[]>> = table.ampacity;

/** Air to which the ampacities are listed [°C]. */
export const LISTED_AIR = 30;

/** Ampacity of a conductor and what it was made less by. */
export interface Ampacity {
  /** [A] */
  readonly base: number;
  /** For more than three current-carrying conductors together. */
  readonly adjustment: number;
  /** For the air around. */
  readonly correction: number;
  /** [A] */
  readonly ampacity: number;
}

/** True for a size that has an ampacity listed. */
export const hasAmpacity = (size: string, metal: WireMetal): boolean => size in AMPERES[metal];

/** As listed, for three conductors in air of 30 °C [A]. @throws NotListedError */
export function listedAmpacity(size: string, column: number, metal: WireMetal): number {
  const place = columns.indexOf(column);
  if (place < 0) throw new InputError(`column must be 60, 75 or 90; got ${show(column)}.`);
  const base = AMPERES[metal][size]?.[place];
  if (base === undefined) throw new NotListedError(`No ampacity is listed for a conductor of ${metal} of ${size}.`);
  return base;
}

/** Share that conductors carry with so many current-carrying ones in the raceway. @example adjustmentOf(9) //=> 0.7 */
export const adjustmentOf = (count: number): number => adjustment.find(([most]) => count <= most!)?.[1] ?? 0;

/**
 * Ampacity of conductors in a raceway.
 *
 * @param count of current-carrying conductors in the raceway
 * @param celsius temperature around [°C]; at 30 and below nothing is added
 * @param column insulation temperature of the column: 60, 75 or 90 [°C]
 * @throws InputError for another column; NotListedError for a size or a temperature that the tables have not
 * @example ampacityOf("12", 30, 30, 90).ampacity //=> 13.5
 */
export function ampacityOf(
  size: string,
  count: number,
  celsius: number,
  column: number,
  metal: WireMetal = "copper",
): Ampacity {
  const base = listedAmpacity(size, column, metal);
  const factor = adjustmentOf(count);
  const row = ambient.find(([most]) => celsius <= (most as number))?.[1] as readonly number[] | undefined;
  const correction = row?.[columns.indexOf(column)] ?? 0;
  if (correction === 0) {
    throw new NotListedError(`No correction is listed for ${show(celsius)} °C in the column of ${column} °C.`);
  }
  return { base, adjustment: factor, correction, ampacity: base * factor * correction };
}

/** Temperature of a type's column [°C]. @example columnOf("XHHW", true) //=> 75 */
export const columnOf = (type: Exclude<ConductorType, "bare">, wet: boolean): number =>
  types[wet ? "wet" : "dry"][type];
