import { NotListedError } from "../units/errors";
import { ROUNDING } from "../units/tolerances";
import table from "./data/elbows.json";
import { minimumRadiusRow } from "./minimumRadius";
import { racewayRecord, type Raceway } from "./raceway";
import type { Sourced } from "./sources";
import type { TradeSize } from "./tradeSize";

/** The code's article of PVC. */
const PVC = "352";

/** Centerline radius of a standard elbow [in]: the code's least for one-shot bends, as elbows have it (common practice). */
export const standardElbowRadius = (size: TradeSize): Sourced => minimumRadiusRow(size, "one-shot");

/**
 * Straight conduit at each end of a factory elbow [in].
 *
 * @throws NotListedError for EMT and RTRC, of whose elbows no print gives it, and for what has none
 * @example elbowStraightEnd("RMC", "4").value //=> 3.375
 */
export function elbowStraightEnd(raceway: Raceway, size: TradeSize): Sourced {
  const { threaded, elbows, article } = racewayRecord(raceway);
  if (elbows === "none") throw new NotListedError(`${raceway} is laid by hand: it has no elbows.`);
  if (threaded || article === PVC) return { value: table.ends.rows[size], source: table.ends.source };
  throw new NotListedError(
    `No straight end is listed for elbows of ${raceway}; measure yours for the rule Factory elbow straight ends.`,
  );
}

/** True when elbows of a radius [in] are sold: the standard one or a usual special one. */
export const isUsualRadius = (radius: number, size: TradeSize): boolean =>
  [standardElbowRadius(size).value, ...table.specialRadii.radii].some((usual) => Math.abs(usual - radius) < ROUNDING);

/** The usual special radii of elbows [in]. */
export const SPECIAL_RADII: readonly number[] = table.specialRadii.radii;
