import { tan, toRadians, type Degrees } from "../../geometry/angle";
import { arcLength, setback } from "../../geometry/arc";
import { InputError } from "../../units/errors";
import { show, showInches } from "../../units/show";
import { bendGain } from "../shapes/bendGain";
import { stubDeduct } from "../shapes/stub";

/** What was measured on one test bend near 90°. Lengths [in], angle [°]. */
export interface TestBend {
  /** Length of the straight conduit before bending. */
  readonly cutLength: number;
  /** Arrow's mark, from the stub's end. */
  readonly mark: number;
  /** From the stub's end to the back of the bend. */
  readonly stub: number;
  /** From the other end to the back of the bend. */
  readonly leg: number;
  /** The angle the bend settled at. */
  readonly angle: Degrees;
}

/** A shoe as one test bend shows it. All [in]. */
export interface MeasuredShoe {
  readonly radius: number;
  readonly deduct: number;
  readonly gain: number;
  readonly backGain: number;
  readonly arrowLead: number;
  readonly starFromArrow: number;
  readonly notch30: number;
  readonly notch45: number;
  readonly notch60: number;
}

/**
 * A shoe's radius, deduct, gain, star and notches from one test bend.
 *
 * Derived: stub and leg are measured to the backs, so `stub + leg − cut length` is the back gain
 * `2(R + OD/2)·tan(A/2) − R·A`, which gives `R`; the bend starts `(R + OD/2)·tan(A/2)` before the back. At 90° this is
 * `deduct = stub − mark` and `R = (back gain − OD)/(2 − π/2)`. Deduct, gains and star are those of a 90.
 *
 * @param outsideDiameter [in] of the conduit
 * @throws InputError when the measures do not belong to a bend
 */
export function measuredShoe(test: TestBend, outsideDiameter: number): MeasuredShoe {
  const { cutLength, mark, stub, leg, angle } = test;
  const halfAngle = toRadians(angle / 2);
  const measuredGain = stub + leg - cutLength;
  const outer = 2 * setback(angle, outsideDiameter / 2);
  if (measuredGain <= outer) {
    throw new InputError(
      `stub and leg must come to more than the cut length and ${showInches(outer)} (${showInches(cutLength + outer)}); ` +
        `got ${show(stub + leg)} in. Measure again, end to back.`,
    );
  }
  const radius = (measuredGain - outer) / (2 * tan(halfAngle) - 2 * halfAngle);
  const start = stub - setback(angle, radius + outsideDiameter / 2);
  const arrowLead = start - mark;
  const deduct = stubDeduct(radius, outsideDiameter, arrowLead);
  const backGain = bendGain(90, radius, outsideDiameter);
  const notch = (turn: number) => arrowLead + arcLength(turn, radius) / 2;
  return {
    radius,
    deduct,
    gain: bendGain(90, radius),
    backGain,
    arrowLead,
    starFromArrow: deduct - backGain,
    notch30: notch(30),
    notch45: notch(45),
    notch60: notch(60),
  };
}

/**
 * By how much a bend stretched the conduit, when its radius was measured for itself (with a template or by setbacks).
 *
 * @param radius [in] measured @returns [in] length along stub, arc and leg less the cut length
 */
export const stretch = ({ cutLength, stub, leg, angle }: TestBend, outsideDiameter: number, radius: number): number =>
  stub + leg - bendGain(angle, radius, outsideDiameter) - cutLength;
