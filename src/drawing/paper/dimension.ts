import type { Spot } from "./scene";
import type { PagePlace, Sketch } from "./sketch";
import { LINE_HEIGHT, textWidth } from "./textBox";
import { between, move, perpendicular, spread, toward } from "./spots";

const HEAD = 7;
const HALF_HEAD = 2.4;
const GAP = 3;
/** Least room between two arrowheads that stand inside. */
const LEAST_INSIDE = 2 * HEAD + 4;

export interface Dimension {
  /** What is measured: two spots of the drawing. */
  readonly from: Spot;
  readonly to: Spot;
  /** Measured across the page, up the page, or straight from one to the other. */
  readonly axis: "across" | "up" | "straight";
  /** Where the dimension line stands: its y, its x, or how far to the left of the way from → to. */
  readonly at: number;
  readonly text: string;
}

/** Whether text that takes so much of a dimension line stands between its arrowheads. */
export const fitsBetween = (length: number, taken: number): boolean => length >= taken + LEAST_INSIDE;

/** A dimension with its extension lines, arrowheads and text; what does not fit between goes beside. */
export function dimension(sketch: Sketch, { from, to, axis, at, text }: Dimension): void {
  const side = perpendicular(toward(from, to));
  const [a, b] = [from, to].map((spot): Spot => {
    if (axis === "across") return [spot[0], at];
    if (axis === "up") return [at, spot[1]];
    return move(spot, side, at);
  }) as [Spot, Spot];
  extension(sketch, from, a);
  extension(sketch, to, b);
  const length = spread(a, b);
  const along = toward(a, b);
  const inside = length >= LEAST_INSIDE;
  arrowhead(sketch, a, inside ? along : back(along));
  arrowhead(sketch, b, inside ? back(along) : along);
  const taken = Math.abs(along[0]) * textWidth(text) + Math.abs(along[1]) * LINE_HEIGHT;
  const middle = between(a, b, 0.5);
  if (fitsBetween(length, taken)) {
    const half = taken / 2 + GAP;
    sketch.line([a, move(middle, along, -half)], "dimension");
    sketch.line([move(middle, along, half), b], "dimension");
    sketch.text(text, middle, "middle");
    return;
  }
  if (inside) sketch.line([a, b], "dimension");
  else
    for (const [spot, way] of [
      [a, back(along)],
      [b, along],
    ] as const)
      sketch.line([spot, move(spot, way, 2 * HEAD)], "dimension");
  const reach = inside ? GAP : 2 * HEAD + GAP;
  sketch.label(text, [...beside(middle, along), ...beyond(b, along, reach), ...beyond(a, back(along), reach)]);
}

/** An arrow's head whose point is at `tip` and whose feathers lie toward `inward`. */
export function arrowhead(sketch: Sketch, tip: Spot, inward: Spot, size = HEAD): void {
  const base = move(tip, inward, size);
  const side = perpendicular(inward);
  const half = (size * HALF_HEAD) / HEAD;
  sketch.line([tip, move(base, side, half), move(base, side, -half)], "solid", { closed: true });
}

function extension(sketch: Sketch, from: Spot, to: Spot): void {
  const length = spread(from, to);
  if (length < 2 * GAP) return;
  const along = toward(from, to);
  sketch.line([move(from, along, GAP), move(to, along, GAP)], "extension");
}

const back = (way: Spot): Spot => [-way[0], -way[1]];

/** Places beside a spot of a line that runs `along`. */
function beside(spot: Spot, along: Spot): PagePlace[] {
  const side = perpendicular(along);
  const off = LINE_HEIGHT / 2 + 2;
  if (Math.abs(along[0]) > 0.9) {
    return [-1, 1].map((sign): PagePlace => ({
      at: move(spot, side, sign * off * Math.sign(along[0])),
      anchor: "middle",
    }));
  }
  return [1, -1].map((sign): PagePlace => ({
    at: [spot[0] + sign * (GAP + 3), spot[1]],
    anchor: sign > 0 ? "start" : "end",
  }));
}

/** Places past the end of a line that runs `along`. */
function beyond(spot: Spot, along: Spot, reach: number): PagePlace[] {
  const at = move(spot, along, reach + Math.abs(along[1]) * (LINE_HEIGHT / 2));
  const anchor = along[0] > 0.3 ? "start" : along[0] < -0.3 ? "end" : "middle";
  return [{ at, anchor }];
}
