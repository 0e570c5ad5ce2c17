import type { Sourced } from "../sources";
import type { TradeSize } from "../tradeSize";

/** What the dimension tables hold of a raceway and size: lengths [in], area [in²], weight [lb/100 ft]. */
export type RacewayDimension = "outsideDiameter" | "insideDiameter" | "wall" | "area" | "weight";

export type DimensionRows = Partial<Record<TradeSize, Partial<Record<RacewayDimension, Sourced>>>>;

/** Deducts [in] with their sources, by size. */
type Deducts = Partial<Record<TradeSize, Sourced>>;

/**
 * The built-in shoes of a kind: its own by size; those of EMT so many sizes larger, by deducts of its own (`onEmt`); or
 * those of another kind so many sizes larger.
 */
export type KindOfShoe =
  | { readonly deducts: Deducts; readonly onEmt?: { readonly sizesUp: number; readonly source: string } }
  | { readonly of: KindOfShoe & { readonly deducts: Deducts }; readonly name: string; readonly sizesUp: number };

/** Rate [in/(in·°F)] and rule: those of PVC and RTRC say from what change a fitting is needed, that of metal does not. */
export interface Expansion {
  readonly rate: number;
  readonly rule: "expansion" | "rtrcExpansion" | "metalExpansion";
}

export type FittingStyle = "set-screw" | "compression" | "threaded" | "cement" | "flex" | "liquidtight" | "snap-on";

/**
 * All that is to be known of a kind of raceway. A new kind is a file with one of these and a line in `kinds/index.ts`; the
 * compiler then names the rules of the take-off that it lacks.
 */
export interface RacewayRecord {
  /** The trade's other words for it, lower case, letters and digits only. */
  readonly words: readonly string[];
  /** Its article in the electrical code. */
  readonly article: string;
  readonly sizes: DimensionRows;
  /** Nominal length of a stick [in]; absent for what comes in coils. */
  readonly stick?: Sourced;
  /** True when its ends are threaded. */
  readonly threaded: boolean;
  /** True for what is laid by hand and bought by the foot: not bent on a shoe, and no sticks to cut. */
  readonly flexible?: true;
  /** Which rule says from what size on its bends are bought as factory elbows; "none" for what has no elbows. */
  readonly elbows: "metal" | "PVC" | "none";
  /** Whether it may be the equipment ground itself: always, never, or short lengths by conditions of the code. */
  readonly ground: "always" | "never" | "short lengths";
  /** Straps: the code's rule for it, their spacing and the farthest from each end [ft], one for all sizes or by size. */
  readonly supports: {
    readonly rule: "supports" | "pvcSupports";
    readonly spacing: number | Readonly<Record<TradeSize, number>>;
    readonly fromEnd: number;
    /** Spacing of a straight run with threaded couplings [ft], where the code allows another one. */
    readonly straightThreaded?: Readonly<Record<TradeSize, number>>;
  };
  /** Thermal expansion of its material, and the code's rule for it; absent where none is listed. */
  readonly expansion?: Expansion;
  /** Places where the code does not let it be. */
  readonly notIn?: readonly ("wet" | "buried" | "in concrete")[];
  /** Fitting styles it takes, the usual one first. Common practice, no source. */
  readonly styles: readonly FittingStyle[];
  readonly shoes: KindOfShoe;
}
