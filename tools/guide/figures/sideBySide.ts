import { drawConduit } from "../../../src/drawing/bend/conduit";
import { dimension } from "../../../src/drawing/paper/dimension";
import { fitTo, type Flat } from "../../../src/drawing/paper/fit";
import type { Scene, Spot } from "../../../src/drawing/paper/scene";
import { Sketch } from "../../../src/drawing/paper/sketch";
import { move, perpendicular, toward } from "../../../src/drawing/paper/spots";
import type { Path } from "../../../src/geometry/path";
import { pathSpans, samplePath } from "../../../src/geometry/span";
import { along, type Vec3 } from "../../../src/geometry/vector";
import { bubble, BUBBLE } from "../../../src/drawing/paper/symbols";
import { HALF_EMT, showInches } from "./scenes";

/** Corner points and radii of one conduit of a group, in the plane it is bent in [in]. */
export interface Neighbor {
  readonly corners: readonly Flat[];
  readonly radii: readonly number[];
}

const WIDTH = 320;

/** Side-by-side conduits, numbered at their far ends; `marked` shows where each bend begins. */
export function sideBySide(title: string, neighbors: readonly Neighbor[], spacing: number, marked: boolean): Scene {
  const sketch = new Sketch(WIDTH);
  const paths = neighbors.map(({ corners, radii }) => ({
    points: corners.map(([x, y]): [number, number, number] => [x, y, 0]),
    radii,
  }));
  const lines = paths.map((path) => samplePath(path, 2).map(([x, y]): Flat => [x, y]));
  const fit = fitTo(lines.flat(), { left: 66, right: WIDTH - 30, top: 30, maxHeight: 230 });
  const flat = ([x, y]: Vec3): Spot => fit.toPage([x, y]);
  lines.forEach((line, index) => {
    const spots = line.map(fit.toPage);
    drawConduit(sketch, spots, { diameter: HALF_EMT.outsideDiameter * fit.scale, broken: { start: true, end: true } });
    const [last, end] = [spots.at(-2)!, spots.at(-1)!];
    bubble(sketch, move(end, toward(last, end), BUBBLE + 6), index + 1);
  });
  if (marked) for (const path of paths) drawStarts(sketch, path, flat);
  const [first, second] = lines.map((line) => fit.toPage(line[0]!)) as [Spot, Spot];
  const text = showInches(spacing);
  dimension(sketch, { from: second, to: first, axis: "up", at: 34, text });
  const words = `${neighbors.length} conduits ${text} from center to center`;
  return sketch.finish(title, `${words}${marked ? ", with a mark where each bend begins" : ""}.`);
}

function drawStarts(sketch: Sketch, path: Path, flat: (point: Vec3) => Spot): void {
  for (const span of pathSpans(path)) {
    if (span.kind !== "arc") continue;
    const start = flat(span.point);
    const across = perpendicular(toward(start, flat(along(span.point, span.direction, 1))));
    sketch.line([move(start, across, -8), move(start, across, 8)], "mark");
  }
}
