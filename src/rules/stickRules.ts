import type { Raceway, StickRaceway } from "../raceway/raceway";
import type { RuleName } from "./rules";

/** What a rule says of the sticks of each raceway that comes in sticks. */
export type StickPart = "Couplings with each stick" | "Cut allowance per piece";

/**
 * The rule that says it. A raceway that comes in sticks and whose rule the data lacks does not compile here.
 * @param raceway one that comes in sticks
 */
export const stickRule = (part: StickPart, raceway: Raceway): RuleName =>
  `${part}, ${raceway}` as `${StickPart}, ${StickRaceway}`;
