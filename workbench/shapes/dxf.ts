import { Colors, DxfWriter, point3d, PolylineFlags, Units } from "@tarikjabiri/dxf";
import { add, ORIGIN } from "../../src/geometry/vector";
import { placedPulls } from "../../src/shop/run/placed";
import type { BuiltRun, Piece } from "../../src/shop/run/builtRun";
import { differentNames, plainName } from "./names";
import { curveOf, type FlatPart, flatShape, isFlat, pieceCurve } from "./pieceShape";

/**
 * The centerlines of runs as DXF [in]: x east, y north, z up of the job's zero. A layer for each run, which says its name,
 * raceway and size; a 3-D polyline for each pull, a point for each box.
 */
export function runsDxf(runs: readonly BuiltRun[]): string {
  const dxf = inchDrawing();
  drawRuns(dxf, runs);
  return dxf.stringify();
}

/** Draws runs into a drawing. */
export function drawRuns(dxf: DxfWriter, runs: readonly BuiltRun[]): void {
  const ownName = differentNames();
  for (const built of runs) {
    const { name, raceway, size } = built.run;
    const layerName = `${ownName(name)}_${plainName(raceway)}_${plainName(size.replace("/", "-"))}`;
    dxf.addLayer(layerName, Colors.White, "Continuous");
    const paths = placedPulls(built);
    for (const path of paths) curve(dxf, curveOf(path), layerName);
    built.pulls.forEach(({ pull: { end, whip } }, index) => {
      if (end === "box") dxf.addPoint(...paths[index]!.points.at(-1)!, { layerName });
      if (whip?.toBox) dxf.addPoint(...add(whip.to, built.run.start ?? ORIGIN), { layerName });
    });
  }
}

/** The shape of a piece as DXF [in]: true arcs where it lies in one plane, else a curve of short lines in space. */
export function pieceDxf(piece: Piece): string {
  const dxf = inchDrawing();
  if (!isFlat(piece)) curve(dxf, pieceCurve(piece), "0");
  else for (const part of flatShape(piece)) drawPart(dxf, part);
  return dxf.stringify();
}

/** Lines and arcs, which every program that reads DXF knows. */
function drawPart(dxf: DxfWriter, part: FlatPart): void {
  if ("from" in part) dxf.addLine(point3d(...part.from, 0), point3d(...part.to, 0));
  else dxf.addArc(point3d(...part.center, 0), part.radius, part.startAngle, part.endAngle);
}

/** A drawing with nothing in it, in inches. */
export function inchDrawing(): DxfWriter {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Inches);
  return dxf;
}

/** The flag of a vertex of a 3-D polyline (AutoCAD DXF reference, VERTEX, group 70). */
const IN_SPACE = 32;

function curve(dxf: DxfWriter, points: ReturnType<typeof pieceCurve>, layerName: string): void {
  const polyline = dxf.addPolyline3D(
    points.map(([x, y, z]) => ({ point: point3d(x, y, z) })),
    { layerName, flags: PolylineFlags.Polyline3D },
  );
  for (const vertex of polyline.vertices) vertex.flags = IN_SPACE;
}
