import type { Degrees } from "../../geometry/angle";
import { showDegrees } from "../../units/show";
import type { Shoe } from "./shoe";

/**
 * What the dial must read for a finished angle: the angle and the springback, counted from the dial's start. When the
 * dial does not reach that far, a few words in its place.
 *
 * With the dial started at zero it reads `angle + springback`; started at `−springback` it reads `angle`.
 */
export function dialOrWords(shoe: Shoe, angle: Degrees): number | string {
  const reading = angle + shoe.springback + shoe.dialStart;
  return reading > shoe.dialTo ? `past ${showDegrees(shoe.dialTo)}` : reading;
}
