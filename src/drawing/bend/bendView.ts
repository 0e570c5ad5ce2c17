import { pathParts, type Path } from "../../geometry/path";
import { pointAlong, samplePath } from "../../geometry/span";
import { along, type Vec3 } from "../../geometry/vector";
import { angleMark } from "../paper/angleMark";
import type { BendDimension, BendNotes, Lane } from "./bendDimensions";
import { endsGiven } from "./bendShapes";
import { drawConduit } from "./conduit";
import { dimension, fitsBetween } from "../paper/dimension";
import type { BendDrawing } from "./bendShapes";
import { around } from "../paper/boxes";
import { fitTo, type PageFit, type Flat } from "../paper/fit";
import type { Box, Spot } from "../paper/scene";
import { EDGE, type PagePlace, type Sketch } from "../paper/sketch";
import { move, perpendicular, toward } from "../paper/spots";
import { bubble, BUBBLE } from "../paper/symbols";
import { LINE_HEIGHT, textWidth } from "../paper/textBox";

/** Takes a point of the shape to the plane of a view. */
export type Side = (point: Vec3) => Flat;
export const ELEVATION: Side = ([x, , z]) => [x, z];
export const PLAN: Side = ([x, y]) => [x, y];

/** One look at a bend. */
export interface BendView {
  readonly path: Path;
  readonly drawing: BendDrawing;
  readonly notes: BendNotes;
  readonly side: Side;
}

export interface ViewOptions {
  readonly numbers: boolean;
  readonly top?: number;
  readonly maxScale?: number;
  /** Texts to leave room for at the right besides the view's own, so that two views lie under each other. */
  readonly room?: readonly string[];
}

/** Arc points are no more than this apart [°], so that on the page they cannot be told from an arc. */
const STEP = 2;
/** Room for a dimension over or under the conduit. */
const LANE = 24;
const DATUM_END = "datum end";
/** Conduit of a picture without numbers is this thick. */
const PICTURE_LINE = 3;

const lineOf = ({ path, side }: BendView): Flat[] => samplePath(path, STEP).map(side);

/** Page units to the inch that a view would take. */
export const scaleFor = (sketch: Sketch, view: BendView, options: ViewOptions): number =>
  fitView(sketch, view, options).scale;

function fitView(sketch: Sketch, view: BendView, { numbers, top = 0, maxScale, room = [] }: ViewOptions): PageFit {
  const { notes, drawing } = view;
  const half = drawing.outsideDiameter / 2;
  const reach = lineOf(view).flatMap(([x, y]): Flat[] => [
    [x - half, y - half],
    [x + half, y + half],
  ]);
  const between = numbers
    ? notes.dimensions.filter(({ lane }) => lane === "between").flatMap(({ from, to }) => [from, to])
    : [];
  const texts = (lane: Lane): string[] => notes.dimensions.filter((each) => each.lane === lane).map(({ text }) => text);
  const widest = (list: readonly string[]): number =>
    numbers && list.length ? Math.max(...list.map((text) => textWidth(text))) + 28 : EDGE;
  return fitTo([...reach, ...notes.things.flat(), ...between], {
    left: widest(texts("left")),
    right: sketch.width - widest([...texts("right"), ...room]),
    top: top + (numbers && texts("above").length ? LANE : EDGE),
    maxHeight: sketch.width * 0.62,
    ...(maxScale === undefined ? {} : { maxScale }),
  });
}

