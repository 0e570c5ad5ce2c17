import { chosenItem } from "../../src/raceway/chosenItem";
import { inWords } from "../../src/raceway/inWords";
import { dimension } from "../../src/raceway/dimensions";
import {
  clearance,
  gripLimit,
  LAYS,
  mayJam,
  pullingLimit,
  usualLay,
  weightCorrection,
  type Lay,
} from "../../src/wiring/pulling";
import { readRules } from "../../src/rules/rules";
import { readRaceway } from "../../src/raceway/raceway";
import { readTradeSize } from "../../src/raceway/tradeSize";
import { readWireSize } from "../../src/wiring/wireSizes";
import { buildOneRun } from "../../src/shop/run/oneRun";
import { countsBendWeight } from "../../src/shop/pull/pulling";
import { pullTable } from "../../src/shop/pull/pullTension";
import { InputError, quoteValue } from "../../src/units/errors";
import { toInches } from "../../src/units/length";
import { toNumber } from "../../src/units/number";
import { optional } from "../../src/units/limits";
import { answer } from "../cell/answer";
import { readWireMetal } from "../../src/wiring/groundingSize";

/** Friction of a jacket in a raceway where nobody measured it: the general value of a utility's standard. */
const USUAL_FRICTION = 0.5;
/** Sidewall pressure where nobody says another one [lb/ft]: the cable makers' general limit. */
const USUAL_SIDEWALL = 300;

const layOf = (value: unknown, count: number): Lay => {
  const word = optional(value, (given) => String(given).trim().toLowerCase()) ?? usualLay(count);
  const lay = LAYS.find((each) => each === word);
  if (lay) return lay;
  throw new InputError(`lay must be ${inWords(LAYS)}; got ${quoteValue(value)}.`);
};

/**
 * Tension of a cable pull through a run, leg by leg and bend by bend, fed from either end; spills with a header row.
 *
 * Real radii and slopes of the run built with its shoe; the pull starts without tension; the cable's weight in a bend is left out
 * unless the rule Weight of cable in bends counts it. Last, a line for each pull says from which end to feed, or where a box would help. Planning aid: the cable maker's limits decide.
 * Example: =CONDUIT.PULL.TENSION("east 6004, north 60","EMT","1/2",0.144,1,0.3) //=> Pull, Feed from, Part, Length or angle, …
 * Source: T + L·W·f·w, T·e^(w·f·a): telephone duct manual 8.11, 8.12; counted, T·cosh x + √(T² + (W·R)²)·sinh x with x = w·f·a: an open code; slopes: a utility's formula appendix; corrections and sidewall: cabledatasheet.com.
 * @customfunction PULL.TENSION
 * @helpurl https://raceway-ledger.example/help/pull.tension.html
 * @param {any} route where the conduit goes, for example: up 4', east 12' 6"
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any} weight [lb/ft] of all cables together, above 0
 * @param {any} count cables pulled in together, 1 or more
 * @param {any} diameter [in] of one cable, above 0
 * @param {any} [friction] coefficient, 0.05 to 1; omitted: 0.5
 * @param {any} [lay] single, pair, cradled, triangular, diamond or complex; omitted: single, pair, cradled for one, two, three, else complex
 * @param {any} [limit] [lb] most tension, see PULL.LIMIT; omitted: none
 * @param {any} [sidewall] [lb/ft] most sidewall pressure; omitted: 300
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @returns {any[][]} both ways of each pull, with a header row
 */
