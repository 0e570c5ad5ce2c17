import type { Scene } from "../paper/scene";
import { EDGE, Sketch } from "../paper/sketch";
import { textWidth } from "../paper/textBox";
import { bar, BarLabels } from "./bars";

export interface Count {
  readonly label: string;
  /** 0 or more. */
  readonly count: number;
  /** How the number is written, where it is no whole number. */
  readonly text?: string;
}

export interface CountsOptions {
  readonly title: string;
  /** Width of the page [px]; 320 when left out. */
  readonly width?: number;
}

/** Labels take no more than this share of the width; longer ones go on in another line. */
const MOST_LABEL = 0.45;

const textOf = ({ count, text = String(count) }: Count): string => text;

/** Counts as bars that start at nothing, each with its label and its number. */
export function drawCounts(counts: readonly Count[], { title, width = 320 }: CountsOptions): Scene {
  const sketch = new Sketch(width);
  const most = Math.max(1, ...counts.map(({ count }) => count));
  const labels = new BarLabels(
    counts.map(({ label }) => label),
    width * MOST_LABEL,
  );
  const left = labels.end;
  const right = width - EDGE - Math.max(...["0", ...counts.map(textOf)].map((text) => textWidth(text, "strong"))) - 6;
  counts.forEach((counted, index) => {
    const { count } = counted;
    const middle = labels.write(sketch, index);
    const end = left + ((right - left) * count) / most;
    if (count > 0) sketch.line(bar(left, end, middle), "solid", { closed: true });
    sketch.text(textOf(counted), [end + 6, middle], "start", "strong");
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
  const words = counts.map((counted) => `${counted.label}: ${textOf(counted)}`);
  return sketch.finish(title, words.length ? `${words.join("; ")}.` : "Nothing to count.");
}
