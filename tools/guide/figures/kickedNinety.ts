import { angleMark } from "../../../src/drawing/paper/angleMark";
import { drawConduit } from "../../../src/drawing/bend/conduit";
import { dimension } from "../../../src/drawing/paper/dimension";
import { fitTo, type Flat } from "../../../src/drawing/paper/fit";
import type { Scene, Spot } from "../../../src/drawing/paper/scene";
import { Sketch } from "../../../src/drawing/paper/sketch";
import { move, perpendicular, toward } from "../../../src/drawing/paper/spots";
import { setback } from "../../../src/geometry/arc";
import { toRadians } from "../../../src/geometry/angle";
import { samplePath } from "../../../src/geometry/span";
import { kickNinety } from "../../../src/bends/shapes/kickNinety";
import { HALF_EMT, showInches } from "./scenes";

const WIDTH = 320;

/** A kick on the end of a 90, seen along the stub: the 90 points at the reader. */
export function kickedNinety(rise: number, angle: number): Scene {
  const { radius, outsideDiameter } = HALF_EMT;
  const sketch = new Sketch(WIDTH);
  const run = rise / Math.tan(toRadians(angle));
  const points: [Flat, Flat, Flat] = [
    [0, rise],
    [run, 0],
    [run + 12, 0],
  ];
  const path = { points: points.map(([x, y]): [number, number, number] => [x, y, 0]), radii: [radius] };
  const line = samplePath(path, 2).map(([x, y]): Flat => [x, y]);
  const fit = fitTo(line, { left: 70, right: WIDTH - 14, top: 40, maxHeight: 180 });
  const [stub, corner, end] = points.map(fit.toPage) as [Spot, Spot, Spot];
  const diameter = outsideDiameter * fit.scale;
  drawConduit(sketch, line.map(fit.toPage), { diameter, broken: { end: true } });
  sketch.circle(stub, diameter / 2 + 1, "solid");
  sketch.text("stub", [stub[0], stub[1] - diameter / 2 - 12], "middle");
  const mark = move(corner, toward(corner, end), setback(angle, radius) * fit.scale);
  const across = perpendicular(toward(corner, end));
  sketch.line([move(mark, across, -10), move(mark, across, 10)], "mark");
  sketch.label("mark", [{ at: [mark[0], mark[1] + 20], anchor: "middle" }]);
  angleMark(sketch, corner, toward(end, corner), toward(corner, stub), `${angle}°`, 40);
  dimension(sketch, { from: corner, to: stub, axis: "up", at: 34, text: showInches(rise) });
  const words = `From the back of the 90 along the conduit to the mark: ${showInches(kickNinety(rise, angle, outsideDiameter, radius))}`;
  sketch.paragraph(`${words.replace(/\.$/, "")}.`);
  return sketch.finish("A 90 whose leg is kicked, seen along the stub", words);
}
