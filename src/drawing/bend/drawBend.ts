import type { Path } from "../../geometry/path";
import { bendNotes, type BendDimension, type ShowLength } from "./bendDimensions";
import { bendPath, type BendDrawing } from "./bendShapes";
import { drawBendView, ELEVATION, PLAN, scaleFor, type BendView } from "./bendView";
import type { Scene } from "../paper/scene";
import { EDGE, Sketch } from "../paper/sketch";

export interface BendOptions {
  /** Width of the page [px]; 320 when left out. */
  readonly width?: number;
  /** How lengths are written, with their unit. Left out: a small picture without numbers. */
  readonly show?: ShowLength;
}

/** Height of a picture without numbers, for its width: all of them the same, to stand in a row. */
const PICTURE_SHAPE = 0.75;

/**
 * A bend seen from the side, to scale, with its dimensions, angles and pencil marks; a rolling offset from above too.
 *
 * @throws InputError where the shape cannot be bent
 * @example toSvg(drawBend({ shape: { kind: "offset", rise: 6, angle: 30 }, radius: 4, outsideDiameter: 0.706 }))
 */
export function drawBend(drawing: BendDrawing, { width = 320, show }: BendOptions = {}): Scene {
  const { shape } = drawing;
  const path = bendPath(shape, drawing, tailsFor(drawing));
  const notes = bendNotes(shape, path, drawing, show ?? String);
  const sketch = new Sketch(width);
  const side: BendView = { path, drawing, notes, side: ELEVATION };
  if (shape.kind === "rolling offset") {
    const dimensions = [rollDimension(path, show?.(shape.roll) ?? "")];
    drawTwoViews(
      sketch,
      side,
      { ...side, drawing: { ...drawing, marks: [] }, notes: { ...notes, dimensions }, side: PLAN },
      show,
    );
  } else {
    drawBendView(sketch, side, { numbers: show !== undefined });
  }
  const name = `${shape.kind[0]?.toUpperCase()}${shape.kind.slice(1)}`;
  if (!show) return sketch.finish(name, "", width * PICTURE_SHAPE);
  const marks = markWords(drawing, show);
  for (const line of [...(notes.caption ? [notes.caption] : []), ...marks]) sketch.paragraph(line);
  return sketch.finish(name, [notes.words, ...marks].join(" "));
}

/** The same conduit from the side and, under it, from above, both at one scale. */
function drawTwoViews(sketch: Sketch, upper: BendView, lower: BendView, show?: ShowLength): void {
  const views = [upper, lower] as const;
  const room = views.flatMap(({ notes }) => notes.dimensions.map(({ text }) => text));
  const maxScale = Math.min(...views.map((view) => scaleFor(sketch, view, { numbers: show !== undefined, room })));
  views.forEach((view, index) => {
    let top = sketch.bottom + (index > 0 ? 12 : 0);
    if (show) {
      sketch.text(index > 0 ? "from above" : "from the side", [EDGE, top + 10], "start", "strong");
      top += 24;
    }
    drawBendView(sketch, view, { numbers: show !== undefined, room, maxScale, top });
  });
}

function rollDimension({ points }: Path, text: string): BendDimension {
  return { from: PLAN(points[1]!), to: PLAN(points.at(-1)!), lane: "right", text };
}

const markWords = ({ marks = [] }: BendDrawing, show: ShowLength): string[] =>
  marks.map(({ distance, lineUp, number, piece }, index) => {
    const end = piece ? `the datum end of piece ${piece.number}` : "the datum end";
    return `Mark ${number ?? index + 1}: ${show(piece?.distance ?? distance)} from ${end}, ${lineUp}.`;
  });

/** Straight ends long enough to see, and for every mark to stand on conduit. */
function tailsFor({ shape, radius, marks = [], firstStart = 0 }: BendDrawing): { before: number; after: number } {
  const look = { "box offset": 1.2 * radius, "stub-up": "stub" in shape ? Math.max(2 * radius, 0.9 * shape.stub) : 0 };
  const tail = shape.kind === "box offset" || shape.kind === "stub-up" ? look[shape.kind] : 2.2 * radius;
  const lead = Math.max(0, ...marks.map(({ distance }) => firstStart - distance));
  return { before: Math.max(tail, lead + 1), after: tail };
}
