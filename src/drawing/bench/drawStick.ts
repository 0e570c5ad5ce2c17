import type { ShowLength } from "../bend/bendDimensions";
import { arrowhead, dimension } from "../paper/dimension";
import { clipLine } from "../paper/boxes";
import { HOOK_WORDS } from "./hookWords";
import type { Scene, Spot } from "../paper/scene";
import { EDGE, Sketch } from "../paper/sketch";
import { spreadOut } from "../paper/spreadOut";
import { between } from "../paper/spots";
import type { StickPicture, StickMark } from "./stick";
import { bubble, BUBBLE, lineUpSymbol } from "../paper/symbols";
import { LINE_HEIGHT, textWidth, wrapText } from "../paper/textBox";
import { sentence } from "../paper/words";

export interface StickOptions {
  /** Width of the page [px]; 320 when left out. */
  readonly width?: number;
  /** How lengths are written, with their unit. */
  readonly show: ShowLength;
  /** Each mark's distance on a row of its own with line-up and hook, or (less room) alone under its mark. */
  readonly distances?: "rows" | "under";
  /** What stands over the ends. */
  readonly ends?: { readonly datum: string; readonly far: string };
}

const ENDS = { datum: "datum end", far: "far end" };

/** Thickness of the stick on the page: its length is to scale, its diameter is not. */
const STICK = 10;
const COUPLING = 9;
const TAG_GAP = 2 * BUBBLE + 3;
/** A row of text over a dimension line. */
const ROW = LINE_HEIGHT + 14;
/** Air between two distances on one line. */
const WORD_GAP = 8;

/**
 * A straight stick with its pencil marks, its length to scale: over it the bend numbers with what to line up, under it
 * each mark's distance from the datum end with the hook's direction, at the bottom the cut length.
 */
export function drawStick(
  stick: StickPicture,
  { width = 320, show, distances = "rows", ends: names = ENDS }: StickOptions,
): Scene {
  const sketch = new Sketch(width);
  const marks = [...stick.marks].sort((a, b) => a.distance - b.distance);
  const [low, high] = [Math.min(0, ...marks.map(at)), Math.max(stick.cutLength, ...marks.map(at))];
  const left = EDGE + COUPLING + 2;
  const scale = (width - 2 * left) / (high - low);
  const x = (distance: number): number => left + (distance - low) * scale;
  sketch.text(names.datum, [EDGE, LINE_HEIGHT / 2], "start");
  sketch.text(names.far, [width - EDGE, LINE_HEIGHT / 2], "end");
  const axis = drawTags(sketch, marks, x, LINE_HEIGHT + 4);
  drawBody(sketch, stick, x, axis);
  for (const mark of marks)
    sketch.line(
      [
        [x(mark.distance), axis - STICK],
        [x(mark.distance), axis + STICK],
      ],
      "mark",
    );
  const words = marks.map((mark) => markWords(mark, show));
  if (distances === "rows") {
    marks.forEach((mark, index) => drawRow(sketch, x(0), x(mark.distance), axis + STICK, words[index]!));
  } else drawUnder(sketch, marks, x, axis + STICK, show);
  const bottom = sketch.bottom + 14;
  const ends = [x(0), x(stick.cutLength)].map((end): Spot => [end, axis + STICK / 2]);
  dimension(sketch, { from: ends[0]!, to: ends[1]!, axis: "across", at: bottom, text: `cut ${show(stick.cutLength)}` });
  const couplings = [stick.coupledBefore && "datum", stick.coupledAfter && "far"].filter(Boolean);
  return sketch.finish(
    `${stick.name}: where to mark the stick`,
    [
      sentence(`Cut length ${show(stick.cutLength)}`),
      ...words.map((each) => `Bend ${each}.`),
      ...couplings.map((end) => `A coupling goes on the ${end} end.`),
    ].join(" "),
  );
}

const at = ({ distance }: StickMark): number => distance;

const markWords = ({ bend, distance, lineUp, lineUpWords = lineUp, hook }: StickMark, show: ShowLength): string =>
  `${bend}: ${show(distance)}, ${lineUpWords}, ${HOOK_WORDS[hook]}`;

