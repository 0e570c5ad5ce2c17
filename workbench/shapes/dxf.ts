import { Colors, DxfWriter, point3d, Units } from "@tarikjabiri/dxf";
import { pullPath } from "../../src/route/problems";
import type { BuiltRun, Piece } from "../../src/shop/run/builtRun";
import { plainName } from "./names";
import { curveOf, type FlatPart, flatShape, isFlat, pieceCurve } from "./pieceShape";

/** The centerlines of runs as DXF [in]: x east, y north, z up from each run's datum end; a layer for each size. */
export function runsDxf(runs: readonly BuiltRun[]): string {
  const dxf = drawing();
  for (const { run, pulls } of runs) {
    const layer = plainName(`${run.raceway} ${run.size.replace("/", "-")}`);
    if (!dxf.tables.layerTable.exist(layer)) dxf.addLayer(layer, Colors.White, "Continuous");
    for (const { pull } of pulls) curve(dxf, curveOf(pullPath(pull)), layer);
  }
  return dxf.stringify();
}

/** The shape of a piece as DXF [in]: true arcs where it lies in one plane, else a curve of short lines in space. */
export function pieceDxf(piece: Piece): string {
  const dxf = drawing();
  if (!isFlat(piece)) curve(dxf, pieceCurve(piece), "0");
  else for (const part of flatShape(piece)) drawPart(dxf, part);
  return dxf.stringify();
}

/** Lines and arcs, which every program that reads DXF knows. */
function drawPart(dxf: DxfWriter, part: FlatPart): void {
  if ("from" in part) dxf.addLine(point3d(...part.from, 0), point3d(...part.to, 0));
  else dxf.addArc(point3d(...part.center, 0), part.radius, part.startAngle, part.endAngle);
}

function drawing(): DxfWriter {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Inches);
  return dxf;
}

function curve(dxf: DxfWriter, points: ReturnType<typeof pieceCurve>, layerName: string): void {
  dxf.addPolyline3D(
    points.map(([x, y, z]) => ({ point: point3d(x, y, z) })),
    { layerName },
  );
}
