import { scale as lengthen } from "../../geometry/vector";
import type { ShowLength } from "../bend/bendDimensions";
import { arrowhead } from "../paper/dimension";
import type { RunPull } from "./runDrawing";
import type { PageFit } from "../paper/fit";
import { AXES, BUILDING_AXES, type AxisNames, type Projection } from "./projection";
import type { Spot } from "../paper/scene";
import { drawWhip } from "./drawWhip";
import { EDGE, type Sketch } from "../paper/sketch";
import { move, spread, toward } from "../paper/spots";
import { LINE_HEIGHT, textWidth } from "../paper/textBox";

/** Lengths that a scale bar may have [in]. */
const ROUND_LENGTHS = [
  0.25, 0.5, 1, 2, 3, 6, 12, 24, 36, 60, 120, 240, 360, 600, 1200, 2400, 6000, 12000, 24000, 60000,
];
/** Page room of an arm of the axes, and of a scale bar. */
const [ARM, BAR] = [30, 90];

/**
 * Which way north, east and up lie, and how long things are: a scale bar where the picture shows a plane of the shop
 * truly, else the length of the axes' arms.
 */
export function drawAxes(
  sketch: Sketch,
  eye: Projection,
  fit: PageFit,
  show: ShowLength,
  names: AxisNames = BUILDING_AXES,
): void {
  const flat = eye.elevation % 90 === 0;
  const arm = roundLength((flat ? 22 : ARM) / fit.scale);
  const arms = AXES.map((way, index) => {
    const [x, y] = eye.flat(lengthen(way, arm * fit.scale));
    return armTo([x, -y], names[index] ?? "");
  }).filter(({ tip }) => spread([0, 0], tip) > 4);
  const left = Math.min(0, ...arms.map(({ from }) => from));
  const high = Math.min(0, ...arms.map(({ tip }) => tip[1]));
  const origin: Spot = [EDGE + 4 - left, sketch.bottom + 22 - high];
  const place = ([x, y]: Spot): Spot => [origin[0] + x, origin[1] + y];
  for (const { name, tip, label } of arms) {
    const way = toward([0, 0], tip);
    sketch.line([origin, place(tip)], "dimension");
    arrowhead(sketch, place(tip), [-way[0], -way[1]], 6);
    sketch.text(name, place(label), "middle");
  }
  const right = origin[0] + Math.max(0, ...arms.map(({ to }) => to)) + 16;
  if (flat) scaleBar(sketch, [right, origin[1]], roundLength(BAR / fit.scale), fit.scale, show);
  else sketch.text(`arms ${show(arm)} long`, [right, origin[1]], "start");
}

/** An arm of the axes seen from where they meet: its tip, where its name stands, and how far that reaches across. */
function armTo(tip: Spot, name: string): { name: string; tip: Spot; label: Spot; from: number; to: number } {
  const [way, half] = [toward([0, 0], tip), textWidth(name) / 2];
  const label = move(tip, way, 4 + 6 * Math.abs(way[1]) + half * Math.abs(way[0]));
  return { name, tip, label, from: label[0] - half, to: label[0] + half };
}

const roundLength = (most: number): number =>
  ROUND_LENGTHS.filter((length) => length <= most).at(-1) ?? ROUND_LENGTHS[0]!;

function scaleBar(sketch: Sketch, [x, y]: Spot, length: number, scale: number, show: ShowLength): void {
  const end = x + length * scale;
  sketch.line(
    [
      [x, y - 4],
      [x, y],
      [end, y],
      [end, y - 4],
    ],
    "dimension",
    { width: 1.5 },
  );
  sketch.text(show(length), [end + 6, y - 2], "start");
}

/** What the signs on the run mean; only those that are there. */
export function drawKey(sketch: Sketch, pulls: readonly RunPull[], hasWhips: boolean): void {
  const y = sketch.bottom + LINE_HEIGHT;
  let x = EDGE + 6;
  const entry = (word: string, sign: (spot: Spot) => void): void => {
    sign([x, y]);
    sketch.text(word, [x + 10, y], "start");
    x += 10 + textWidth(word) + 18;
  };
  if (pulls.some(({ start, end }) => (start ?? "box") === "box" || (end ?? "box") === "box")) {
    entry("box", ([a, b]) =>
      sketch.line(
        [
          [a - 5, b - 5],
          [a + 5, b - 5],
          [a + 5, b + 5],
          [a - 5, b + 5],
        ],
        "shape",
        { closed: true },
      ),
    );
  }
  if (pulls.some(({ start, end }) => start === "body" || end === "body")) {
    entry("body", (spot) => sketch.circle(spot, 5, "shape"));
  }
  if (hasWhips) entry("flexible", ([a, b]) => drawWhip(sketch, [a - 9, b], [a + 7, b]));
  if (pulls.some(({ couplings, start, end }) => couplings?.length || start === "coupling" || end === "coupling")) {
    entry("coupling", ([a, b]) =>
      sketch.line(
        [
          [a, b - 5],
          [a, b + 5],
        ],
        "mark",
        { width: 5 },
      ),
    );
  }
  if (pulls.some(({ straps }) => straps?.length)) {
    entry("strap", ([a, b]) =>
      sketch.line(
        [
          [a, b - 6],
          [a, b + 6],
        ],
        "extension",
        { width: 1.25 },
      ),
    );
  }
}
