import type { Scene } from "../paper/scene";
import { EDGE, Sketch } from "../paper/sketch";
import { textWidth } from "../paper/textBox";
import { bar, BarLabels } from "./bars";

/** What one crew made and scrapped on one day, and what of the job was left after it. */
export interface Day {
  readonly label: string;
  readonly made: number;
  readonly scrapped: number;
  readonly left: number;
}

export interface DaysOptions {
  readonly title: string;
  /** Width of the page [px]; 320 when left out. */
  readonly width?: number;
}

/** Labels take no more than this share of the width; longer ones go on in another line. */
const MOST_LABEL = 0.34;
const leftWords = (left: number): string => `${left} left`;

/** Days as bars from nothing: filled what was made, open what was scrapped; at the right what was left after it. */
export function drawDays(days: readonly Day[], { title, width = 320 }: DaysOptions): Scene {
  const sketch = new Sketch(width);
  const most = Math.max(1, ...days.map(({ made, scrapped }) => made + scrapped));
  const labels = new BarLabels(
    days.map(({ label }) => label),
    width * MOST_LABEL,
  );
  const left = labels.end;
  const numbers = Math.max(...days.map(({ made, scrapped }) => textWidth(countWords(made, scrapped), "strong")), 0) + 6;
  const right = width - EDGE - Math.max(...days.map((day) => textWidth(leftWords(day.left))), 0) - 8;
  const scale = Math.max(0, right - numbers - left) / most;
  days.forEach(({ made, scrapped, left: after }, index) => {
    const middle = labels.write(sketch, index);
    const [end, all] = [left + made * scale, left + (made + scrapped) * scale];
    if (made > 0) sketch.line(bar(left, end, middle), "solid", { closed: true });
    if (scrapped > 0) sketch.line(bar(end, all, middle), "shape", { closed: true });
    sketch.text(countWords(made, scrapped), [all + 6, middle], "start", "strong");
    sketch.text(leftWords(after), [width - EDGE, middle], "end");
  });
  if (days.length === 0) sketch.paragraph("Nothing was made yet.");
  const words = days.map(
    ({ label, made, scrapped, left: after }) => `${label}: ${made} made, ${scrapped} scrapped, ${leftWords(after)}`,
  );
  return sketch.finish(title, words.length > 0 ? `${words.join("; ")}.` : "Nothing was made yet.");
}

/** Scrapped ones are added with a minus, in the open part of the bar: 9 −1. */
const countWords = (made: number, scrapped: number): string => (scrapped > 0 ? `${made} −${scrapped}` : String(made));
