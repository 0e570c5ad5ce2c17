import { backMark, stubDeduct, stubMark } from "../../src/bends/shapes/stub";
import { toInches } from "../../src/units/length";
import { optional } from "../../src/units/limits";
import { answer } from "../cell/answer";

/**
 * Deduct of a shoe: what is taken off a stub's height for the arrow's mark.
 *
 * Example: =CONDUIT.STUB.DEDUCT(4,0.706,0.647) //=> 5
 * Source: derived, R + OD/2 + arrow lead. Measure your own shoe: see SHOE.CALIBRATE.
 * @customfunction STUB.DEDUCT
 * @helpurl https://raceway-ledger.example/help/stub.deduct.html
 * @param {any} radius [in] on the centerline, above 0
 * @param {any} outsideDiameter [in] of the conduit, above 0
 * @param {any} [arrowLead] [in] from the arrow to the start of the bend; omitted: 0
 * @returns {number} deduct [in]
 */
export function stubDeductOf(radius: any, outsideDiameter: any, arrowLead?: any): number {
  return answer([radius, outsideDiameter, arrowLead], (radius, outsideDiameter, arrowLead) =>
    stubDeduct(
      toInches(radius, "radius", { above: 0 }),
      toInches(outsideDiameter, "outside diameter", { above: 0 }),
      optional(arrowLead, (lead) => toInches(lead, "arrow lead")),
    ),
  );
}

/**
 * Where the arrow's mark goes for a stub-up, from the end that becomes its top.
 *
 * Example: =CONDUIT.STUB.MARK(10,5) //=> 5
 * Source: stub less deduct: Modern Residential Wiring (2021), p. 144.
 * @customfunction STUB.MARK
 * @helpurl https://raceway-ledger.example/help/stub.mark.html
 * @param {any} stub [in] from the end to the back of the finished 90, above the deduct
 * @param {any} deduct [in] of the shoe, 0 or more
 * @returns {number} mark from the end [in]
 */
export function stubMarkOf(stub: any, deduct: any): number {
  return answer([stub, deduct], (stub, deduct) =>
    stubMark(toInches(stub, "stub", { above: 0 }), toInches(deduct, "deduct", { min: 0 })),
  );
}

/**
 * Where to mark the second 90 of a back-to-back, from the back of the first: for the star, or for the arrow with a deduct.
 *
 * The star takes the distance itself, with the bender turned end for end. The arrow takes the distance less the deduct,
 * bent the same way as the first.
 * Example: =CONDUIT.BACK.MARK(20) //=> 20
 * Source: NAVEDTRA 14026 p. 5-25; Modern Residential Wiring (2021), p. 145.
 * @customfunction BACK.MARK
 * @helpurl https://raceway-ledger.example/help/back.mark.html
 * @param {any} distance [in] from back to back, above 0
 * @param {any} [deduct] [in] of the shoe, for the arrow; omitted: the star
 * @returns {number} mark from the back of the first 90 [in]
 */
export function backMarkOf(distance: any, deduct?: any): number {
  return answer([distance, deduct], (distance, deduct) =>
    backMark(
      toInches(distance, "distance", { above: 0 }),
      optional(deduct, (value) => toInches(value, "deduct", { min: 0 })),
    ),
  );
}
