import { point3d } from "@tarikjabiri/dxf";
import { buildJob, builtRows } from "../../src/shop/job/job";
import { drawRuns, inchDrawing } from "../shapes/dxf";

/** Name of the sample drawing in docs/samples. */
export const SAMPLE_DRAWING = "upper-deck.dxf";

/** What the sample drawing has drawn, invented: conduits of the ferry terminal's upper deck. */
export const UPPER_DECK = [
  ["Run", "Raceway", "Size", "Route", "Start"],
  ["UD-01", "EMT", "3/4", `up 9', east 14' 3", offset 5 north at 30, ahead 8', down 30`, "-240 340 120"],
  ["UD-02", "IMC", "1", `up 40, sweep 24, east 11', north 6'`, "-240 352 150"],
  ["UD-03", "RMC", "3/4", `west 7', saddle 3 up at 45, ahead 8'`, "-20 420 138"],
  ["UD-04", "EMT", "1/2", `up 6', east 9', box, north 7' 6", down 20`, "-240 380 140"],
  ["UD-05", "EMT", "1/2", `to 0 0 60, to 72 0 60, to 96 36 60`, "-120 400 132"],
];

/**
 * The sample drawing as DXF text: the runs of the upper deck, and what a drawing has besides: the deck's edge on a layer that
 * is no conduit, a note, and three lines that meet without a box.
 */
export function sampleDrawing(): string {
  const dxf = inchDrawing();
  drawRuns(
    dxf,
    builtRows(buildJob({ runs: UPPER_DECK })).map(({ built }) => built),
  );
  const edge = { layerName: "Deck edge" };
  const junction = { layerName: "UD-06_EMT_1-2" };
  for (const { layerName } of [edge, junction]) dxf.addLayer(layerName, 7, "Continuous");
  dxf.addLine(point3d(-252, 330, 120), point3d(0, 330, 120), edge);
  dxf.addText(point3d(-250, 320, 120), 6, "Upper deck, invented for the demo job", edge);
  for (const [x, y] of [
    [-60, 450],
    [60, 450],
    [0, 510],
  ] as const) {
    dxf.addLine(point3d(0, 450, 180), point3d(x, y, 180), junction);
  }
  return dxf.stringify();
}
