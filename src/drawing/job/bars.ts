import type { Spot } from "../paper/scene";
import { EDGE, type Sketch } from "../paper/sketch";
import { LINE_HEIGHT, textWidth, wrapText } from "../paper/textBox";

const BAR = 14;
const GAP = 8;

/** Labels at the left of bars, one below the other, each in as many lines as it takes. */
export class BarLabels {
  private readonly lines: readonly (readonly string[])[];
  /** Where the bars begin [px]. */
  readonly end: number;

  /** @param most width that a label takes before it goes on in another line [px] */
  constructor(labels: readonly string[], most: number) {
    this.lines = labels.map((label) => wrapText(label, most));
    this.end = EDGE + Math.max(0, ...this.lines.flat().map((line) => textWidth(line))) + 8;
  }

  /** Writes a label below what is drawn so far. @returns the middle of its height, where its bar lies [px] */
  write(sketch: Sketch, index: number): number {
    const lines = this.lines[index]!;
    const top = sketch.bottom + (index > 0 ? GAP : 0);
    lines.forEach((line, row) => sketch.text(line, [this.end - 8, top + (row + 0.5) * LINE_HEIGHT], "end"));
    return top + (lines.length * LINE_HEIGHT) / 2;
  }
}

/** Corners of a bar that lies from one place to another. */
export const bar = (from: number, to: number, middle: number): Spot[] => [
  [from, middle - BAR / 2],
  [to, middle - BAR / 2],
  [to, middle + BAR / 2],
  [from, middle + BAR / 2],
];
