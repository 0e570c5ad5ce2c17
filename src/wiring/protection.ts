import { show } from "../units/show";
import table from "./data/protection.json";
import { ampacityOf, hasAmpacity, listedAmpacity, type Ampacity } from "./ampacity";
import type { WireMetal } from "./groundingSize";
import { WIRE_SIZES } from "./wireSizes";

const { ratings, roundUpTo } = table;
const SMALL: Record<WireMetal, Record<string, number>> = table.small;

/** What a conductor's ampacity depends on besides its size. */
export interface Circuit {
  readonly metal: WireMetal;
  /** Current-carrying conductors in the raceway. */
  readonly carrying: number;
  /** Air around [°C]. */
  readonly celsius: number;
  /** Temperatures of the insulation and of the terminals [°C]. */
  readonly insulation: number;
  readonly terminals: number;
  /** Parallel sets, one to a raceway. */
  readonly sets: number;
}

/** What one conductor may carry: by its insulation, made less, and by its terminals, as listed; the smaller counts. */
export interface Allowed extends Ampacity {
  /** [A] */
  readonly atTerminals: number;
  /** [A] */
  readonly allowed: number;
}

/**
 * Ampacity of one conductor in its circuit: NEC 310.15, with the terminals' column as a cap (110.14(C)).
 *
 * @throws NotListedError for what the tables have not
 * @example allowedAmpacity("12", { metal: "copper", carrying: 9, celsius: 30, insulation: 90, terminals: 60, sets: 1 }).allowed //=> 20
 */
export function allowedAmpacity(size: string, circuit: Circuit): Allowed {
  const { metal, carrying, celsius, insulation, terminals } = circuit;
  const found = ampacityOf(size, carrying, celsius, insulation, metal);
  const atTerminals = listedAmpacity(size, Math.min(terminals, insulation), metal);
  return { ...found, atTerminals, allowed: Math.min(found.ampacity, atTerminals) };
}

/** Ampacities are compared to this [A]: 20.999… is 21. */
const SAME_AMPERES = 1e-9;

/**
 * The largest overcurrent device that protects conductors of a size [A]: the next standard rating up to 800 A (240.4(B)), the next
 * below from there on (C), and no more than small conductors may have (D).
 *
 * @example largestBreaker("12", 21, "copper") //=> 20
 */
export function largestBreaker(size: string, amperes: number, metal: WireMetal): number {
  const up = ratings.find((rating) => rating >= amperes - SAME_AMPERES) ?? Infinity;
  const down = [...ratings].reverse().find((rating) => rating <= amperes + SAME_AMPERES) ?? 0;
  return Math.min(up <= roundUpTo ? up : down, SMALL[metal][size] ?? Infinity);
}

/** The smallest size whose ampacity the breaker protects; undefined where none is listed. */
export function smallestFor(breaker: number, circuit: Circuit): string | undefined {
  const protects = (size: string): boolean =>
    largestBreaker(size, circuit.sets * allowedAmpacity(size, circuit).allowed, circuit.metal) >= breaker;
  return WIRE_SIZES.find((size) => hasAmpacity(size, circuit.metal) && protects(size));
}

/** @example circuitInWords(…) //=> "9 current-carrying, 30 °C, terminals of 60 °C" */
export const circuitInWords = ({ carrying, celsius, terminals }: Circuit): string =>
  `${carrying} current-carrying, ${show(celsius, 1)} °C, terminals of ${terminals} °C`;
