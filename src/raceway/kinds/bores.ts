import type { DimensionRows } from "./record";

/**
 * Outside, bore and area of another kind's table: what the code's table 4 gives for both alike.
 *
 * @param source where it is said that the outside is the same too
 */
export const bores = (rows: DimensionRows, source: string): DimensionRows =>
  Object.fromEntries(
    Object.entries(rows).map(([size, { outsideDiameter, insideDiameter, area }]) => [
      size,
      {
        ...(outsideDiameter ? { outsideDiameter: { ...outsideDiameter, source } } : {}),
        insideDiameter,
        area,
      },
    ]),
  );
