import { drawConduit } from "../../src/drawing/bend/conduit";
import { dimension } from "../../src/drawing/paper/dimension";
import { fitTo, type Flat } from "../../src/drawing/paper/fit";
import type { Scene } from "../../src/drawing/paper/scene";
import { EDGE, Sketch } from "../../src/drawing/paper/sketch";
import { samplePath } from "../../src/geometry/span";
import { strings } from "../strings";

const t = strings.shoe.pictures;

/** A piece as the steps ask for it, drawn in thick conduit so that its ends and its back are plain [in]. */
const PIECE = { cut: 30, mark: 11, stub: 15, leg: 21, radius: 5, outsideDiameter: 1.4 };
/** Room for a dimension [px]. */
const LANE = 30;

/** The straight piece: its length and where the mark goes. */
export function straightScene(width: number): Scene {
  const sketch = new Sketch(width);
  const line: Flat[] = [
    [0, 0],
    [PIECE.cut, 0],
  ];
  const half = PIECE.outsideDiameter / 2;
  const fit = fitTo([...line, [0, half], [0, -half]], { left: EDGE, right: width - EDGE, top: LANE, maxHeight: 40 });
  drawConduit(sketch, line.map(fit.toPage), { diameter: PIECE.outsideDiameter * fit.scale });
  const [end, mark, far] = [0, PIECE.mark, PIECE.cut].map((x) => fit.toPage([x, 0])) as [
    readonly [number, number],
    readonly [number, number],
    readonly [number, number],
  ];
  const reach = half * fit.scale + 5;
  sketch.line(
    [
      [mark[0], mark[1] - reach],
      [mark[0], mark[1] + reach],
    ],
    "mark",
  );
  dimension(sketch, { from: end, to: mark, axis: "across", at: end[1] - LANE, text: t.mark });
  dimension(sketch, { from: end, to: far, axis: "across", at: end[1] + LANE, text: t.cut });
  return sketch.finish(t.straightTitle, t.straightWords);
}

/** The bent piece: stub and leg, each from its end to the back of the bend. */
export function bentScene(width: number): Scene {
  const sketch = new Sketch(width);
  const { stub, leg, radius, outsideDiameter } = PIECE;
  const half = outsideDiameter / 2;
  const points: [number, number, number][] = [
    [half, 0, stub],
    [half, 0, half],
    [leg, 0, half],
  ];
  const line = samplePath({ points, radii: [radius] }, 2).map(([x, , z]): Flat => [x, z]);
  const corners: Flat[] = [
    [0, 0],
    [leg, stub],
  ];
  const fit = fitTo(corners, { left: 60, right: width - EDGE, top: EDGE, maxHeight: width * 0.45 });
  drawConduit(sketch, line.map(fit.toPage), { diameter: outsideDiameter * fit.scale });
  const [back, top, far] = [fit.toPage([0, 0]), fit.toPage([0, stub]), fit.toPage([leg, 0])];
  dimension(sketch, { from: top, to: back, axis: "up", at: back[0] - LANE, text: t.stub });
  dimension(sketch, { from: back, to: far, axis: "across", at: back[1] + LANE, text: t.leg });
  sketch.text(t.back, [back[0] - 4, back[1] + 12], "end");
  return sketch.finish(t.bentTitle, t.bentWords);
}
