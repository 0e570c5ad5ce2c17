import { pathParts } from "../../geometry/path";
import { pathSpans, onSpan } from "../../geometry/span";
import type { Vec3 } from "../../geometry/vector";
import type { ShowLength } from "../bend/bendDimensions";
import type { RunPull } from "./runDrawing";
import type { Spot } from "../paper/scene";
import type { PagePlace, Sketch } from "../paper/sketch";
import { between, move, perpendicular, spread, toward } from "../paper/spots";
import { bubble, BUBBLE } from "../paper/symbols";

type ToPage = (point: Vec3) => Spot;

/** How far from its bend a number may stand; past `LED_FROM` a line leads to it. */
const REACHES = [16, 28, 44];
const LED_FROM = 30;
/** Ways round a bend, the outside of the bend itself apart. */
const ROUND: readonly Spot[] = [
  [0, -1],
  [0, 1],
  [1, 0],
  [-1, 0],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
];

/** Numbers at the bends, counted through all pulls, on the outside of each bend where there is room. */
export function numberBends(sketch: Sketch, pulls: readonly RunPull[], page: ToPage): void {
  let number = 0;
  for (const { path } of pulls) {
    for (const span of pathSpans(path)) {
      if (span.kind !== "arc") continue;
      number += 1;
      const [middle, center] = [page(onSpan(span, span.length / 2).point), page(span.center)];
      const out = toward(center, middle);
      const ways = [out, ...ROUND].map((way) => toward([0, 0], way));
      const spots = REACHES.flatMap((reach) => ways.map((way) => move(middle, way, reach)));
      const spot = sketch.freeSpot(spots as [Spot, ...Spot[]], BUBBLE);
      const way = toward(middle, spot);
      if (spread(middle, spot) > LED_FROM) sketch.line([middle, move(spot, way, -BUBBLE)], "extension");
      bubble(sketch, spot, number);
    }
  }
}

/** Lengths of the legs, corner to corner, beside them. Gives those that found no room, in words. */
export function labelLegs(sketch: Sketch, pulls: readonly RunPull[], page: ToPage, show: ShowLength): string[] {
  const left: string[] = [];
  let bend = 0;
  pulls.forEach(({ path }, pull) => {
    const { legs } = pathParts(path);
    legs.forEach((length, index) => {
      const ends = [page(path.points[index]!), page(path.points[index + 1]!)] as const;
      const from = index > 0 ? `bend ${bend}` : pull > 0 ? "box" : "datum end";
      if (index < legs.length - 1) bend += 1;
      const to = index < legs.length - 1 ? `bend ${bend}` : pull < pulls.length - 1 ? "box" : "far end";
      if (!sketch.labelIfFree(show(length), placesBeside(...ends))) left.push(`${from} to ${to} ${show(length)}`);
    });
  });
  return left;
}

/** Places along a leg, its middle first, on both sides, near and then farther. */
function placesBeside(from: Spot, to: Spot): PagePlace[] {
  const side = perpendicular(toward(from, to));
  const steep = Math.abs(side[0]);
  const shares = spread(from, to) > 30 ? [0.5, 0.35, 0.65, 0.2, 0.8] : [0.5];
  return [0, 9].flatMap((more) =>
    shares.flatMap((share) =>
      [1, -1].map((sign): PagePlace => {
        const anchor = steep < 0.25 ? "middle" : side[0] * sign > 0 ? "start" : "end";
        return { at: move(between(from, to, share), side, sign * (12 - 4 * steep + more)), anchor };
      }),
    ),
  );
}
