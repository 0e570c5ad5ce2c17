import { SAME_PLACE } from "../units/tolerances";
import { NotListedError } from "../units/errors";
import table from "./data/sticks.json";
import { racewayRecord, type Raceway } from "./raceway";
import type { Sourced } from "./sources";
import type { TradeSize } from "./tradeSize";

const { threaded, sockets } = table;

/** Straight conduit for a coupling of EMT, and for one of what is laid by hand [in]. Common practice, no source. */
const EMT_SEAT = 1;

/** The code's article of PVC. */
const PVC = "352";

/**
 * Length of a stick as conduit that can be laid or cut [in]. A threaded one comes with a coupling and is nominally 10 ft with
 * it; without, its pipe is shorter.
 *
 * @throws NotListedError for what comes in coils
 * @example stickLength("RMC", "4").value //=> 118.25
 */
export function stickLength(raceway: Raceway, size: TradeSize): Sourced {
  const { stick, threaded: isThreaded } = racewayRecord(raceway);
  if (isThreaded) return { value: threaded.rows[size].length, source: threaded.source };
  if (stick) return stick;
  throw new NotListedError(`${raceway} comes in coils and is bought by the foot: it has no stick.`);
}

/** What a threaded stick's pipe lacks of its nominal length [in]; of others their bell. */
const lack = (raceway: Raceway, size: TradeSize, bell: number): number =>
  racewayRecord(raceway).threaded ? threaded.nominal - threaded.rows[size].length : bell;

const isNominal = (length: number): boolean => {
  const sticks = length / threaded.nominal;
  return sticks > 0.5 && Math.abs(sticks - Math.round(sticks)) < SAME_PLACE;
};

/**
 * Conduit in a stick that is called so long [in]: threaded ones of 10 or 20 ft have their coupling in it; any other length
 * is taken as it stands.
 *
 * @param bell what of such a stick is its bell [in], where it has one
 * @example usableStick("RMC", "1", 240) //=> 239
 */
export const usableStick = (raceway: Raceway, size: TradeSize, called: number, bell = 0): number =>
  isNominal(called) ? called - lack(raceway, size, bell) : called;

/** What a stick is called and sold by [in]: the inverse. @example nominalStick("RMC", "1", 239) //=> 240 */
export function nominalStick(raceway: Raceway, size: TradeSize, usable: number, bell = 0): number {
  const called = usable + lack(raceway, size, bell);
  return isNominal(called) ? called : usable;
}

/** Length of the coupling that comes on a threaded stick [in]. @throws NotListedError for others */
export function couplingLength(raceway: Raceway, size: TradeSize): Sourced {
  if (racewayRecord(raceway).threaded) return { value: threaded.rows[size].coupling, source: threaded.source };
  throw new NotListedError(`No coupling length is listed for ${raceway}; only threaded conduit has one.`);
}

/** Depth of the socket of a PVC coupling or fitting, the least [in]. @throws NotListedError for others */
export function socketDepth(raceway: Raceway, size: TradeSize): Sourced {
  if (racewayRecord(raceway).article === PVC) return { value: sockets.rows[size], source: sockets.source };
  throw new NotListedError(`No socket depth is listed for ${raceway}; only PVC has sockets.`);
}

/** Straight conduit that a coupling wants beside a bend [in]: its own length, or the depth of its socket; RTRC as PVC (common practice, no source). */
export function couplingSeat(raceway: Raceway, size: TradeSize): number {
  const { threaded: isThreaded, elbows } = racewayRecord(raceway);
  if (isThreaded) return couplingLength(raceway, size).value;
  return elbows === "PVC" ? sockets.rows[size] : EMT_SEAT;
}
