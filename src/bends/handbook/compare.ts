import { sin, toRadians, type Degrees } from "../../geometry/angle";
import { NotListedError } from "../../units/errors";
import type { BendForm } from "../shapes/bendForm";
import { offsetShrink, offsetSpacing } from "../shapes/offset";

/** One quantity by the handbook's rounded constant, with sharp corners and with true arcs. All [in]. */
export interface Comparison {
  readonly quantity: string;
  /** Missing when no handbook that was read prints the angle. */
  readonly handbook: number | undefined;
  readonly sharp: number;
  readonly exact: number;
}

const NOT_IN_PRINT = "not in print";

/** Spacing and shrink of an offset the three ways, and the rise that bends at those marks make. All [in], angle [°]. */
export function compareOffset(rise: number, angle: Degrees, radius: number): Comparison[] {
  const spacing = threeWays("Spacing", (form) => offsetSpacing(rise, angle, form), radius);
  return [
    spacing,
    threeWays("Shrink", (form) => offsetShrink(rise, angle, form), radius),
    heightMade("Rise it makes", rise, angle, spacing),
  ];
}

/** One quantity by the handbook where it has one, with sharp corners and with true arcs of a radius [in]. */
export function threeWays(quantity: string, by: (form: BendForm) => number, radius: number): Comparison {
  return { quantity, handbook: inPrint(() => by("table")), sharp: by("sharp"), exact: by(radius) };
}

/** The height [in] that true arcs reach when bent at marks so far apart: what is too much lies on the slant. */
export function heightMade(quantity: string, height: number, angle: Degrees, marks: Comparison): Comparison {
  const made = (apart: number) => height + (apart - marks.exact) * sin(toRadians(angle));
  const { handbook, sharp, exact } = marks;
  return {
    quantity,
    handbook: handbook === undefined ? undefined : made(handbook),
    sharp: made(sharp),
    exact: made(exact),
  };
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
