import type { Path } from "../../geometry/path";
import { samplePath } from "../../geometry/span";
import type { Vec3 } from "../../geometry/vector";
import { remember } from "../../memory/remember";
import type { ShowLength } from "../bend/bendDimensions";
import { HUE_LOOKS } from "../paper/drawingCss";
import { fitTo, type Flat } from "../paper/fit";
import type { Scene, Spot } from "../paper/scene";
import { EDGE, Sketch } from "../paper/sketch";
import { LINE_HEIGHT, textWidth } from "../paper/textBox";
import { projection, viewWords, type Projection, type RunView } from "../run/projection";
import { drawAxes } from "../run/runKey";

/** A run as it stands in the job. */
export interface StandingRun {
  readonly name: string;
  /** Row of Runs, 1 for the first under the headers. */
  readonly row: number;
  /** The centerline of each of its pulls [in], from the job's zero. */
  readonly paths: readonly Path[];
  /** [in] */
  readonly outsideDiameter: number;
  /** What it is told apart by: its size, what is made of it. */
  readonly kind: string;
}

export interface WholeOptions {
  readonly title: string;
  readonly view: RunView;
  /** Width of the page [px]; 320 when left out. */
  readonly width?: number;
  readonly show: ShowLength;
  /** What the runs are told apart by, in the order of the key; {@link MOST_KINDS} at most. */
  readonly kinds: readonly string[];
  /** Row that is pointed out. */
  readonly chosen?: number;
  /** Places that are pointed out by their number, 1 for the first. */
  readonly places?: readonly Vec3[];
}

/** How many kinds of run can be told apart. */
export const MOST_KINDS = HUE_LOOKS.length;

/** Arc points no more than this apart [°]; with many runs, fewer points. */
const [STEP, COARSE] = [6, 18];
/** From so many runs on arcs are drawn coarser. */
const MANY = 150;
/** Names beside the runs where there are no more than so many. */
const NAMED = 60;
const [THINNEST, THICKEST] = [1.75, 6];
const MARGIN = 30;

/** All runs of a job where they stand, to scale: from above, from a side or from any way. The chosen one lies on top. */
export function drawWhole(runs: readonly StandingRun[], options: WholeOptions): Scene {
  const { title, view, width = 320, show, kinds, chosen, places = [] } = options;
  const sketch = new Sketch(width);
  const eye = projection(view);
  sketch.paragraph(viewWords(view), "strong");
  const reach = reachOf(runs, eye);
  if (reach) {
    const fit = fitTo(reach, {
      ...{ left: MARGIN, right: width - MARGIN, top: sketch.bottom + MARGIN },
      maxHeight: Math.max(240, width * 0.8),
      maxScale: width / 12,
    });
    const page = (point: Vec3): Spot => fit.toPage(eye.flat(point));
    const thickness = ({ outsideDiameter }: StandingRun) =>
      Math.min(THICKEST, Math.max(THINNEST, outsideDiameter * fit.scale));
    const step = runs.length < MANY ? STEP : COARSE;
    for (const run of fromFarthest(runs, eye, chosen)) {
      const look = { hue: kinds.indexOf(run.kind) + 1, row: run.row };
      const isChosen = run.row === chosen;
      for (const path of run.paths) {
        const spots = sampled(path, step).map(page);
        if (isChosen) sketch.line(spots, "highlight", { width: thickness(run) + 8 });
        sketch.line(spots, "halo", { width: thickness(run) + 3 });
        sketch.line(spots, "conduit-thin", { width: thickness(run) + (isChosen ? 1.5 : 0), ...look });
      }
    }
    nameRuns(sketch, runs, page, chosen);
    places.forEach((point, index) => pointOut(sketch, page(point), index + 1));
    drawAxes(sketch, eye, fit, show);
    drawKinds(sketch, kinds);
  }
  return sketch.finish(`${title}: ${viewWords(view)}`, describe(runs, kinds, show));
}

const sampled: (path: Path, step: number) => readonly Vec3[] = remember((path, step) => samplePath(path, step));

