import { drawnRows, type DrawnRows } from "../../src/drawn/drawnRows";
import { readDrawing } from "../../src/drawn/file/readDrawing";
import { planLayers } from "../../src/drawn/layers";
import { USUAL_FITTINGS } from "../../src/shop/fittings/fittingRule";
import { readShoes } from "../../src/shop/shoe/shoeBook";

/** The rows of a drawing by the built-in shoes; layers whose names say no conduit are EMT 1/2. */
export function rowsOf(text: string, unit?: number, name = "test.dxf"): DrawnRows {
  const drawing = readDrawing(text, name);
  const layers = planLayers(drawing, { raceway: "EMT", size: "1/2" });
  return drawnRows(drawing, {
    unit: unit ?? drawing.unit ?? 1,
    layers,
    shoes: readShoes(null),
    fittings: USUAL_FITTINGS,
  });
}

type Point = readonly [number, number, number];

/** A DXF of entities given as group codes and values. */
export const dxfOf = (entities: readonly (string | number)[], before: readonly (string | number)[] = []): string =>
  [0, "SECTION", 2, "HEADER", 9, "$INSUNITS", 70, 1, 0, "ENDSEC", ...before, 0, "SECTION", 2, "ENTITIES", ...entities]
    .concat([0, "ENDSEC", 0, "EOF", ""])
    .join("\n");

/** A 3-D polyline. */
export const polyline = (layer: string, ...points: Point[]): (string | number)[] => [
  ...[0, "POLYLINE", 8, layer, 70, 8],
  ...points.flatMap(([x, y, z]) => [0, "VERTEX", 8, layer, 10, x, 20, y, 30, z, 70, 32]),
  ...[0, "SEQEND", 8, layer],
];

export const line = (layer: string, from: Point, to: Point): (string | number)[] => [
  ...[0, "LINE", 8, layer, 10, from[0], 20, from[1], 30, from[2], 11, to[0], 21, to[1], 31, to[2]],
];
