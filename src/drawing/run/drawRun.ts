import { pathParts, type Path } from "../../geometry/path";
import { onSpan, pathSpans, pointAlong, samplePath } from "../../geometry/span";
import { along, type Vec3 } from "../../geometry/vector";
import type { ShowLength } from "../bend/bendDimensions";
import type { RunDrawing, RunPull } from "./runDrawing";
import { fitTo } from "../paper/fit";
import { projection, viewWords, type AxisNames, type Projection, type RunView } from "./projection";
import { labelLegs, numberBends } from "./runLabels";
import { drawAxes, drawKey } from "./runKey";
import { drawWhip } from "./drawWhip";
import type { Scene, Spot } from "../paper/scene";
import { Sketch } from "../paper/sketch";
import { move, perpendicular, spread, toward } from "../paper/spots";
import { showDegrees } from "../../units/show";
import { sentence } from "../paper/words";

export interface RunOptions {
  readonly view: RunView;
  /** Width of the page [px]; 320 when left out. */
  readonly width?: number;
  readonly show: ShowLength;
  /** Bends to point out, counted from 1 through all pulls. */
  readonly highlight?: readonly number[];
  /** What stands over the picture; the view in words when left out. */
  readonly heading?: string;
  /** Names of the directions where they are not the building's N, E and Up; null leaves them and the scale out. */
  readonly axes?: AxisNames | null;
  /** False leaves out the sentence with the lengths that found no room, where they stand beside the drawing. */
  readonly listUnlabeled?: boolean;
  /** Most height of the run itself [px]; seven tenths of the width when left out. */
  readonly maxHeight?: number;
}

/** Arc points no more than this apart [°]. */
const STEP = 4;
const [THINNEST, THICKEST] = [2.5, 6];
/** Room around the run for labels. */
const MARGIN = 34;

/** A whole run seen from above, from the side, or at any angle, to scale. */
export function drawRun(run: RunDrawing, options: RunOptions): Scene {
  const {
    view,
    width = 320,
    show,
    highlight = [],
    heading = viewWords(view),
    axes,
    maxHeight = width * 0.7,
    listUnlabeled = true,
  } = options;
  const sketch = new Sketch(width);
  const eye = projection(view);
  const ends = (run.whips ?? []).flatMap(({ from, to }) => [from, to]);
  const paths = [...run.pulls.map(({ path }) => path), ...(run.beside ?? [])];
  const points = [...paths.flatMap((path) => samplePath(path, STEP)), ...ends].map(eye.flat);
  sketch.paragraph(heading, "strong");
  const fit = fitTo(points, {
    left: MARGIN,
    right: width - MARGIN,
    top: sketch.bottom + MARGIN,
    maxHeight,
    maxScale: width / 12,
  });
  const page = (point: Vec3): Spot => fit.toPage(eye.flat(point));
  const thickness = Math.min(THICKEST, Math.max(THINNEST, run.outsideDiameter * fit.scale));
  drawSpans(sketch, paths, eye, page, thickness);
  pointOut(sketch, run, highlight, page, thickness);
  for (const { from, to } of run.whips ?? []) drawWhip(sketch, page(from), page(to));
  for (const pull of run.pulls) drawFittings(sketch, pull, page, thickness);
  labelStart(sketch, run, page);
  numberBends(sketch, run.pulls, page);
  const left = labelLegs(sketch, run.pulls, page, show);
  if (left.length && listUnlabeled) sketch.paragraph(sentence(`Not labeled: ${left.join("; ")}`));
  if (axes !== null) drawAxes(sketch, eye, fit, show, axes);
  drawKey(sketch, run.pulls, (run.whips ?? []).length > 0);
  return sketch.finish(`${run.name}: ${heading}`, describe(run, show));
}

/** Straights and arcs, the farthest first; where a nearer one passes in front, a gap shows it. */
function drawSpans(
  sketch: Sketch,
  paths: readonly Path[],
  eye: Projection,
  page: (point: Vec3) => Spot,
  thickness: number,
): void {
  const spans = paths
    .flatMap(pathSpans)
    .map((span) => {
      const steps = span.kind === "arc" ? Math.max(1, Math.ceil(span.angle / STEP)) : 1;
      const points = Array.from({ length: steps + 1 }, (_, step) => onSpan(span, (span.length * step) / steps).point);
      return { spots: points.map(page), depth: eye.depth(onSpan(span, span.length / 2).point) };
    })
    .sort((a, b) => b.depth - a.depth);
  for (const { spots } of spans) {
    const onEnd = spread(spots[0]!, spots.at(-1)!) < thickness / 2 && spots.length === 2;
    if (onEnd) sketch.circle(spots[0]!, thickness / 2 + 1.5, "shape");
    else {
      sketch.line(spots, "halo", { width: thickness + 4 });
      sketch.line(spots, "conduit-thin", { width: thickness });
    }
  }
}

