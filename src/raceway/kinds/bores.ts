import type { DimensionRows } from "./record";

/** Outside, bore and area of another kind's table: what the code's table 4 gives for both alike. */
export const bores = (rows: DimensionRows): DimensionRows =>
  Object.fromEntries(
    Object.entries(rows).map(([size, { outsideDiameter, insideDiameter, area }]) => [
      size,
      {
        ...(outsideDiameter ? { outsideDiameter: { ...outsideDiameter, source: "EMT aluminum" } } : {}),
        insideDiameter,
        area,
      },
    ]),
  );
