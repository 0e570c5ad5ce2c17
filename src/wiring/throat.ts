import type { Conductors } from "./conductors";
import { circularMils } from "./wireSizes";

/** Conductors of the circuit from this size on are kept from the edge of what they enter: NEC 300.4(G). */
const FROM = circularMils("4");

/**
 * True when insulated conductors of the circuit are 4 AWG or larger, so that each entry takes an insulated throat or bushing.
 * Grounds are no circuit conductors.
 */
export const needsThroat = (conductors: readonly Conductors[]): boolean =>
  conductors.some(({ role, size }) => role !== "ground" && circularMils(size) >= FROM);
