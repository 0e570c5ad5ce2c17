/**
 * The bench: where a pencil mark stands on the shoe, and so which part of the stick the shoe bends.
 *
 * Places on the shoe are told along the conduit as it lies on the shoe, 0 where the bend starts, positive away from the
 * hook. Nothing here knows "mark = start − …": the stick is laid on the shoe and one reads off what is over the bend.
 */
import { radians } from "./frame";

/** What the simulator may know of a shoe [in]. */
export interface BenchShoe {
  readonly radius: number;
  readonly deduct: number;
  readonly outsideDiameter: number;
  /** What a finished 90 opened, and a bend at another angle [°]; none: conduit that does not spring back. */
  readonly springback?: {
    readonly at90: number;
    readonly second?: { readonly angle: number; readonly opened: number };
  };
}

/** The straight line through both tests, or through one and nothing at 0. */
function springbackLine({ springback }: BenchShoe): { still: number; perDegree: number } {
  const { at90 = 0, second } = springback ?? {};
  if (!second) return { still: 0, perDegree: at90 / 90 };
  const perDegree = (at90 - second.opened) / (90 - second.angle);
  return { still: at90 - perDegree * 90, perDegree };
}

/** How far the shoe must turn for a finished angle [°]. */
export function turnOfShoe(shoe: BenchShoe, angle: number): number {
  const { still, perDegree } = springbackLine(shoe);
  return angle + still + perDegree * angle;
}

/** The angle left when the shoe turned so far and let go [°]. */
export function angleLeft(shoe: BenchShoe, turned: number): number {
  const { still, perDegree } = springbackLine(shoe);
  return (turned - still) / (1 + perDegree);
}

/** Conduit that lies on the shoe while it is held at its turn [in]: as much is bent when it is let go. */
export function conduitOnShoe(shoe: BenchShoe, angle: number): number {
  const held = (shoe.radius * 90) / turnOfShoe(shoe, 90);
  return held * radians(turnOfShoe(shoe, angle));
}

/** Radius of a bend after it was let go [in]. */
export const radiusLeft = (shoe: BenchShoe, angle: number): number => conduitOnShoe(shoe, angle) / radians(angle);

export const LINE_UPS = ["arrow", "star", "notch"] as const;
export const HOOKS = ["datum", "far"] as const;

/** One stroke of the bender. */
export interface Stroke {
  /** From the datum end along the straight stick [in]. */
  readonly mark: number;
  readonly lineUp: (typeof LINE_UPS)[number];
  readonly hook: (typeof HOOKS)[number];
  /** Finished angle [°]. */
  readonly angle: number;
  /** How far the stick is rolled against the stroke before [°], as the plane of the finished shape. */
  readonly plane: number;
}

/** Where a line-up symbol stands on the shoe [in]. */
export function placeOnShoe(shoe: BenchShoe, lineUp: Stroke["lineUp"], angle: number): number {
  /** From the tangent point of a 90 to the outside face of the leg beyond it. */
  const tangentToBack = shoe.radius + shoe.outsideDiameter / 2;
  switch (lineUp) {
    // A stub hooked by its end: end to mark, plus the deduct, is end to back.
    case "arrow":
      return tangentToBack - shoe.deduct;
    // Hooked by the far end, the finished 90 has its back over the star: measured back from where a 90's arc ends.
    case "star":
      return shoe.radius * radians(90) - tangentToBack;
    // Over the middle of the bend.
    case "notch":
      return conduitOnShoe(shoe, angle) / 2;
  }
}

/** The stretch of the straight stick that a stroke bends, from the datum end [in]. */
export function bentStretch(shoe: BenchShoe, stroke: Stroke): { from: number; to: number } {
  const symbol = placeOnShoe(shoe, stroke.lineUp, stroke.angle);
  const onStick = (place: number): number =>
    stroke.hook === "datum" ? stroke.mark + (place - symbol) : stroke.mark - (place - symbol);
  const ends = [onStick(0), onStick(conduitOnShoe(shoe, stroke.angle))];
  return { from: Math.min(...ends), to: Math.max(...ends) };
}
