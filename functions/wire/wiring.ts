import { ampacityOf } from "../../src/wiring/ampacity";
import { boxVolume } from "../../src/wiring/boxes/boxFill";
import { chosenItem } from "../../src/raceway/chosenItem";
import { leastCover } from "../../src/wiring/cover";
import { groundingSize, readWireMetal } from "../../src/wiring/groundingSize";
import { commonRule, readEdition, ruleInWords } from "../../src/raceway/code/rules";
import { readWireCounts, readWireSize } from "../../src/wiring/wireSizes";
import { riserSpacing, riserSupports } from "../../src/wiring/risers";
import { InputError } from "../../src/units/errors";
import { toInches } from "../../src/units/length";
import { toNumber } from "../../src/units/number";
import { optional } from "../../src/units/limits";
import { answer } from "../cell/answer";

/**
 * Least volume in cubic inches of an outlet or device box for what is in it.
 *
 * Conductors that pass through unbroken count once, pigtails not at all; an isolated ground counts as a conductor.
 * Example: =CONDUIT.BOX.FILL("6 #12") //=> 13.5
 * Source: NEC 314.16(B), 2020 and 2023, as read.
 * @customfunction BOX.FILL
 * @helpurl https://raceway-ledger.example/help/box.fill.html
 * @param {any} conductors counts and sizes, 18 to 6 AWG: 7 #12, 2 #10
 * @param {any} [grounds] equipment grounding conductors, counts and sizes; omitted: none
 * @param {any} [devices] yokes by the largest conductor on each: 1 #12; one wider than 2 in. counts for each gang; omitted: none
 * @param {any} [clamps] TRUE when clamps inside hold cables; omitted: none
 * @param {any} [supports] kinds of fitting that hold something inside, 0 and more; omitted: 0
 * @param {any} [item] volume or rule; omitted: volume
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @returns {any} volume [in³], or the rule
 */
export function boxFill(
  conductors: any,
  grounds?: any,
  devices?: any,
  clamps?: any,
  supports?: any,
  item?: any,
  edition?: any,
): any {
  return answer(
    [conductors, grounds, devices, clamps, supports, item, edition],
    (conductors, grounds, devices, clamps, supports, item, edition) => {
      const volume = boxVolume({
        conductors: readWireCounts(conductors, "conductors"),
        grounds: readWireCounts(grounds, "grounds"),
        devices: readWireCounts(devices, "devices"),
        clamps: clamps === true || (typeof clamps === "number" && clamps > 0),
        supports: optional(supports, (value) => toNumber(value, "supports", { min: 0, integer: true })) ?? 0,
      });
      const rule = ruleInWords(commonRule("boxFill", readEdition(edition)));
      return chosenItem<unknown>(item, { volume, rule });
    },
  );
}

/**
 * Ampacity of conductors in a raceway, made less for their number and for the air around.
 *
 * At 30 °C and below nothing is added. Terminals may ask for a cooler column: what the breaker and lugs allow decides too.
 * Example: =CONDUIT.AMPACITY("12",30) //=> 13.5
 * Source: NEC table 310.16 and 310.15(B)(1), (C)(1), 2023, as read; 2020 has the same sections.
 * @customfunction AMPACITY
 * @helpurl https://raceway-ledger.example/help/ampacity.html
 * @param {any} size AWG or kcmil, 14 to 1250
 * @param {any} [count] current-carrying conductors in the raceway; omitted: 3
 * @param {any} [celsius] [°C] temperature around, to 85 (60 °C insulation: to 55, 75 °C: to 70); omitted: 30
 * @param {any} [column] [°C] insulation: 60, 75 or 90; omitted: 90, as THHN and XHHW-2
 * @param {any} [item] ampacity [A], base [A], adjustment, correction or rule; omitted: ampacity
 * @param {any} [metal] copper or aluminum; omitted: copper
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @returns {any} the ampacity, or what item asks for
 */
export function ampacity(
  size: any,
  count?: any,
  celsius?: any,
  column?: any,
  item?: any,
  metal?: any,
  edition?: any,
): any {
  return answer(
    [size, count, celsius, column, item, metal, edition],
    (size, count, celsius, column, item, metal, edition) => {
      const found = ampacityOf(
        readWireSize(size),
        optional(count, (value) => toNumber(value, "count", { min: 1, max: 10_000, integer: true })) ?? 3,
        optional(celsius, (value) => toNumber(value, "celsius", { min: -60, max: 100 })) ?? 30,
        optional(column, (value) => toNumber(value, "column")) ?? 90,
        readWireMetal(metal),
      );
      const { ampacity, base, adjustment, correction } = found;
      const rule = ruleInWords(commonRule("ampacity", readEdition(edition)));
      return chosenItem<unknown>(item, { ampacity, base, adjustment, correction, rule });
    },
  );
}

