import type { Degrees } from "../../geometry/angle";
import { InputError } from "../../units/errors";
import { showDegrees } from "../../units/show";
import { measuredShoe, stretch, type MeasuredShoe, type TestBend } from "./testBend";
import { readingError, type ReadingError, type Readings } from "./testBendErrors";

/** One line of what a test bend tells. */
export interface Calibrated extends ReadingError {
  readonly quantity: string;
  readonly value: number;
  readonly unit: "in." | "°";
  readonly meaning: string;
}

/** What was measured beside the lengths, where it was. */
export interface Extras {
  /** Dial reading the bend was taken to, from a start at zero [°]. */
  readonly dialReached?: number;
  /** Centerline radius measured for itself [in]. */
  readonly radius?: number;
}

/** Sixteenths of an inch on the tape, whole degrees on the protractor and on the dial. */
export const COMMON_READINGS: Readings = { tape: 1 / 16, protractor: 1 };

const LINES: readonly [name: keyof MeasuredShoe, quantity: string, meaning: string][] = [
  ["radius", "Radius", "centerline radius of the finished bend"],
  ["deduct", "Deduct", "stub height less the arrow's mark"],
  ["gain", "Gain", "what a 90 saves, corner to corner on the centerline"],
  ["backGain", "Back gain", "what a 90 saves, back to back"],
  ["arrowLead", "Arrow lead", "from the arrow to the start of the bend"],
  ["starFromArrow", "Star", "from the arrow to the back of a finished 90"],
  ["notch30", "Notch 30°", "from the arrow to the middle of a 30"],
  ["notch45", "Notch 45°", "from the arrow to the middle of a 45"],
  ["notch60", "Notch 60°", "from the arrow to the middle of a 60"],
];

/**
 * Everything one test bend tells of a shoe, each with what reading the tape to its divisions may be off. The angle is
 * taken as measured; one line says what a degree more would do to the radius.
 *
 * @param outsideDiameter [in] of the conduit
 * @throws InputError when the measures do not belong to a bend, or the dial did not pass the angle
 */
export function calibrate(
  test: TestBend,
  outsideDiameter: number,
  extras: Extras = {},
  readings: Readings = COMMON_READINGS,
): Calibrated[] {
  const line = (quantity: string, meaning: string, result: (test: TestBend) => number): Calibrated => ({
    quantity,
    value: result(test),
    ...readingError(result, test, readings.tape),
    unit: "in.",
    meaning,
  });
  const lines = LINES.map(([name, quantity, meaning]) =>
    line(quantity, meaning, (moved) => measuredShoe(moved, outsideDiameter)[name]),
  );
  const radiusAt = (angle: Degrees) => measuredShoe({ ...test, angle }, outsideDiameter).radius;
  lines.push(
    line(
      "Radius per degree",
      "change of the radius above if the bend is really one degree more",
      () => radiusAt(test.angle + 1) - radiusAt(test.angle),
    ),
  );
  const { dialReached, radius } = extras;
  if (dialReached !== undefined) lines.push(springbackLine(dialReached, test.angle, readings));
  if (radius !== undefined) {
    const meaning = "how much longer the conduit became, by the radius measured";
    lines.push(line("Stretch", meaning, (moved) => stretch(moved, outsideDiameter, radius)));
  }
  return lines;
}

/** Dial and protractor are both read: both count. */
function springbackLine(dialReached: number, angle: Degrees, { protractor }: Readings): Calibrated {
  if (dialReached < angle) {
    throw new InputError(
      `dial reached must be at least the angle measured (${showDegrees(angle)}); got ${showDegrees(dialReached)}.`,
    );
  }
  return {
    quantity: "Springback",
    value: dialReached - angle,
    worst: protractor,
    standard: protractor / Math.sqrt(6),
    unit: "°",
    meaning: "dial reached less angle measured",
  };
}
