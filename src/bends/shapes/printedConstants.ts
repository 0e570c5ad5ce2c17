import { SAME_ANGLE } from "../../units/tolerances";
import type { Degrees } from "../../geometry/angle";
import { NotListedError } from "../../units/errors";
import { show, showDegrees } from "../../units/show";
import tables from "./data/printedConstants.json";

/** The rounded constants the trade's handbooks print for one angle. A field is missing where none was found in print. */
export interface PrintedConstants {
  /** Spacing of an offset's marks per inch of rise. */
  readonly multiplier?: number;
  /** Shrink of an offset per inch of rise. */
  readonly shrink?: number;
  /** From center mark to outer mark of a three-bend saddle per inch of height; the angle is the center bend's. */
  readonly saddleMultiplier?: number;
  /** How far the center mark moves ahead per inch of height; the angle is the center bend's. */
  readonly saddleShrink?: number;
}

type Name = keyof PrintedConstants;
interface Row {
  readonly angle: Degrees;
  readonly multiplier: number;
  readonly shrink?: number;
}

const rowsOf = (name: Name): readonly Row[] => (name.startsWith("saddle") ? tables.saddle : tables.offset);
const cell = (row: Row, name: Name): number | undefined => (/multiplier/i.test(name) ? row.multiplier : row.shrink);

/** Constants in print for an angle [°]; undefined when no handbook that was read prints the angle. */
export function printedConstants(angle: Degrees): PrintedConstants | undefined {
  const found = (rows: readonly Row[]) => rows.find((row) => Math.abs(row.angle - angle) < SAME_ANGLE);
  const [offset, saddle] = [found(tables.offset), found(tables.saddle)];
  if (!offset && !saddle) return undefined;
  return {
    multiplier: offset?.multiplier,
    shrink: offset?.shrink,
    saddleMultiplier: saddle?.multiplier,
    saddleShrink: saddle?.shrink,
  };
}

const IN_WORDS: Readonly<Record<Name, string>> = {
  multiplier: "offset multiplier",
  shrink: "offset shrink",
  saddleMultiplier: "saddle spacing",
  saddleShrink: "saddle shrink",
};

/** Where one constant stands in print: the angles that have it [°] with their values. */
export function printedColumn(name: Name): { angle: Degrees; value: number }[] {
  return rowsOf(name).flatMap((row) => {
    const value = cell(row, name);
    return value === undefined ? [] : [{ angle: row.angle, value }];
  });
}

/**
 * One printed constant.
 *
 * @throws NotListedError naming the angles that are in print
 * @example printed("multiplier", 22.5) //=> 2.6
 */
export function printed(name: Name, angle: Degrees): number {
  const value = printedConstants(angle)?.[name];
  if (value !== undefined) return value;
  const angles = printedColumn(name).map((row) => show(row.angle));
  throw new NotListedError(
    `The printed tables give no ${IN_WORDS[name]} for ${showDegrees(angle, 6)}; they have ${angles.join(", ")}°. ` +
      `Leave radius out for sharp corners, or give the shoe's radius.`,
  );
}