/** Bend numbers and symbols in a row, moved apart where marks stand close, each joined to its mark. Gives the stick's y. */
function drawTags(sketch: Sketch, marks: readonly StickMark[], x: (distance: number) => number, top: number): number {
  const rows = Math.max(1, Math.ceil((marks.length * TAG_GAP) / (sketch.width - 2 * EDGE)));
  const [high, deep] = [2 * BUBBLE + 16, 14];
  const axis = top + (marks.length ? rows * high + deep : 0) + STICK;
  for (let row = 0; row < rows; row += 1) {
    const mine = marks.filter((_, index) => index % rows === row);
    const spots = spreadOut(
      mine.map((mark) => x(mark.distance)),
      TAG_GAP,
      EDGE + BUBBLE,
      sketch.width - EDGE - BUBBLE,
    );
    mine.forEach((mark, index) => {
      const center = spots[index]!;
      const y = top + row * high;
      bubble(sketch, [center, y + BUBBLE], mark.bend);
      lineUpSymbol(sketch, mark.lineUp, [center, y + 2 * BUBBLE + 8]);
      sketch.line(
        [
          [center, y + high],
          [x(mark.distance), axis - STICK],
        ],
        "extension",
      );
    });
  }
  return axis;
}

function drawBody(
  sketch: Sketch,
  { cutLength, coupledBefore, coupledAfter }: StickPicture,
  x: (distance: number) => number,
  axis: number,
): void {
  const bar = (from: number, to: number, half: number): Spot[] => [
    [from, axis - half],
    [to, axis - half],
    [to, axis + half],
    [from, axis + half],
  ];
  sketch.line(bar(x(0), x(cutLength), STICK / 2), "conduit", { closed: true });
  if (coupledBefore) sketch.line(bar(x(0) - COUPLING, x(0) + COUPLING / 2, STICK / 2 + 3), "conduit", { closed: true });
  if (coupledAfter)
    sketch.line(bar(x(cutLength) - COUPLING / 2, x(cutLength) + COUPLING, STICK / 2 + 3), "conduit", { closed: true });
}

/** Distances under their marks, on as many lines as keep them apart. */
function drawUnder(
  sketch: Sketch,
  marks: readonly StickMark[],
  x: (distance: number) => number,
  top: number,
  show: ShowLength,
): void {
  const taken: number[] = [];
  const placed = marks.map(({ distance }) => {
    const [text, half] = [show(distance), textWidth(show(distance)) / 2];
    const center = Math.min(sketch.width - EDGE - half, Math.max(EDGE + half, x(distance)));
    const free = taken.findIndex((right) => right + WORD_GAP <= center - half);
    const line = free < 0 ? taken.length : free;
    taken[line] = center + half;
    return { text, at: [center, top + (line + 0.75) * LINE_HEIGHT] as Spot, mark: x(distance) };
  });
  for (const { text, at } of placed) sketch.text(text, at, "middle");
  for (const { at, mark } of placed) dropLine(sketch, [mark, top], [mark, at[1] - LINE_HEIGHT / 2]);
}

/** One mark's text and, under it, the line from the datum end to the mark. */
function drawRow(sketch: Sketch, from: number, to: number, top: number, words: string): void {
  const left = from + 4;
  const lines = wrapText(words, sketch.width - EDGE - left);
  const first = sketch.bottom + ROW - 4 - LINE_HEIGHT / 2;
  lines.forEach((line, row) => sketch.text(line, [left, first + row * LINE_HEIGHT], "start"));
  const y = first + (lines.length - 0.5) * LINE_HEIGHT + 4;
  sketch.line(
    [
      [from, y],
      [to, y],
    ],
    "dimension",
  );
  const inward: Spot = to >= from ? [-1, 0] : [1, 0];
  if (Math.abs(to - from) > 8) arrowhead(sketch, [to, y], inward);
  dropLine(sketch, [to, top], [to, y + 3]);
}

/** A thin line down to a dimension, left out where it would run through a label. */
function dropLine(sketch: Sketch, from: Spot, to: Spot): void {
  const gaps = sketch.labels.flatMap((box) => clipLine(from, to, box) ?? []).sort((a, b) => a.enter - b.enter);
  let reached = 0;
  for (const { enter, leave } of [...gaps, { enter: 1, leave: 1 }]) {
    if (enter > reached) sketch.line([between(from, to, reached), between(from, to, enter)], "extension");
    reached = Math.max(reached, leave);
  }
}
