import { tidyDegrees, type Degrees } from "../../geometry/angle";
import { showDegrees } from "../../units/show";
import type { Shoe } from "./shoe";
import { testedSpringback } from "./springback";

/** In place of a dial reading at an angle that the shoe's tests do not reach. */
const NOT_TESTED = "not tested";

/**
 * What the dial must read for a finished angle: the angle and its springback, counted from the dial's start. A few words
 * in its place when the dial does not reach that far, or when no test bend says what the springback is there.
 *
 * With the dial started at zero it reads `angle + springback`; started at `−springback` it reads `angle`.
 */
export function dialOrWords(shoe: Shoe, angle: Degrees): number | string {
  const finished = tidyDegrees(angle);
  const springback = testedSpringback(shoe, finished);
  if (springback === undefined) return NOT_TESTED;
  const reading = shoe.dialStart + finished + springback;
  return reading > shoe.dialTo ? `past ${showDegrees(shoe.dialTo)}` : reading;
}
