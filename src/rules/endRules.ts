import type { KINDS } from "../raceway/kinds";
import type { FittingStyle } from "../raceway/kinds/record";
import type { Raceway } from "../raceway/raceway";
import type { RuleName } from "./rules";

/** What may be counted at an end of a run. */
export type EndPart = "Connectors" | "Locknuts" | "Bushings";

/** The rules that the fitting styles of all raceways ask for. */
type EndRule = {
  [R in Raceway]: `${EndPart} per end, ${R} ${(typeof KINDS)[R]["styles"][number]}`;
}[Raceway];

/**
 * The rule that says how many of a part an end takes. A raceway or a style whose rule the data lacks does not compile here.
 * @param style one of the raceway's own
 */
export const endRule = (part: EndPart, raceway: Raceway, style: FittingStyle): RuleName =>
  `${part} per end, ${raceway} ${style}` as EndRule;
