import { NotListedError } from "../units/errors";
import table from "./data/threads.json";
import { RACEWAYS, racewayRecord, type Raceway } from "./raceway";
import type { Sourced } from "./sources";
import type { TradeSize } from "./tradeSize";

const THREADED = RACEWAYS.filter((raceway) => racewayRecord(raceway).threaded);

/**
 * The taper pipe thread of threaded conduit: effective length [in] or threads per inch.
 *
 * @throws NotListedError for raceways that are not threaded
 * @example thread("RMC", "1/2", "length").value //=> 0.5337
 */
export function thread(raceway: Raceway, size: TradeSize, which: "length" | "perInch"): Sourced {
  if (!THREADED.includes(raceway)) {
    throw new NotListedError(`No thread is listed for ${raceway}; only ${THREADED.join(", ")} have threaded ends.`);
  }
  return { value: table.threads[size][which], source: table.source };
}
