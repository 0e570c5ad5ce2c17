import { scale as lengthen } from "../geometry/vector";
import type { ShowLength } from "./bendDimensions";
import { arrowhead } from "./dimension";
import type { RunPull } from "./drawRun";
import type { Fit } from "./fit";
import { AXES, BUILDING_AXES, type AxisNames, type Projection } from "./projection";
import type { Spot } from "./scene";
import { EDGE, type Sketch } from "./sketch";
import { move, spread, toward } from "./spots";
import { LINE_HEIGHT, textWidth } from "./textBox";

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
  fit: Fit,
  show: ShowLength,
  names: AxisNames = BUILDING_AXES,
): void {
  const flat = eye.elevation % 90 === 0;
  const arm = roundLength((flat ? 22 : ARM) / fit.scale);
  const arms = AXES.map((way, index) => {
    const [x, y] = eye.flat(lengthen(way, arm * fit.scale));
    return { name: names[index] ?? "", tip: [x, -y] as Spot };
  }).filter(({ tip }) => spread([0, 0], tip) > 4);
  const [left, high] = [Math.min(0, ...arms.map(({ tip }) => tip[0])), Math.min(0, ...arms.map(({ tip }) => tip[1]))];
  const origin: Spot = [EDGE + 14 - left, sketch.bottom + 22 - high];
  for (const { name, tip } of arms) {
    const end: Spot = [origin[0] + tip[0], origin[1] + tip[1]];
    const way = toward(origin, end);
    sketch.line([origin, end], "dimension");
    arrowhead(sketch, end, [-way[0], -way[1]], 6);
    sketch.text(name, move(end, way, 4 + 6 * Math.abs(way[1]) + (textWidth(name) / 2) * Math.abs(way[0])), "middle");
  }
  const right = origin[0] + Math.max(0, ...arms.map(({ name, tip }) => tip[0] + textWidth(name) * across(tip))) + 18;
  if (flat) scaleBar(sketch, [right, origin[1]], roundLength(BAR / fit.scale), fit.scale, show);
  else sketch.text(`arms ${show(arm)} long`, [right, origin[1]], "start");
}

/** How much of its own width a name takes beyond the tip of its arm. */
const across = ([x, y]: Spot): number => (x > 0 ? (1 + x / Math.hypot(x, y)) / 2 : 0.5);

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
export function drawKey(sketch: Sketch, pulls: readonly RunPull[]): void {
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