export function drawBendView(sketch: Sketch, view: BendView, options: ViewOptions): void {
  const { drawing, notes } = view;
  const fit = fitView(sketch, view, options);
  const line = lineOf(view).map(fit.toPage);
  for (const [from, to] of notes.surfaces) sketch.line([fit.toPage(from), fit.toPage(to)], "surface");
  for (const thing of notes.things) sketch.line(thing.map(fit.toPage), "shape", { closed: true });
  if (!options.numbers) return sketch.line(line, "conduit-thin", { width: PICTURE_LINE });
  const given = endsGiven(drawing.shape.kind);
  drawConduit(sketch, line, {
    diameter: drawing.outsideDiameter * fit.scale,
    broken: { start: !given.start, end: !given.end && drawing.shape.kind !== "box offset" },
  });
  const edges = around([...line, ...notes.things.flat().map(fit.toPage)]);
  const half = (drawing.outsideDiameter / 2) * fit.scale;
  for (const each of notes.dimensions) putDimension(sketch, each, fit, edges, half);
  for (const { corner, text } of notes.angles) putAngle(sketch, view, corner, text, fit);
  // Numbers of marks find room between dimensions more easily than dimensions around numbers.
  drawMarks(sketch, view, fit);
  if (drawing.marks?.length) labelDatumEnd(sketch, line, half);
}

function putDimension(sketch: Sketch, each: BendDimension, fit: PageFit, edges: Box, half: number): void {
  const [from, to] = [fit.toPage(each.from), fit.toPage(each.to)];
  const { text } = each;
  const inGap = fitsBetween(Math.abs(from[1] - to[1]), LINE_HEIGHT);
  const off = half + (inGap ? textWidth(text) / 2 + 9 : 12);
  switch (each.lane) {
    case "left":
      return dimension(sketch, { from, to, axis: "up", at: edges.left - off, text });
    case "right":
      return dimension(sketch, { from, to, axis: "up", at: edges.right + off, text });
    case "above":
      return dimension(sketch, { from, to, axis: "across", at: edges.top - half - LANE / 2, text });
    case "below":
      return dimension(sketch, { from, to, axis: "across", at: edges.bottom + half + LANE / 2, text });
    case "beside":
      return dimension(sketch, { from, to, axis: "straight", at: half + 16, text });
    case "between":
      return dimension(sketch, { from, to, axis: "straight", at: 0, text });
  }
}

function putAngle(sketch: Sketch, { path, side }: BendView, corner: number, text: string, fit: PageFit): void {
  const spots = [-1, 0, 1].map((step) => fit.toPage(side(path.points[corner + step]!)));
  const [before, at, after] = spots as [Spot, Spot, Spot];
  angleMark(sketch, at, toward(before, at), toward(at, after), text);
}

function labelDatumEnd(sketch: Sketch, line: readonly Spot[], half: number): void {
  const [end, next] = [line[0]!, line[1]!];
  const side = perpendicular(toward(end, next));
  const level = Math.abs(side[1]) > 0.5;
  const off = half + (level ? 12 : 6);
  const places = [off, -off, off + LINE_HEIGHT, -off - LINE_HEIGHT].map((by): PagePlace => {
    const at = move(move(end, toward(end, next), level ? 2 : 8), side, by);
    return { at, anchor: level || side[0] * by > 0 ? "start" : "end" };
  });
  sketch.label(DATUM_END, places);
}

/** Pencil marks where they come to lie on the bent conduit. */
function drawMarks(sketch: Sketch, { path, drawing, side }: BendView, fit: PageFit): void {
  const { marks = [], firstStart = 0, outsideDiameter } = drawing;
  const shift = (pathParts(path).straights[0] ?? 0) - firstStart;
  const reach = (outsideDiameter / 2) * fit.scale + 4;
  marks.forEach(({ distance, number }, index) => {
    const { point, direction } = pointAlong(path, distance + shift);
    const spot = fit.toPage(side(point));
    const across = perpendicular(toward(spot, fit.toPage(side(along(point, direction, 1)))));
    sketch.line([move(spot, across, -reach), move(spot, across, reach)], "mark");
    const off = reach + BUBBLE + 1;
    const away = [0, 4, 8, 14, 22].flatMap((more) => [off + more, -off - more]);
    const [near, ...far] = away.map((by) => move(spot, across, by)) as [Spot, ...Spot[]];
    bubble(sketch, sketch.freeSpot([near, ...far], BUBBLE), number ?? index + 1);
  });
}
