import { bendGain } from "../../src/bends/shapes/bendGain";
import { dialReading } from "../../src/bends/testBends/dial";
import { edgeRadius } from "../../src/bends/testBends/edgeRadius";
import { releasedRadius } from "../../src/bends/testBends/springback";
import { springbackAt, springbackModel } from "../../src/bends/testBends/springbackModel";
import { readSpringbackTests } from "../../src/bends/testBends/readTestBends";
import { arcLength, setback } from "../../src/geometry/arc";
import { toAngle } from "../../src/units/angle";
import { toInches } from "../../src/units/length";
import { optional } from "../../src/units/limits";
import { answer } from "../cell/answer";

/**
 * Length of a bend's arc on the centerline.
 *
 * Example: =CONDUIT.BEND.ARC(90,4) //=> 6.2832
 * Source: derived, R·A with A in radians.
 * @customfunction BEND.ARC
 * @helpurl https://raceway-ledger.example/help/bend.arc.html
 * @param {any} angle [°] above 0 to 180
 * @param {any} radius [in] on the centerline, above 0
 * @returns {number} arc [in]
 */
export function bendArc(angle: any, radius: any): number {
  return answer([angle, radius], (angle, radius) =>
    arcLength(toAngle(angle, "angle", { above: 0, max: 180 }), toInches(radius, "radius", { above: 0 })),
  );
}

/**
 * Setback of a bend: from the corner to where its arc begins.
 *
 * Example: =CONDUIT.BEND.SETBACK(45,4) //=> 1.6569
 * Source: derived, R·tan(A/2).
 * @customfunction BEND.SETBACK
 * @helpurl https://raceway-ledger.example/help/bend.setback.html
 * @param {any} angle [°] above 0 and below 180
 * @param {any} radius [in] on the centerline, above 0
 * @returns {number} setback [in]
 */
export function bendSetback(angle: any, radius: any): number {
  return answer([angle, radius], (angle, radius) =>
    setback(toAngle(angle, "angle"), toInches(radius, "radius", { above: 0 })),
  );
}

/**
 * Gain of a bend: what it saves against the lengths to its corner, or with an outside diameter against those to its back.
 *
 * Example: =CONDUIT.BEND.GAIN(90,4) //=> 1.7168
 * Source: derived, 2R·tan(A/2) − R·A; with the outside diameter 2(R + OD/2)·tan(A/2) − R·A.
 * @customfunction BEND.GAIN
 * @helpurl https://raceway-ledger.example/help/bend.gain.html
 * @param {any} angle [°] above 0 and below 180
 * @param {any} radius [in] on the centerline, above 0
 * @param {any} [outsideDiameter] [in] of the conduit; omitted: lengths are measured on the centerline
 * @returns {number} gain [in]
 */
export function bendGainOf(angle: any, radius: any, outsideDiameter?: any): number {
  return answer([angle, radius, outsideDiameter], (angle, radius, outsideDiameter) =>
    bendGain(
      toAngle(angle, "angle"),
      toInches(radius, "radius", { above: 0 }),
      optional(outsideDiameter, (diameter) => toInches(diameter, "outside diameter", { above: 0 })),
    ),
  );
}

/**
 * Dial reading at which to stop so that the conduit springs back to the angle wanted.
 *
 * Start at 0, or at minus the springback to read the angle itself. A reading past the dial's end is refused.
 * Example: =CONDUIT.BEND.DIAL(90,5) //=> 95
 * Source: derived, start + angle + springback; a dial from -5° to 105°: common practice, no source.
 * @customfunction BEND.DIAL
 * @helpurl https://raceway-ledger.example/help/bend.dial.html
 * @param {any} angle [°] finished, above 0 and below 180
 * @param {any} springback [°] 0 to 45
 * @param {any} [start] [°] reading at which the bend begins; omitted: 0
 * @param {any} [dialFrom] [°] lowest reading of the dial; omitted: -5
 * @param {any} [dialTo] [°] highest reading of the dial; omitted: 105
 * @returns {number} dial reading [°]
 */
export function bendDial(angle: any, springback: any, start?: any, dialFrom?: any, dialTo?: any): number {
  return answer([angle, springback, start, dialFrom, dialTo], (angle, springback, start, dialFrom, dialTo) =>
    dialReading(
      toAngle(angle, "angle"),
      toAngle(springback, "springback", { min: 0, max: 45 }),
      optional(start, (reading) => toAngle(reading, "start", {})),
      optional(dialFrom, (reading) => toAngle(reading, "dial from", { min: -90, max: 90 })),
      optional(dialTo, (reading) => toAngle(reading, "dial to", { min: 0, max: 270 })),
    ),
  );
}

