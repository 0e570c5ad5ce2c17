import { chosenItem } from "../../src/raceway/chosenItem";
import { readConductors } from "../../src/wiring/readConductors";
import { readEdition } from "../../src/raceway/code/edition";
import { expansion, expansionRule, hasExpansionLimit, takesExpansionFitting } from "../../src/raceway/code/expansion";
import { fillOf, fillSize } from "../../src/wiring/fill";
import {
  distanceToCover,
  pullBoxDimension,
  pullBoxRule,
  readEntries,
  readPullKind,
} from "../../src/raceway/code/pullBox";
import { readRaceway } from "../../src/raceway/raceway";
import { racewayData } from "../../src/raceway/racewayData";
import { ruleInWords } from "../../src/raceway/code/rules";
import { countSupports, readSupportedRun, supportRule } from "../../src/raceway/code/supports";
import { readTradeSize } from "../../src/raceway/tradeSize";
import { NotListedError } from "../../src/units/errors";
import { toInches } from "../../src/units/length";
import { toNumber } from "../../src/units/number";
import { readWireSize } from "../../src/wiring/wireSizes";
import { answer } from "../cell/answer";

const lengthOrNone = (length: unknown) =>
  length === null || length === undefined || length === "" ? undefined : toInches(length, "length", { above: 0 });

/**
 * One value of the trade's tables for a raceway and size: a diameter, area, weight, radius, length or designator.
 *
 * Write "source" after an item to read where its value comes from.
 * Example: =CONDUIT.DATA("EMT", "1/2", "outside diameter") //=> 0.706
 * Source: NEC chapter 9 tables 2 and 4, table 300.1(C); Steel Tube Institute; ASTM D1785; ASME B1.20.1; each value names its own.
 * @customfunction DATA
 * @helpurl https://raceway-ledger.example/help/data.html
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any} item outside diameter, inside diameter, wall [in], area [in²], weight [lb/100 ft], minimum radius, minimum radius other [in], metric designator, stick length (a threaded one without its coupling), coupling length, socket depth, elbow radius, elbow straight end, thread length [in] or threads per inch
 * @returns {any} the value, or the words of its source
 */
export function dataOf(raceway: any, size: any, item: any): any {
  return answer([raceway, size, item], (raceway, size, item) =>
    racewayData(readRaceway(raceway), readTradeSize(size), item),
  );
}

/**
 * How full a raceway is: conductor area over inside area, 0.4 meaning 40 %. Says the code's limit and whether it fits.
 *
 * Conductors of one size fit by note 7 too, which rounds their greatest number up from a decimal of 0.8.
 * Example: =CONDUIT.FILL("EMT", "1/2", "9 #12 THHN") //=> 0.39375
 * Source: NEC chapter 9, tables 1, 4 and 5, notes 4 and 7 (2020 and 2023).
 * @customfunction FILL
 * @helpurl https://raceway-ledger.example/help/fill.html
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any[][]} conductors text like 3 #10 THHN + 1 #12 THHN, or rows of count, size and insulation
 * @param {any} [item] ratio, limit, area [in²], fits or rule; omitted: ratio
 * @param {any} [length] of the raceway from box to box [in]: 24 in. or less is a nipple; omitted: longer
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @returns {any} the ratio, or what item asks for
 */
export function fill(raceway: any, size: any, conductors: any[][], item?: any, length?: any, edition?: any): any {
  return answer(
    [raceway, size, conductors, item, length, edition],
    (raceway, size, conductors, item, length, edition) => {
      const { ratio, area, rule, fits } = fillOf(
        readRaceway(raceway),
        readTradeSize(size),
        readConductors(conductors),
        readEdition(edition),
        lengthOrNone(length),
      );
      return chosenItem<unknown>(item, { ratio, limit: rule.limit, area, fits, rule: ruleInWords(rule) });
    },
  );
}

/**
 * The smallest trade size whose fill keeps to the code's limit.
 *
 * Example: =CONDUIT.FILL.SIZE("EMT", "10 #12 THHN") //=> 3/4
 * Source: NEC chapter 9, tables 1, 4 and 5, notes 4 and 7 (2020 and 2023).
 * @customfunction FILL.SIZE
 * @helpurl https://raceway-ledger.example/help/fill.size.html
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any[][]} conductors text like 3 #10 THHN + 1 #12 THHN, or rows of count, size and insulation
 * @param {any} [length] of the raceway from box to box [in]: 24 in. or less is a nipple; omitted: longer
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @returns {string} trade size
 */
export function fillSizeOf(raceway: any, conductors: any[][], length?: any, edition?: any): string {
  return answer([raceway, conductors, length, edition], (raceway, conductors, length, edition) =>
    fillSize(readRaceway(raceway), readConductors(conductors), readEdition(edition), lengthOrNone(length)),
  );
}

