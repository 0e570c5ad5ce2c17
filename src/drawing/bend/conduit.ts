import type { LineStyle, Spot } from "../paper/scene";
import type { Sketch } from "../paper/sketch";
import { between, move, perpendicular, toward } from "../paper/spots";

/** Thinner than this on the page, conduit is one line. */
const THIN = 3.5;

export interface ConduitLook {
  /** Outside diameter in page units. */
  readonly diameter: number;
  readonly style?: LineStyle;
  readonly centerline?: boolean;
  /** Which ends are drawn broken off, because the conduit goes on. */
  readonly broken?: { readonly start?: boolean; readonly end?: boolean };
}

/** Conduit whose centerline runs through `spots`: both sides at its diameter, and the centerline. */
export function drawConduit(sketch: Sketch, spots: readonly Spot[], look: ConduitLook): void {
  const { diameter, style = "conduit", centerline = true, broken = {} } = look;
  if (diameter < THIN) {
    sketch.line(spots, style === "conduit" ? "conduit-thin" : style);
    return;
  }
  const [left, right] = [sideLine(spots, diameter / 2), sideLine(spots, -diameter / 2)];
  const outline = [
    ...left,
    ...(broken.end ? zigzag(left.at(-1)!, right.at(-1)!) : []),
    ...right.reverse(),
    ...(broken.start ? zigzag(right.at(-1)!, left[0]!) : []),
  ];
  sketch.line(outline, style, { closed: true });
  if (centerline) sketch.line(spots, "centerline");
}

/** The line `off` to the left of a line of spots. Exact on straights; on arcs to the fineness of the spots. */
export function sideLine(spots: readonly Spot[], off: number): Spot[] {
  return spots.map((spot, index) => {
    const [before, after] = [spots[index - 1] ?? spot, spots[index + 1] ?? spot];
    const [into, out] = [toward(before, spot), toward(spot, after)];
    const [a, b] = [perpendicular(before === spot ? out : into), perpendicular(after === spot ? into : out)];
    const middle = toward([0, 0], [a[0] + b[0], a[1] + b[1]]);
    return move(spot, middle, off / (middle[0] * a[0] + middle[1] * a[1]));
  });
}

/** The edge of conduit that is drawn broken off. */
function zigzag(from: Spot, to: Spot): Spot[] {
  const way = perpendicular(toward(from, to));
  return [move(between(from, to, 0.35), way, 3), move(between(from, to, 0.65), way, -3)];
}
