import type { Scene } from "../paper/scene";
import { EDGE, Sketch } from "../paper/sketch";
import { LINE_HEIGHT, textWidth, wrapText } from "../paper/textBox";

export interface Count {
  readonly label: string;
  /** 0 or more. */
  readonly count: number;
}

export interface CountsOptions {
  readonly title: string;
  /** Width of the page [px]; 320 when left out. */
  readonly width?: number;
}

const BAR = 14;
const GAP = 8;
/** Labels take no more than this share of the width; longer ones go on in another line. */
const MOST_LABEL = 0.45;

/** Counts as bars that start at nothing, each with its label and its number. */
export function drawCounts(counts: readonly Count[], { title, width = 320 }: CountsOptions): Scene {
  const sketch = new Sketch(width);
  const most = Math.max(1, ...counts.map(({ count }) => count));
  const labels = counts.map(({ label }) => wrapText(label, width * MOST_LABEL));
  const left = EDGE + Math.max(0, ...labels.flat().map((line) => textWidth(line))) + 8;
  const right =
    width -
    EDGE -
    Math.max(...["0", ...counts.map(({ count }) => String(count))].map((text) => textWidth(text, "strong"))) -
    6;
  counts.forEach(({ count }, index) => {
    const lines = labels[index]!;
    const top = sketch.bottom + (index > 0 ? GAP : 0);
    const middle = top + (lines.length * LINE_HEIGHT) / 2;
    lines.forEach((line, row) => sketch.text(line, [left - 8, top + (row + 0.5) * LINE_HEIGHT], "end"));
    const end = left + ((right - left) * count) / most;
    const [high, low] = [middle - BAR / 2, middle + BAR / 2];
    if (count > 0)
      sketch.line(
        [
          [left, high],
          [end, high],
          [end, low],
          [left, low],
        ],
        "solid",
        { closed: true },
      );
    sketch.text(String(count), [end + 6, middle], "start", "strong");
  });
  if (counts.length)
    sketch.line(
      [
        [left, 0],
        [left, sketch.bottom],
      ],
      "shape",
    );
  else sketch.paragraph("Nothing to count.");
  const words = counts.map(({ label, count }) => `${label}: ${count}`);
  return sketch.finish(title, words.length ? `${words.join("; ")}.` : "Nothing to count.");
}
