import { calibrate } from "../../src/bends/testBends/calibrate";
import { toAngle } from "../../src/units/angle";
import { toInches } from "../../src/units/length";
import { optional } from "../../src/units/limits";
import { answer } from "../cell/answer";

/**
 * A shoe's radius, deduct, gain, star, notches and springback from one test 90, with their errors; spills with a header row.
 *
 * Errors carry the four tape readings through, each to the nearest 1/16 in., and whole degrees for springback. Worst has
 * every reading half a division off the way that hurts; standard is their standard error. One test leaves the radius
 * uncertain: bend several and average.
 * Example: =CONDUIT.SHOE.CALIBRATE(30,5,10,22.4228,0.706,95,90) //=> Quantity, Value, Worst error, Standard error, Unit, Meaning
 * Source: derived, stub + leg − cut length is the back gain 2(R + OD/2)·tan(A/2) − R·A, deduct is stub − mark at 90°.
 * @customfunction SHOE.CALIBRATE
 * @helpurl https://raceway-ledger.example/help/shoe.calibrate.html
 * @param {any} cutLength [in] of the straight conduit before bending
 * @param {any} mark [in] arrow's mark from the stub's end
 * @param {any} stub [in] from the stub's end to the back of the bend
 * @param {any} leg [in] from the other end to the back of the bend
 * @param {any} outsideDiameter [in] of the conduit
 * @param {any} [dialReached] [°] from a start at zero; omitted: no springback
 * @param {any} [angleMeasured] [°] the bend settled at, 80 to 100; omitted: 90
 * @param {any} [radius] [in] on the centerline, measured for itself; given, the stretch is worked out too
 * @returns {any[][]} a row for each quantity, with a header row
 */
export function shoeCalibrate(
  cutLength: any,
  mark: any,
  stub: any,
  leg: any,
  outsideDiameter: any,
  dialReached?: any,
  angleMeasured?: any,
  radius?: any,
): any[][] {
  return answer(
    [cutLength, mark, stub, leg, outsideDiameter, dialReached, angleMeasured, radius],
    (cutLength, mark, stub, leg, outsideDiameter, dialReached, angleMeasured, radius) => {
      const angle = optional(angleMeasured, (value) => toAngle(value, "angle measured", { min: 80, max: 100 })) ?? 90;
      const test = {
        cutLength: toInches(cutLength, "cut length", { above: 0 }),
        mark: toInches(mark, "mark", { above: 0 }),
        stub: toInches(stub, "stub", { above: 0 }),
        leg: toInches(leg, "leg", { above: 0 }),
        angle,
      };
      const lines = calibrate(test, toInches(outsideDiameter, "outside diameter", { above: 0 }), {
        dialReached: optional(dialReached, (value) => toAngle(value, "dial reached")),
        radius: optional(radius, (value) => toInches(value, "radius", { above: 0 })),
      });
      return [
        ["Quantity", "Value", "Worst error", "Standard error", "Unit", "Meaning"],
        ...lines.map(({ quantity, value, worst, standard, unit, meaning }) => [
          quantity,
          value,
          worst,
          standard,
          unit,
          meaning,
        ]),
      ];
    },
  );
}