/**
 * Radius of a bend after the conduit is let go: unloading keeps the arc's length and opens its angle.
 *
 * Example: =CONDUIT.BEND.RELEASED(4,90,5) //=> 4.2222
 * Source: derived, tool radius·(A + springback)/A.
 * @customfunction BEND.RELEASED
 * @helpurl https://raceway-ledger.example/help/bend.released.html
 * @param {any} toolRadius [in] on the centerline while held in the shoe, above 0
 * @param {any} angle [°] finished, above 0 and below 180
 * @param {any} springback [°] 0 to 45
 * @returns {number} finished radius [in]
 */
export function bendReleased(toolRadius: any, angle: any, springback: any): number {
  return answer([toolRadius, angle, springback], (toolRadius, angle, springback) =>
    releasedRadius(
      toInches(toolRadius, "tool radius", { above: 0 }),
      toAngle(angle, "angle"),
      toAngle(springback, "springback", { min: 0, max: 45 }),
    ),
  );
}

/**
 * Centerline radius of a finished bend, measured with a straight edge laid into its inside.
 *
 * Both ends of the edge touch the conduit; the gap is measured in the middle. SHOE.CALIBRATE takes the radius.
 * Example: =CONDUIT.BEND.RADIUS(24,"2 7/32",2.875) //=> 34.9976
 * Source: derived, (edge²/4 + gap²)/(2·gap) + OD/2.
 * @customfunction BEND.RADIUS
 * @helpurl https://raceway-ledger.example/help/bend.radius.html
 * @param {any} edge [in] length of the straight edge, above 0
 * @param {any} gap [in] from the middle of the edge to the conduit, above 0 to half of the edge
 * @param {any} [outsideDiameter] [in] of the conduit; omitted: the radius on the inside of the bend
 * @returns {number} radius [in]
 */
export function bendRadius(edge: any, gap: any, outsideDiameter?: any): number {
  return answer([edge, gap, outsideDiameter], (edge, gap, outsideDiameter) =>
    edgeRadius(
      toInches(edge, "edge", { above: 0 }),
      toInches(gap, "gap", { above: 0 }),
      optional(outsideDiameter, (diameter) => toInches(diameter, "outside diameter", { above: 0 })) ?? 0,
    ),
  );
}

/**
 * Springback at an angle, from one, two or more test bends on one shoe with one raceway and size.
 *
 * One test: in proportion to the angle. Two: the straight line through both. More: the line of least squares. A line
 * answers only within 15° of the tested angles; BEND.SPRINGBACK.MODEL shows it.
 * Example: =CONDUIT.BEND.SPRINGBACK(45, {"Angle","Dial";90,94}) //=> 2
 * Source: derived, elastic unloading takes the same curvature off all along an arc; the 15° are our choice.
 * @customfunction BEND.SPRINGBACK
 * @helpurl https://raceway-ledger.example/help/bend.springback.html
 * @param {any} angle [°] finished, above 0 and below 180
 * @param {any[][]} tests test bends with a header row: Angle (measured), and Dial (reached) or Springback [°]
 * @returns {number} springback [°]
 */
export function bendSpringback(angle: any, tests: any[][]): number {
  return answer([angle, tests], (angle, tests) =>
    springbackAt(springbackModel(readSpringbackTests(tests)), toAngle(angle, "angle")),
  );
}

/**
 * The line that springback follows in test bends, its limits and its largest miss; spills with a header row.
 *
 * Example: =CONDUIT.BEND.SPRINGBACK.MODEL({"Angle","Dial";30,33;90,95}) //=> Model, At zero, Per degree, From, To, Largest miss
 * Source: see BEND.SPRINGBACK.
 * @customfunction BEND.SPRINGBACK.MODEL
 * @helpurl https://raceway-ledger.example/help/bend.springback.model.html
 * @param {any[][]} tests test bends with a header row: Angle (measured), and Dial (reached) or Springback [°]
 * @returns {any[][]} the model in words, its line and its angles [°], with a header row
 */
export function bendSpringbackModel(tests: any[][]): any[][] {
  return answer([tests], (tests) => {
    const { kind, intercept, slope, from, to, largestMiss } = springbackModel(readSpringbackTests(tests));
    return [
      ["Model", "At zero", "Per degree", "From", "To", "Largest miss"],
      [kind, intercept, slope, from, to, largestMiss],
    ];
  });
}
