/** Units a drawing may be in, and how many inches each is; the international foot and inch. */
export const DRAWING_UNITS = {
  inches: 1,
  feet: 12,
  millimeters: 1 / 25.4,
  centimeters: 1 / 2.54,
  meters: 1 / 0.0254,
} as const;

export type DrawingUnit = keyof typeof DRAWING_UNITS;

/** The name of a unit by its inches; undefined for one that is none of these. */
export const unitNamed = (inches: number | null): DrawingUnit | undefined =>
  (Object.keys(DRAWING_UNITS) as DrawingUnit[]).find((name) => DRAWING_UNITS[name] === inches);