/**
 * Fewest supports (straps) of a run from one box to the next.
 *
 * One within 3 ft of each end, and no gap between supports above the spacing; one alone does for a run of 6 ft or less.
 * Example: =CONDUIT.SUPPORTS("EMT", "3/4", 300) //=> 3
 * Source: NEC 342.30, 344.30, 352.30, 358.30 (2020 and 2023); count derived, ⌈(length − 72)/spacing⌉ + 1, at least 1.
 * @customfunction SUPPORTS
 * @helpurl https://raceway-ledger.example/help/supports.html
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any} length of the run from box to box [in], above 0
 * @param {any} [run] any, or straight: a straight run with threaded couplings (IMC, RMC); omitted: any
 * @param {any} [item] count, spacing [in] or rule; omitted: count
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @returns {any} the count, or what item asks for
 */
export function supports(raceway: any, size: any, length: any, run?: any, item?: any, edition?: any): any {
  return answer([raceway, size, length, run, item, edition], (raceway, size, length, run, item, edition) => {
    const rule = supportRule(readRaceway(raceway), readTradeSize(size), readEdition(edition), readSupportedRun(run));
    const count = countSupports(toInches(length, "length", { above: 0 }), rule);
    return chosenItem<unknown>(item, { count, spacing: rule.limit, rule: ruleInWords(rule) });
  });
}

/**
 * By how many inches a run changes its length when its temperature changes; negative when it cools.
 *
 * For PVC the code says from what change a fitting is needed (1/4 in.); for metal it names no amount.
 * Example: =CONDUIT.EXPANSION("PVC 40", 1200, 100) //=> 4.056
 * Source: PVC: NEC 352.44 (2020), 352.44(A) (2023), 3.38e-5 in. per inch and °F; steel 6.5e-6 and aluminum 1.3e-5: NEC 300.7(B), its note (2023).
 * @customfunction EXPANSION
 * @helpurl https://raceway-ledger.example/help/expansion.html
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} length of the straight run [in], above 0
 * @param {any} temperatureChange [°F] from the coldest to the hottest; negative for cooling
 * @param {any} [item] change, fitting (TRUE when it takes an expansion fitting; PVC) or rule; omitted: change
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @returns {any} the change [in], or what item asks for
 */
export function expansionOf(raceway: any, length: any, temperatureChange: any, item?: any, edition?: any): any {
  return answer(
    [raceway, length, temperatureChange, item, edition],
    (raceway, length, temperatureChange, item, edition) => {
      const kind = readRaceway(raceway);
      const change = expansion(
        kind,
        toInches(length, "length", { above: 0 }),
        toNumber(temperatureChange, "temperatureChange", { min: -500, max: 500 }),
      );
      const rule = ruleInWords(expansionRule(kind, readEdition(edition)));
      return chosenItem<unknown>(item, {
        change,
        get fitting() {
          if (hasExpansionLimit(kind)) return takesExpansionFitting(change);
          throw new NotListedError(`The code names no change from which ${kind} takes a fitting.`);
        },
        rule,
      });
    },
  );
}

/**
 * Least dimension of a pull or junction box in inches, for conductors 4 AWG and larger.
 *
 * Straight: its length. Angle, U or splice: from the wall with the entries to the one across. Between: from one entry to the other of the same conductors. A box needs the largest that applies.
 * Example: =CONDUIT.PULLBOX({"3","2"}, "angle") //=> 20
 * Boxes and conduit bodies listed for fewer conductors may be smaller (314.28(A)(3)).
 * Source: NEC 314.28(A)(1) and (2) (2020 and 2023); to a cover: the exception and table 312.6(A), 2023, as read.
 * @customfunction PULLBOX
 * @helpurl https://raceway-ledger.example/help/pullbox.html
 * @param {any[][]} entries trade sizes of the entries in one wall: each row of the range is a row of entries
 * @param {any} [pull] straight, angle, U, splice or between; omitted: straight
 * @param {any} [item] size, rule, or cover: the least distance to a removable cover opposite the entries; omitted: size
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @param {any} [conductor] the largest one, 4 AWG to 1250 kcmil; for item cover
 * @returns {any} the dimension [in], or what item asks for
 */
export function pullBox(entries: any[][], pull?: any, item?: any, edition?: any, conductor?: any): any {
  return answer([entries, pull, item, edition, conductor], (entries, pull, item, edition, conductor) => {
    const kind = readPullKind(pull);
    const rule = ruleInWords(pullBoxRule(kind, readEdition(edition)));
    const size = pullBoxDimension(readEntries(entries), kind);
    return chosenItem<unknown>(item, {
      size,
      rule,
      get cover() {
        return distanceToCover(readWireSize(conductor, "conductor"));
      },
    });
  });
}
