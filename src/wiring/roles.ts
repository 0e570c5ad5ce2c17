import type { Conductors } from "./conductors";
import { circularMils } from "./wireSizes";

/** The conductors of a raceway by what they are for. */
export interface Roles {
  readonly circuit: readonly Conductors[];
  readonly neutrals: readonly Conductors[];
  readonly grounds: readonly Conductors[];
  /** True where no ground was named, and the last conductor was taken for it. */
  readonly assumedGround: boolean;
  /** Current-carrying conductors: grounds and named neutrals are not counted (310.15(E), (F)). */
  readonly carrying: number;
}

/**
 * Parts conductors by their roles. Where no ground is named, a last kind of one conductor that is no larger than the ones before
 * is taken for it.
 *
 * @example rolesOf(readConductors("3 #4 THHN, 1 #8 THHN")).carrying //=> 3
 */
export function rolesOf(conductors: readonly Conductors[]): Roles {
  const of = (role: Conductors["role"]) => conductors.filter((each) => each.role === role);
  const [circuit, neutrals, named] = [of("circuit"), of("neutral"), of("ground")];
  const last = circuit.at(-1);
  const before = circuit.slice(0, -1);
  const assumedGround =
    named.length === 0 &&
    last?.count === 1 &&
    before.length > 0 &&
    before.every(({ size }) => circularMils(size) >= circularMils(last.size));
  const phases = assumedGround ? before : circuit;
  return {
    circuit: phases,
    neutrals,
    grounds: assumedGround ? [last!] : named,
    assumedGround,
    carrying: phases.reduce((sum, { count }) => sum + count, 0),
  };
}

/** Conductors of the circuit from this size on are kept from the edge of what they enter: NEC 300.4(G). */
const THROAT_FROM = circularMils("4");

/**
 * True when insulated conductors of the circuit are 4 AWG or larger, so that each entry takes an insulated throat or bushing.
 * Grounds are no circuit conductors.
 */
export const needsThroat = (conductors: readonly Conductors[]): boolean =>
  conductors.some(({ role, size }) => role !== "ground" && circularMils(size) >= THROAT_FROM);
