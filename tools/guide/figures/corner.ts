import { angleMark } from "../../../src/drawing/paper/angleMark";
import { drawConduit } from "../../../src/drawing/bend/conduit";
import { dimension } from "../../../src/drawing/paper/dimension";
import { fitTo, type Flat } from "../../../src/drawing/paper/fit";
import type { Scene, Spot } from "../../../src/drawing/paper/scene";
import { Sketch } from "../../../src/drawing/paper/sketch";
import { between, move, toward } from "../../../src/drawing/paper/spots";
import { arcLength, setback } from "../../../src/geometry/arc";
import { toRadians } from "../../../src/geometry/angle";
import { samplePath } from "../../../src/geometry/span";
import { showInches } from "./scenes";

const WIDTH = 320;

/** One bend with its radius, the setback to either side of its corner, and its arc. */
export function cornerFigure(angle: number, radius: number, outsideDiameter: number): Scene {
  const sketch = new Sketch(WIDTH);
  const reach = setback(angle, radius);
  const leg = reach + 0.8 * radius;
  const turn = toRadians(angle);
  const out: Flat = [Math.cos(turn), Math.sin(turn)];
  const ends: [Flat, Flat, Flat] = [
    [-leg, 0],
    [0, 0],
    [leg * out[0], leg * out[1]],
  ];
  const points = ends.map(([x, y]): [number, number, number] => [x, y, 0]);
  const line = samplePath({ points, radii: [radius] }, 2).map(([x, y]): Flat => [x, y]);
  const center: Flat = [-reach, radius];
  const fit = fitTo([...line, ...ends, center], { left: 30, right: WIDTH - 40, top: 24, maxHeight: 210 });
  const [before, corner, after] = ends.map(fit.toPage) as [Spot, Spot, Spot];
  const [start, end] = [before, after].map((spot) => move(corner, toward(corner, spot), reach * fit.scale));
  const hub = fit.toPage(center);
  drawConduit(sketch, line.map(fit.toPage), {
    diameter: outsideDiameter * fit.scale,
    broken: { start: true, end: true },
  });
  for (const spot of [start!, end!]) sketch.line([hub, spot], "extension");
  for (const spot of [start!, end!]) sketch.line([spot, corner], "extension");
  for (const spot of [start!, corner, end!]) sketch.circle(spot, 2.5, "solid");
  angleMark(sketch, corner, toward(before, corner), toward(corner, after), `A ${angle}°`, 24);
  dimension(sketch, { from: start!, to: corner, axis: "across", at: corner[1] + 30, text: `T ${showInches(reach)}` });
  sketch.circle(hub, 2, "solid");
  sketch.label(`R ${showInches(radius)}`, [
    { at: move(between(hub, start!, 0.5), [-1, 0], 5), anchor: "end" },
    ...besides(between(hub, start!, 0.5)),
  ]);
  const words = [
    `T setback, from the corner to where the arc begins: ${showInches(reach)}`,
    `Arc, along the centerline: ${showInches(arcLength(angle, radius))}`,
    `Gain, twice T less the arc: ${showInches(2 * reach - arcLength(angle, radius))}`,
  ];
  for (const each of words) sketch.paragraph(each);
  return sketch.finish(`A bend of ${angle}° with radius ${showInches(radius)}`, `${words.join(". ")}.`);
}

const besides = ([x, y]: Spot) => [{ at: [x + 6, y] as Spot, anchor: "start" as const }];