export function pullTension(
  route: any,
  raceway: any,
  size: any,
  weight: any,
  count: any,
  diameter: any,
  friction?: any,
  lay?: any,
  limit?: any,
  sidewall?: any,
  shoes?: any[][],
  rules?: any[][],
): any[][] {
  return answer(
    [route, raceway, size, weight, count, diameter, friction, lay, limit, sidewall, shoes, rules],
    (route, raceway, size, weight, count, diameter, friction, lay, limit, sidewall, shoes, rules) => {
      const built = buildOneRun(route, raceway, size, shoes, rules);
      const bore = dimension(built.run.raceway, built.run.size, "insideDiameter").value;
      const cables = toNumber(count, "count", { min: 1, integer: true });
      const one = toInches(diameter, "diameter", { above: 0, max: bore });
      return pullTable(
        built,
        {
          weight: toNumber(weight, "weight", { above: 0, max: 1000 }),
          friction: optional(friction, (value) => toNumber(value, "friction", { min: 0.05, max: 1 })) ?? USUAL_FRICTION,
          lay: layOf(lay, cables),
          ratio: bore / one,
          bendWeight: countsBendWeight(readRules(rules)),
        },
        {
          tension: optional(limit, (value) => toNumber(value, "limit", { above: 0 })),
          sidewall: optional(sidewall, (value) => toNumber(value, "sidewall", { above: 0 })) ?? USUAL_SIDEWALL,
        },
      );
    },
  );
}

/**
 * Most tension in pounds on conductors pulled together, by an eye on their metal or by a grip over them.
 *
 * Example: =CONDUIT.PULL.LIMIT(4,"4/0") //=> 5416.96
 * Source: number · 0.008 (copper; aluminum 0.006) · circular mils, 0.8 of it for more than three, at most 10,000 lb: a wire maker's page on pulling tensions; a grip 1,000 lb: an ICEA-based summary, on two, three, four cables 1.5, 2, 3 times: a utility's formula appendix.
 * @customfunction PULL.LIMIT
 * @helpurl https://raceway-ledger.example/help/pull.limit.html
 * @param {any} count conductors pulled together, 1 or more
 * @param {any} size AWG or kcmil: 4/0, 500
 * @param {any} [metal] copper or aluminum; omitted: copper
 * @param {any} [by] eye, or grip: the smaller of both; omitted: eye
 * @returns {number} tension [lb]
 */
export function pullLimit(count: any, size: any, metal?: any, by?: any): number {
  return answer([count, size, metal, by], (count, size, metal, by) => {
    const cables = toNumber(count, "count", { min: 1, integer: true });
    const eye = pullingLimit(cables, readWireSize(size), readWireMetal(metal));
    return chosenItem(by, { eye, grip: Math.min(eye, gripLimit(cables)) }, "by");
  });
}

/**
 * How cables lie in a raceway: the ratio of its bore to one cable, the weight correction, or whether three may jam.
 *
 * Three cables can slip into a row and jam at a bend where the ratio is 2.8 to 3.2; the ratio here is bore over diameter, without
 * an allowance for bends that are not round.
 * Example: =CONDUIT.PULL.FACTOR("EMT","2",0.689,3,"triangular") //=> 1.1547
 * Source: cradled 1 + 4/3·(d/(D − d))², triangular 1/√(1 − (d/(D − d))²), four and more 1.4: cabledatasheet.com; diamond 1 + 2·(d/(D − d))²: an open code; two side by side: none was read, derived as the triangle's lower two.
 * @customfunction PULL.FACTOR
 * @helpurl https://raceway-ledger.example/help/pull.factor.html
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any} diameter [in] of one cable, above 0
 * @param {any} count cables, 1 or more
 * @param {any} [lay] single, pair, cradled, triangular, diamond or complex; omitted: single, pair, cradled for one, two, three, else complex
 * @param {any} [item] factor, ratio, jam (TRUE when three may jam) or clearance [in]; omitted: factor
 * @returns {any} the factor, or what item asks for
 */
export function pullFactor(raceway: any, size: any, diameter: any, count: any, lay?: any, item?: any): any {
  return answer([raceway, size, diameter, count, lay, item], (raceway, size, diameter, count, lay, item) => {
    const bore = dimension(readRaceway(raceway), readTradeSize(size), "insideDiameter").value;
    const one = toInches(diameter, "diameter", { above: 0, max: bore });
    const ratio = bore / one;
    const cables = toNumber(count, "count", { min: 1, integer: true });
    const asLaid = layOf(lay, cables);
    const factor = weightCorrection(asLaid, ratio);
    const room = clearance(asLaid, bore, one) ?? "none listed";
    return chosenItem<unknown>(item, { factor, ratio, jam: mayJam(cables, ratio), clearance: room });
  });
}