function pointOut(
  sketch: Sketch,
  { pulls }: RunDrawing,
  bends: readonly number[],
  page: (point: Vec3) => Spot,
  thickness: number,
): void {
  const arcs = pulls.flatMap(({ path }) => pathSpans(path)).filter(({ kind }) => kind === "arc");
  for (const bend of bends) {
    const span = arcs[bend - 1];
    if (span) sketch.circle(page(onSpan(span, span.length / 2).point), thickness + 7, "highlight");
  }
}

/** Boxes, couplings and straps. */
function drawFittings(sketch: Sketch, pull: RunPull, page: (point: Vec3) => Spot, thickness: number): void {
  const { path, couplings = [], straps = [], start = "box", end = "box" } = pull;
  const last = pathSpans(path).at(-1)!;
  const developed = last.from + last.length;
  const across = (distance: number, half: number, style: "mark" | "solid", width: number): void => {
    const { point, direction } = pointAlong(path, Math.min(developed, Math.max(0, distance)));
    const [spot, ahead] = [page(point), page(along(point, direction, 1))];
    const way = perpendicular(toward(spot, ahead));
    sketch.line([move(spot, way, -half), move(spot, way, half)], style === "solid" ? "mark" : "extension", { width });
  };
  const joined = [...(start === "coupling" ? [0] : []), ...couplings, ...(end === "coupling" ? [developed] : [])];
  for (const distance of straps) across(distance, thickness / 2 + 5, "mark", 1.25);
  for (const distance of joined) across(distance, thickness / 2 + 3, "solid", 5);
  const boxes = [...(start === "box" ? [path.points[0]!] : []), ...(end === "box" ? [path.points.at(-1)!] : [])];
  for (const point of boxes) drawBox(sketch, page(point));
  const bodies = [...(start === "body" ? [path.points[0]!] : []), ...(end === "body" ? [path.points.at(-1)!] : [])];
  for (const point of bodies) sketch.circle(page(point), thickness / 2 + 4, "shape");
}

const BOX = 6;
function drawBox(sketch: Sketch, [x, y]: Spot): void {
  sketch.line(
    [
      [x - BOX, y - BOX],
      [x + BOX, y - BOX],
      [x + BOX, y + BOX],
      [x - BOX, y + BOX],
    ],
    "shape",
    { closed: true },
  );
}

function labelStart(sketch: Sketch, { pulls }: RunDrawing, page: (point: Vec3) => Spot): void {
  const [x, y] = page(pulls[0]!.path.points[0]!);
  const [side, level] = [BOX + 4, BOX + 10];
  sketch.label("datum end", [
    { at: [x, y + level], anchor: "middle" },
    { at: [x, y - level], anchor: "middle" },
    { at: [x + side, y], anchor: "start" },
    { at: [x - side, y], anchor: "end" },
    { at: [x - BOX, y + level], anchor: "start" },
    { at: [x - BOX, y - level], anchor: "start" },
    { at: [x + BOX, y + level], anchor: "end" },
    { at: [x + BOX, y - level], anchor: "end" },
  ]);
}

/** The run in words: each leg, bend and elbow in order. */
function describe({ pulls }: RunDrawing, show: ShowLength): string {
  return pulls
    .map(({ path, elbows = [] }, index) => {
      const { legs, bends, developed } = pathParts(path);
      const way = legs.flatMap((leg, place) => {
        const bend = bends[place];
        return [
          `leg ${show(leg)}`,
          ...(bend ? [`${elbows.includes(place) ? "elbow" : "bend"} ${showDegrees(bend.angle)}`] : []),
        ];
      });
      return `${pulls.length > 1 ? `Pull ${index + 1}: ` : ""}${way.join(", ")}; ${show(developed)} of conduit.`;
    })
    .join(" ");
}
