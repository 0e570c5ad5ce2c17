import { type Raceway } from "../../../src/raceway/raceway";
import type { TradeSize } from "../../../src/raceway/tradeSize";
import { readRules, rulesTable } from "../../../src/rules/rules";
import { USUAL_BENCH } from "../../../src/shop/bench/bench";
import { builtInShoe } from "../../../src/shop/shoe/shoeBook";
import { attempt } from "../../components/attempt";
import type { LengthStyle } from "../../../src/units/formatLength";
import { strings } from "../../strings";
import type { Cell, TableName } from "../items";
import { recordsOf } from "../recordsOf";
import { LENGTHS_RULE } from "../../../src/rules/lengthsRule";

/** Rows as records, by header. */
export type Rows = readonly Readonly<Record<string, Cell>>[];

/** What a portable bender bends: the shoes a new Shoes table starts with. */
const SHOP_RACEWAYS: readonly Raceway[] = ["EMT", "IMC", "RMC", "PVC-coated RMC"];
const SHOP_SIZES: readonly TradeSize[] = ["1/2", "3/4", "1"];

/** What a new table starts with; empty for one that a person fills. */
export const startRows = (table: TableName): Rows => START_ROWS[table]?.() ?? [];

const START_ROWS: Partial<Record<TableName, () => Rows>> = {
  Shoes: () => shoeRows(SHOP_RACEWAYS, SHOP_SIZES),
  Rules: () => ruleRows(),
  Bench: () => [
    { Setting: "Plane", Value: USUAL_BENCH.plane, Note: strings.start.bench.plane },
    { Setting: "Curls", Value: USUAL_BENCH.curls, Note: strings.start.bench.curls },
    { Setting: "Swings", Value: USUAL_BENCH.swings, Note: strings.start.bench.swings },
    { Setting: "Shoe height", Value: USUAL_BENCH.height, Note: strings.start.bench.height },
    { Setting: "Support beyond", Value: USUAL_BENCH.supportBeyond, Note: strings.start.bench.support },
  ],
  Bid: (): Rows => [
    { Line: "Job", Unit: "words", Note: strings.start.bid.job },
    { Line: "Bidder", Unit: "words" },
    { Line: "Date", Unit: "words", Note: strings.start.bid.date },
    { Line: "Material", Unit: "material" },
    { Line: "Sales tax", Unit: "%", Of: "Material", Note: strings.start.bid.tax },
    { Line: "Labor", Unit: "per hour", Note: strings.start.bid.labor },
    { Line: "Direct job costs", Unit: "costs", Note: strings.start.bid.costs },
    { Line: "Prime cost", Unit: "subtotal" },
    { Line: "Overhead", Unit: "%", Of: "Prime cost", Note: strings.start.bid.overhead },
    { Line: "Contingency", Unit: "%", Note: strings.start.bid.none },
    { Line: "Break-even", Unit: "subtotal" },
    { Line: "Profit", Unit: "%", Note: strings.start.bid.profit },
    { Line: "Bond", Unit: "%", Note: strings.start.bid.none },
    { Line: "Total", Unit: "total" },
  ],
  "One bend": () =>
    EXAMPLES.map(([what, formula]) => ({
      "What it is": what,
      Result: `=CONDUIT.${formula}`,
      "As it is written": `CONDUIT.${formula}`,
    })),
};

/** Every rule with its built-in value, lengths in the unit of the job where it has one. */
export const ruleRows = (unit?: LengthStyle): Rows =>
  recordsOf(rulesTable(readRules(null))).map((row) =>
    unit !== undefined && row["Rule"] === LENGTHS_RULE ? { ...row, Value: unit } : row,
  );

/** Rows of Shoes for what a shop bends, each with its built-in values; none where there is no such shoe. */
export function shoeRows(raceways: readonly Raceway[], sizes: readonly TradeSize[]): Rows {
  return raceways.flatMap((raceway) =>
    sizes.flatMap((size): Rows => {
      const { value: shoe } = attempt(() => builtInShoe(raceway, size));
      if (!shoe) return [];
      return [
        {
          Raceway: raceway,
          Size: size,
          Radius: shoe.radius,
          Deduct: shoe.deduct,
          Springback: shoe.springback,
          "Dial from": shoe.dialFrom,
          "Dial to": shoe.dialTo,
          "Dial start": shoe.dialStart,
          "Shortest tail": shoe.shortestTail,
          Source: shoe.source,
        },
      ];
    }),
  );
}

/** One-bend functions to change and try: what each is, in inches and degrees, and its formula. */
const EXAMPLES: readonly (readonly [what: string, formula: string])[] = [
  ["Offset 6 at 30°: mark spacing, printed constants", 'OFFSET.SPACING(6,30,"table")'],
  ["the same, on a shoe of 4 in. radius", "OFFSET.SPACING(6,30,4)"],
  ["the same: shrink on that shoe", "OFFSET.SHRINK(6,30,4)"],
  ["Angle that makes an offset of 6 with marks 12 apart", "OFFSET.ANGLE(6,12)"],
  ["Three-bend saddle 4 high, 45°: outer mark to center", "SADDLE.SPACING(4,45,4)"],
  ["Stub-up 10, deduct 5: mark", "STUB.MARK(10,5)"],
  ["Back-to-back 20: star mark from the back of the first", "BACK.MARK(20)"],
  ["Back-to-back 20, deduct 5: arrow mark", "BACK.MARK(20,5)"],
  ["Kick of 20° over 18: rise", "KICK.RISE(18,20)"],
  ["Arc of a 90 on a radius of 4", "BEND.ARC(90,4)"],
  ["Gain of that 90, outside to outside, OD 0.706", "BEND.GAIN(90,4,0.706)"],
  ["Dial for a 90 with 5° springback, from zero", "BEND.DIAL(90,5)"],
  ["the same, from 5° below zero", "BEND.DIAL(90,5,-5)"],
  ["Conduit 3/4 EMT: outside diameter", 'DATA("EMT","3/4","outside diameter")'],
  ["Nine #12 THHN in 1/2 EMT: part filled", 'FILL("EMT","1/2","9 #12 THHN")'],
  ["Text to inches", `LENGTH("3' 4-1/2""")`],
  [
    "An offset on a card; in words where Excel has no cards",
    'BEND.CARD("east 24, offset 6 up at 30, ahead 36","EMT","1/2")',
  ],
  ["A run on a card; its length where Excel has no cards", 'RUN.CARD("up 36, east 60","EMT","1/2")'],
];
