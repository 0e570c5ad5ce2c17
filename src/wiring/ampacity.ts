import { InputError, NotListedError } from "../units/errors";
import { show } from "../units/show";
import table from "./data/ampacity.json";

const { copper, columns, adjustment, ambient } = table;
const AMPERES: Record<string, readonly number[]> = copper;

/** Ampacity of a copper conductor and what it was made less by. */
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

/**
 * Ampacity of copper conductors in a raceway.
 *
 * @param count of current-carrying conductors in the raceway
 * @param celsius temperature around [°C]; at 30 and below nothing is added
 * @param column insulation temperature of the column: 60, 75 or 90 [°C]
 * @throws InputError for another column; NotListedError for a size or a temperature that the tables have not
 * @example ampacityOf("12", 30, 30, 90).ampacity //=> 13.5
 */
export function ampacityOf(size: string, count: number, celsius: number, column: number): Ampacity {
  const place = columns.indexOf(column);
  if (place < 0) throw new InputError(`column must be 60, 75 or 90; got ${show(column)}.`);
  const base = AMPERES[size]?.[place];
  if (base === undefined) throw new NotListedError(`No ampacity is listed for a copper conductor of ${size}.`);
  const factor = adjustment.find(([most]) => count <= most!)?.[1] ?? 0;
  const row = ambient.find(([most]) => celsius <= (most as number))?.[1] as readonly number[] | undefined;
  const correction = row?.[place] ?? 0;
  if (correction === 0) {
    throw new NotListedError(`No correction is listed for ${show(celsius)} °C in the column of ${column} °C.`);
  }
  return { base, adjustment: factor, correction, ampacity: base * factor * correction };
}
