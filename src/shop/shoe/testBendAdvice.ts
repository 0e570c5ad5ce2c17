import type { Calibrated } from "../../bends/testBends/calibrate";
import { outsideDiameter } from "../../raceway/dimensions";
import { defaultShoe } from "../../raceway/defaultShoes";
import { minimumRadius } from "../../raceway/minimumRadius";
import type { Raceway } from "../../raceway/raceway";
import type { TradeSize } from "../../raceway/tradeSize";
import { NotListedError } from "../../units/errors";
import { showDegrees, showInches } from "../../units/show";

/** Straight conduit a tape and a square need at each end of a test bend [in], or so many diameters. Our choice, no source. */
const END = { inches: 6, diameters: 3 };
/** An arrow farther from the bend than this share of the radius is of no shoe we know. Our choice, no source. */
const FARTHEST_ARROW = 0.5;
/** A bend this far from 90 makes stub and leg say less of the radius [°]. Our choice, no source. */
const NEAR_90 = 3;

/** Radius a shoe of the size has at most, as far as is known: the built-in one, or the code's for other bends [in]. */
function usualRadius(raceway: Raceway, size: TradeSize): number {
  try {
    return defaultShoe(raceway, size).radius;
  } catch (error) {
    if (error instanceof NotListedError) return minimumRadius(size, "other");
    throw error;
  }
}

/**
 * A straight piece and a mark [in] that suit a test 90 of a size: straight conduit to measure on at both ends, also where the
 * arrow stands half a radius from the bend.
 *
 * @example testBendLengths("EMT", "1/2") //=> { cut: 21, mark: 6 }
 */
export function testBendLengths(raceway: Raceway, size: TradeSize): { cut: number; mark: number } {
  const radius = usualRadius(raceway, size);
  const end = Math.max(END.inches, END.diameters * outsideDiameter(raceway, size));
  const mark = Math.ceil(end);
  return { mark, cut: Math.ceil(mark + FARTHEST_ARROW * radius + (Math.PI / 2) * radius + end) };
}

/** What speaks against a test bend, in words: measures that no shoe of the size could have. Empty where nothing does. */
export function testBendDoubts(
  lines: readonly Calibrated[],
  angle: number,
  raceway: Raceway,
  size: TradeSize,
): string[] {
  const line = (quantity: string) => lines.find((each) => each.quantity === quantity);
  const [radius, arrow] = [line("Radius"), line("Arrow lead")];
  if (!radius || !arrow) return [];
  const [least, usual] = [minimumRadius(size, "one-shot"), usualRadius(raceway, size)];
  return [
    radius.value + radius.worst < least
      ? `A radius of ${showInches(radius.value, 2)} is below the code's least for size ${size}, ${showInches(least)}. ` +
        "Measure again; if it is right, this shoe is too small for the conduit."
      : "",
    radius.value - radius.worst > 2 * usual
      ? `A radius of ${showInches(radius.value, 2)} is more than twice the usual ${showInches(usual)} of ${raceway} ${size}. Measure again.`
      : "",
    Math.abs(arrow.value) - arrow.worst > FARTHEST_ARROW * radius.value
      ? `The arrow would stand ${showInches(Math.abs(arrow.value), 2)} ${arrow.value > 0 ? "before" : "past"} the start of the bend, ` +
        "more than half the radius. Look at the mark, the stub and the leg again."
      : "",
    Math.abs(angle - 90) > NEAR_90
      ? `The bend is ${showDegrees(Math.abs(angle - 90))} from 90: radius and deduct are surer from one within ${showDegrees(NEAR_90)}.`
      : "",
  ].filter((words) => words !== "");
}