/**
 * Size of the equipment grounding conductor by the breaker, larger in proportion where the circuit's conductors are.
 *
 * Never larger than the circuit's conductors.
 * Example: =CONDUIT.GROUND.SIZE(50,"8","1") //=> 3
 * Source: NEC 250.122 and its table, 2023, as read; the increase by exact circular mils; aluminum of 5000 and 6000 A in 2020 from memory.
 * @customfunction GROUND.SIZE
 * @helpurl https://raceway-ledger.example/help/ground.size.html
 * @param {any} breaker [A] rating of the overcurrent device, above 0 and at most 6000
 * @param {any} [needed] size the circuit's conductors must have; omitted: they are not made larger
 * @param {any} [installed] size they have
 * @param {any} [metal] of the grounding conductor, copper or aluminum; omitted: copper
 * @param {any} [item] size or rule; omitted: size
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @returns {string} AWG or kcmil, or the rule
 */
export function groundSize(
  breaker: any,
  needed?: any,
  installed?: any,
  metal?: any,
  item?: any,
  edition?: any,
): string {
  return answer(
    [breaker, needed, installed, metal, item, edition],
    (breaker, needed, installed, metal, item, edition) => {
      const sizes = [
        optional(needed, (v) => readWireSize(v, "needed")),
        optional(installed, (v) => readWireSize(v, "installed")),
      ];
      if ((sizes[0] === undefined) !== (sizes[1] === undefined)) {
        throw new InputError("needed and installed belong together: give both or neither.");
      }
      const upsized = sizes[0] && sizes[1] ? { needed: sizes[0], installed: sizes[1] } : undefined;
      const year = readEdition(edition);
      const size = groundingSize(toNumber(breaker, "breaker", { above: 0 }), readWireMetal(metal), upsized, year);
      return chosenItem(item, { size, rule: ruleInWords(commonRule("grounding", year)) });
    },
  );
}

/**
 * Least cover in inches over a buried raceway or cable, from its top to grade.
 *
 * Example: =CONDUIT.COVER("general","RMC") //=> 6
 * Source: NEC table 300.5(A), 2023, as read (table 300.5 in 2020); solid rock wants 2 in. of concrete over it.
 * @customfunction COVER
 * @helpurl https://raceway-ledger.example/help/cover.html
 * @param {any} place general, under concrete, under a building, under a slab, under a road, dwelling driveway or airport
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80; direct for cable without one
 * @param {any} [item] cover or rule; omitted: cover
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @returns {any} cover [in], or the rule
 */
export function cover(place: any, raceway: any, item?: any, edition?: any): any {
  return answer([place, raceway, item, edition], (place, raceway, item, edition) =>
    chosenItem<unknown>(item, {
      cover: leastCover(place, raceway),
      rule: ruleInWords(commonRule("cover", readEdition(edition))),
    }),
  );
}

/**
 * Supports that conductors in a vertical raceway take: none up to the table's spacing, above it one at the top and others below.
 *
 * Example: =CONDUIT.RISER.SUPPORTS("500",1200) //=> 2
 * Source: NEC 300.19(A) and its table, 2023, as read.
 * @customfunction RISER.SUPPORTS
 * @helpurl https://raceway-ledger.example/help/riser.supports.html
 * @param {any} size AWG or kcmil of the conductors, 18 to 1250
 * @param {any} rise [in] of the vertical raceway, above 0
 * @param {any} [metal] copper or aluminum; omitted: copper
 * @param {any} [item] count, spacing [in] or rule; omitted: count
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @returns {any} the count, or what item asks for
 */
export function riserSupportsOf(size: any, rise: any, metal?: any, item?: any, edition?: any): any {
  return answer([size, rise, metal, item, edition], (size, rise, metal, item, edition) => {
    const spacing = riserSpacing(readWireSize(size), readWireMetal(metal));
    return chosenItem<unknown>(item, {
      count: riserSupports(toInches(rise, "rise", { above: 0 }), spacing),
      spacing,
      rule: ruleInWords(commonRule("riserSupports", readEdition(edition))),
    });
  });
}