/** Two opposite corners of what the runs take of the picture's plane; undefined without runs. */
function reachOf(runs: readonly StandingRun[], eye: Projection): [Flat, Flat] | undefined {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { paths } of runs) {
    for (const { points } of paths) {
      for (const [x, y] of points.map(eye.flat)) {
        [left, right] = [Math.min(left, x), Math.max(right, x)];
        [low, high] = [Math.min(low, y), Math.max(high, y)];
      }
    }
  }
  return left > right
    ? undefined
    : [
        [left, low],
        [right, high],
      ];
}

/** The farthest run first, by the middle of its ends; the chosen one last. */
function fromFarthest(runs: readonly StandingRun[], eye: Projection, chosen: number | undefined): StandingRun[] {
  const depth = ({ paths }: StandingRun) => eye.depth(paths[0]!.points[0]!) + eye.depth(paths.at(-1)!.points.at(-1)!);
  const byDepth = runs.map((run) => ({ run, depth: depth(run) })).sort((a, b) => b.depth - a.depth);
  const rank = ({ row }: StandingRun) => (row === chosen ? 1 : 0);
  return byDepth.map(({ run }) => run).sort((a, b) => rank(a) - rank(b));
}

function nameRuns(
  sketch: Sketch,
  runs: readonly StandingRun[],
  page: (point: Vec3) => Spot,
  chosen: number | undefined,
): void {
  for (const { name, row, paths } of runs) {
    if (runs.length > NAMED && row !== chosen) continue;
    const spots = paths.flatMap(({ points }) =>
      points.slice(1).map((point, leg) => halfway(page(point), page(points[leg]!))),
    );
    const around = spots.flatMap(([x, y]) => [
      { at: [x, y - 10] as Spot, anchor: "middle" as const },
      { at: [x, y + 12] as Spot, anchor: "middle" as const },
      { at: [x + 6, y] as Spot, anchor: "start" as const },
      { at: [x - 6, y] as Spot, anchor: "end" as const },
    ]);
    if (row === chosen) sketch.label(name, around, "strong");
    else sketch.labelIfFree(name, around);
  }
}

const halfway = ([a, b]: Spot, [c, d]: Spot): Spot => [(a + c) / 2, (b + d) / 2];

function pointOut(sketch: Sketch, at: Spot, number: number): void {
  sketch.circle(at, 9, "highlight");
  const [x, y] = at;
  sketch.label(
    String(number),
    [
      { at: [x + 16, y - 10], anchor: "start" },
      { at: [x - 16, y - 10], anchor: "end" },
      { at: [x + 16, y + 12], anchor: "start" },
      { at: [x - 16, y + 12], anchor: "end" },
    ],
    "strong",
  );
}

/** What each color and dash means, in rows as wide as the page. */
function drawKinds(sketch: Sketch, kinds: readonly string[]): void {
  let [x, y] = [EDGE, sketch.bottom + LINE_HEIGHT];
  kinds.forEach((kind, index) => {
    const room = 34 + textWidth(kind) + 14;
    if (x > EDGE && x + room > sketch.width) [x, y] = [EDGE, y + LINE_HEIGHT + 2];
    sketch.line(
      [
        [x, y],
        [x + 28, y],
      ],
      "conduit-thin",
      { hue: index + 1 },
    );
    sketch.text(kind, [x + 34, y], "start");
    x += room;
  });
}

/** How many runs there are of each kind, and how much room they take. */
function describe(runs: readonly StandingRun[], kinds: readonly string[], show: ShowLength): string {
  if (runs.length === 0) return "No run says where it begins.";
  const counts = kinds.map(
    (kind) =>
      `${kind}: ${runs
        .filter((run) => run.kind === kind)
        .map(({ name }) => name)
        .join(", ")}`,
  );
  const points = runs.flatMap(({ paths }) => paths.flatMap((path) => path.points));
  const [wide, deep, high] = ([0, 1, 2] as const).map((axis) => {
    const values = points.map((point) => point[axis]);
    return values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b));
  }) as [number, number, number];
  return `${runs.length} runs, ${show(wide)} east to west, ${show(deep)} north to south, ${show(high)} high. ${counts.join(". ")}.`;
}
