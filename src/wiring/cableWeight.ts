import { conductorArea, type Conductors } from "./conductors";
import table from "./data/pulling.json";
import { circularMils } from "./wireSizes";

const { weight } = table;

/**
 * Weight of one conductor [lb/ft]: its metal by circular mils, 2 % more for the lay of its strands, and its insulation by area.
 *
 * Copper 640.5 lb per 1,000 ft and 211,600 cmil (a wire table); aluminum in the ratio of the densities. The insulation's 0.7 lb/ft for
 * each in² is fitted to a utility's published weights: within 2 % of XLPE from 4 AWG to 500 kcmil, up to 9 % heavy for small THHN.
 *
 * @example conductorWeight(readConductors("1 #4/0 XHHW")[0]) //=> 0.7238
 */
export function conductorWeight({
  size,
  metal,
  compact,
  area,
}: Pick<Conductors, "size" | "metal" | "compact" | "area">): number {
  const strands = conductorArea(size, "bare", "conductors", compact);
  return weight[metal] * weight.stranding * circularMils(size) + weight.insulation * Math.max(0, area - strands);
}

/** Weight of conductors together [lb/ft]. */
export const conductorsWeight = (conductors: readonly Conductors[]): number =>
  conductors.reduce((sum, kind) => sum + kind.count * conductorWeight(kind), 0);
