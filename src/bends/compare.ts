import { NotListedError } from "../units/errors";
import type { BendForm } from "./bendForm";
import { offsetShrink, offsetSpacing } from "./offset";
import { saddleShrink, saddleSpacing } from "./saddle";

/** One quantity by the handbook's rounded constant, with sharp corners and with true arcs. All [in]. */
export interface Comparison {
  readonly quantity: string;
  /** Missing when no handbook that was read prints the angle. */
  readonly handbook: number | undefined;
  readonly sharp: number;
  readonly exact: number;
}

const NOT_IN_PRINT = "not in print";

/** Spacing and shrink of an offset, the three ways. @param rise [in] @param angle [°] @param radius [in] */
export const compareOffset = (rise: number, angle: number, radius: number): Comparison[] => [
  compare("Spacing", (form) => offsetSpacing(rise, angle, form), radius),
  compare("Shrink", (form) => offsetShrink(rise, angle, form), radius),
];

/** Spacing and shrink of a three-bend saddle, the three ways; the crest clears the height. */
export const compareSaddle = (height: number, angle: number, radius: number): Comparison[] => [
  compare("Center to outer mark", (form) => saddleSpacing(height, angle, form), radius),
  compare("Center mark ahead", (form) => saddleShrink(height, angle, form), radius),
];

function compare(quantity: string, by: (form: BendForm) => number, radius: number): Comparison {
  return { quantity, handbook: inPrint(() => by("table")), sharp: by("sharp"), exact: by(radius) };
}

function inPrint(read: () => number): number | undefined {
  try {
    return read();
  } catch (error) {
    if (error instanceof NotListedError) return undefined;
    throw error;
  }
}

/** Comparisons as a table with a header row; how far the handbook is off is its value less that of true arcs. */
export const comparisonTable = (rows: readonly Comparison[]): (string | number)[][] => [
  ["Quantity", "Handbook", "Sharp corners", "True arcs", "Handbook off by"],
  ...rows.map(({ quantity, handbook, sharp, exact }) => [
    quantity,
    handbook ?? NOT_IN_PRINT,
    sharp,
    exact,
    handbook === undefined ? NOT_IN_PRINT : handbook - exact,
  ]),
];
