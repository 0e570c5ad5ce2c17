import { isFlexible, racewayRecord } from "../../raceway/raceway";
import { WHOLE_STICK } from "../../units/tolerances";
import type { Run } from "../run/runsTable";

/** What is done to the ends of a piece that the saw made; nothing to a whole stick. */
export type SawnEnds = "none" | "trimmed" | "reamed" | "threaded and reamed";

/** What is done to the sawn ends of a piece. @param cutLength [in] */
export function sawnEndsOf({ raceway, stick }: Run, cutLength: number): SawnEnds {
  if (isFlexible(raceway)) return "trimmed";
  if (stick - cutLength < WHOLE_STICK) return "none";
  return racewayRecord(raceway).threaded ? "threaded and reamed" : "reamed";
}
