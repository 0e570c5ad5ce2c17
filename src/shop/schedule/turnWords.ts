import type { Degrees } from "../../geometry/angle";
import { showDegrees } from "../../units/show";
import type { Hook } from "../shoe/marks";

/**
 * What the person at the bender does with the conduit between two bends, in words.
 *
 * The bench always bends the free end the same way, so to bring a plane that is rotated clockwise (seen from the datum
 * end) to the shoe, the conduit is rolled the other way. Swapping the conduit end for end about an upright axis leaves
 * the finished bend pointing as it did, so the roll is the same whichever end is hooked.
 *
 * @param plane [°] rotation from the last bend to this one, positive clockwise seen from the datum end
 * @param hook which end is hooked for this bend; `before` for the last one of the piece, undefined for the first bend
 * @param digits decimals of the degrees
 */
export function turnWords(plane: Degrees, hook: Hook, before: Hook | undefined, digits = 2): string {
  if (before === undefined) return hook === "datum" ? "first bend" : "first bend; put the far end on the hook's side";
  const swap = hook === before ? "" : "swap the conduit end for end, last bend pointing as before";
  const roll = rollWords(plane, digits);
  if (!swap) return roll || "do not turn; slide to the mark";
  return roll ? `${swap}; then ${roll}` : swap;
}

/**
 * How a bend points against another one, in words.
 *
 * @param roll [°] from the plane of the other bend to this one's, positive clockwise seen from the datum end
 * @param other the other bend in words
 * @param degrees how degrees are written
 * @example pointWords(90, "the bend before") //=> "points 90° clockwise from the bend before, seen from the datum end"
 */
export function pointWords(roll: number, other: string, degrees: (value: number) => string = showDegrees): string {
  const turned = degrees(Math.abs(roll));
  if (turned === "0°") return `points the same way as ${other}`;
  if (turned === "180°") return `points opposite to ${other}`;
  return `points ${turned} ${roll > 0 ? "clockwise" : "counterclockwise"} from ${other}, seen from the datum end`;
}

function rollWords(plane: Degrees, digits: number): string {
  const size = showDegrees(Math.abs(plane), digits);
  if (size === "0°") return "";
  if (size === "180°") return "turn 180°";
  return `turn ${size} ${plane > 0 ? "counterclockwise" : "clockwise"}, seen from the datum end`;
}
