import type { Degrees } from "../../geometry/angle";
import { InputError } from "../../units/errors";
import { show, showDegrees } from "../../units/show";

/** Ends of the dial [°]. Common practice, no source: a dial runs from a little below zero to a little past 90. */
export const DIAL = { from: -5, to: 105 };

/**
 * Dial reading at which to stop so that the conduit springs back to the angle wanted.
 *
 * @param angle [°] finished @param springback [°]
 * @param start [°] reading at which the bend begins: 0, or minus the springback to read the angle itself
 * @param from [°] and @param to [°] ends of the dial
 * @returns reading [°] `start + angle + springback`
 * @throws InputError when the start or the reading does not lie on the dial
 * @example dialReading(90, 5) //=> 95
 */
export function dialReading(angle: Degrees, springback: Degrees, start = 0, from = DIAL.from, to = DIAL.to): number {
  if (!(from < to)) {
    throw new InputError(`dial to must be above dial from (${showDegrees(from)}); got ${show(to)}°.`);
  }
  if (!(start >= from && start <= to)) {
    throw new InputError(
      `start must lie on the dial, ${showDegrees(from)} to ${showDegrees(to)}; got ${showDegrees(start)}.`,
    );
  }
  const reading = start + angle + springback;
  if (reading <= to) return reading;
  throw new InputError(
    `${showDegrees(angle)} with ${showDegrees(springback)} of springback takes the dial from ${showDegrees(start)} to ` +
      `${showDegrees(reading)}, past its end at ${showDegrees(to)}; ${wayOut(angle, springback, start, from, to)}.`,
  );
}

function wayOut(angle: Degrees, springback: Degrees, start: number, from: number, to: number): string {
  const latestStart = to - springback - angle;
  const most = to - springback - start;
  const ways = [
    latestStart >= from ? `start at ${showDegrees(latestStart)} or lower` : "",
    most > 0 ? `bend at most ${showDegrees(most)} in one go` : "",
  ].filter((way) => way !== "");
  return ways.length > 0 ? ways.join(", or ") : "the dial is too short for this springback";
}
