import type { ShowLength } from "../bend/bendDimensions";
import type { Scene, Spot } from "../paper/scene";
import { EDGE, Sketch } from "../paper/sketch";
import { textWidth } from "../paper/textBox";
import { sentence } from "../paper/words";

/** Pieces of one length cut from a stick. */
export interface DrawnPiece {
  /** [in] */
  readonly length: number;
  readonly count: number;
  /** What the piece is for. */
  readonly label?: string;
}

/** Sticks that are cut alike. */
export interface DrawnStick {
  /** [in] */
  readonly length: number;
  readonly count: number;
  /** Raceway and size, or where the stick comes from. */
  readonly label?: string;
  readonly pieces: readonly DrawnPiece[];
  /** What is left at the far end [in], kerfs taken off. */
  readonly remnant: number;
  /** What is left: its names, and where it goes. */
  readonly drop?: { readonly names: string; readonly goesTo: string };
}

export interface CutsOptions {
  readonly title: string;
  /** Width of the page [px]; 320 when left out. */
  readonly width?: number;
  readonly show: ShowLength;
  /** What the saw takes with each cut [in]. */
  readonly kerf?: number;
}

const BAR = 18;
const HATCH = 6;
const STICK_GAP = 10;

/** Sticks as bars to one scale, with their cuts in order from the left and what is left over hatched. */
export function drawCuts(sticks: readonly DrawnStick[], { title, width = 320, show, kerf = 0 }: CutsOptions): Scene {
  const sketch = new Sketch(width);
  const longest = Math.max(0, ...sticks.map(({ length }) => length));
  const scale = longest > 0 ? (width - 2 * EDGE) / longest : 1;
  const words = sticks.map((stick) => stickWords(stick, show));
  sticks.forEach((stick, index) => {
    const { head, list } = words[index]!;
    sketch.paragraph(head, "strong", index > 0 ? STICK_GAP : 0);
    drawBar(sketch, stick, sketch.bottom + 3, scale, kerf, show);
    sketch.paragraph(list);
  });
  if (sticks.length === 0) sketch.paragraph("Nothing to cut.");
  const description = words.map(({ head, list }) => `${head}: ${list}`).join(" ");
  return sketch.finish(title, description || "Nothing to cut.");
}

function stickWords(
  { length, count, label, pieces, remnant, drop }: DrawnStick,
  show: ShowLength,
): { head: string; list: string } {
  const cuts = pieces.map((piece) => {
    return `${piece.count} × ${show(piece.length)}${piece.label ? ` (${piece.label})` : ""}`;
  });
  const head = `${count} × ${show(length)}${label ? ` ${label}` : ""}`;
  const left = [`left ${show(remnant)}`, ...(drop ? [drop.names, `to ${drop.goesTo}`] : [])].filter(Boolean);
  return { head, list: sentence(`${cuts.join(", ") || "no cuts"}; ${left.join(", ")}`) };
}

/** One bar; a length stands in its piece where it fits, the list under the bar has them all. */
function drawBar(sketch: Sketch, stick: DrawnStick, top: number, scale: number, kerf: number, show: ShowLength): void {
  const [middle, bottom] = [top + BAR / 2, top + BAR];
  let reached = 0;
  const part = (length: number, text: string): { left: number; right: number } => {
    const [left, right] = [EDGE + reached * scale, EDGE + (reached + length) * scale];
    sketch.line(corners(left, right, top, bottom), "conduit", { closed: true, width: 1.25 });
    if (right - left > textWidth(text) + 6) sketch.text(text, [(left + right) / 2, middle], "middle");
    return { left, right };
  };
  for (const { length, count } of stick.pieces) {
    for (let copy = 0; copy < count; copy += 1) {
      part(length, show(length));
      reached += length + kerf;
    }
  }
  reached = stick.length - stick.remnant;
  if (stick.remnant * scale < 1) return;
  const from = EDGE + reached * scale;
  const to = EDGE + stick.length * scale;
  sketch.line(corners(from, to, top, bottom), "shape", { closed: true });
  for (let x = from + HATCH; x < to + BAR; x += HATCH) {
    const [a, b] = [Math.min(x, to), Math.max(x - BAR, from)];
    sketch.line(
      [
        [a, top + (x - a)],
        [b, top + (x - b)],
      ],
      "faint",
    );
  }
}

const corners = (left: number, right: number, top: number, bottom: number): Spot[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];
