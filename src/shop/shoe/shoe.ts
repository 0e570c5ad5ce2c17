import type { Degrees } from "../../geometry/angle";
import type { Raceway } from "../../raceway/raceway";
import type { TradeSize } from "../../raceway/tradeSize";
import { arcOf, type TestedShoe } from "./springback";

/** A shoe of a bender: everything the schedule must know about it. Lengths in inches, angles in degrees. */
export interface Shoe extends TestedShoe {
  readonly raceway: Raceway;
  readonly size: TradeSize;
  /** Stub length (end to back of the 90) less the arrow's mark [in]. */
  readonly deduct: number;
  /** Outside diameter of the conduit [in]. */
  readonly outsideDiameter: number;
  /** Degrees that a finished 90 opened when it was let go. */
  readonly springback: Degrees;
  /** Lowest and highest reading of the dial, and the reading it starts from [°]. */
  readonly dialFrom: Degrees;
  readonly dialTo: Degrees;
  readonly dialStart: Degrees;
  /** Shortest straight end the shoe can hold [in]. */
  readonly shortestTail: number;
  /** Where the values come from, in words. */
  readonly source: string;
  /** When it was measured and how far that may be off, as written; none for a shoe that never was. */
  readonly measured?: string;
  /** Its row in the Shoes range, 1 for the first; none for a shoe that does not stand there. */
  readonly row?: number;
}

/** What the marks of a bend are worked out from. */
export type MarkedShoe = TestedShoe & Pick<Shoe, "deduct" | "outsideDiameter">;

/** Bend angles that have a center notch on the shoe [°]. Common practice, no source. */
export const NOTCH_ANGLES: readonly number[] = [30, 45, 60];

/** Gain of a 90 measured outside to outside [in]: 2(R + OD/2) − πR/2. */
export function backGain(shoe: Pick<Shoe, "radius" | "outsideDiameter">): number {
  return 2 * (shoe.radius + shoe.outsideDiameter / 2) - (Math.PI * shoe.radius) / 2;
}

/** How far the arrow stands before the start of the bend, on the hook's side [in]: deduct − (R + OD/2). */
export function arrowLead(shoe: Pick<Shoe, "radius" | "deduct" | "outsideDiameter">): number {
  return shoe.deduct - (shoe.radius + shoe.outsideDiameter / 2);
}

/** Straight conduit needed on the hook's side of a bend [in]: enough to hold, and enough for the arrow's mark to be on it. */
export function tailNeeded(shoe: Shoe): number {
  return Math.max(shoe.shortestTail, arrowLead(shoe));
}

/** Distance from the arrow to the star, the back of a finished 90 [in]: deduct − back gain. */
export function starFromArrow(shoe: Pick<Shoe, "radius" | "deduct" | "outsideDiameter">): number {
  return shoe.deduct - backGain(shoe);
}

/** Distance from the arrow to the center notch for an angle [in]: arrow lead + half the arc. */
export function notchFromArrow(shoe: MarkedShoe, angle: Degrees): number {
  return arrowLead(shoe) + arcOf(shoe, angle) / 2;
}
