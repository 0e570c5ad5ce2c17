import { RACEWAYS, type Raceway } from "../../src/raceway/raceway";
import { TRADE_SIZES, type TradeSize } from "../../src/raceway/tradeSize";
import { USUAL_BENCH } from "../../src/shop/bench/bench";
import { SHOE_COLUMNS } from "../../src/shop/shoe/readShoe";
import { builtInShoe } from "../../src/shop/shoe/shoeBook";
import { readRules, rulesTable } from "../../src/rules/rules";
import type { NewResult, NewTable } from "../excel";
import { attempt } from "../components/attempt";
import { recordsOf } from "./recordsOf";
import type { Cell, ResultName, TableName } from "./items";
import type { Names } from "../excel/names";
import { strings } from "../strings";
import { RUN_HEADERS, runRowCells } from "./runRow";

/** Headers of each table a new workbook gets. */
export const HEADERS: Record<TableName, readonly string[]> = {
  Runs: RUN_HEADERS,
  Shoes: SHOE_COLUMNS.map(({ name }) => name),
  Stock: ["Raceway", "Size", "Length", "On hand", "Price"],
  Prices: ["Item", "Unit", "Price"],
  Labor: ["Operation", "Minutes"],
  Rules: ["Rule", "Value", "Unit", "Source"],
  Bench: ["Setting", "Value", "Note"],
};

/** What a portable bender bends: the shoes a new Shoes table starts with. */
const SHOP_RACEWAYS: readonly Raceway[] = ["EMT", "IMC", "RMC", "PVC-coated RMC"];
const SHOP_SIZES: readonly TradeSize[] = ["1/2", "3/4", "1"];

/** Rows as records, by header. */
export type Rows = readonly Readonly<Record<string, Cell>>[];

/** A table to make, with drop-downs for raceway and size, filled with rows or with one empty row. */
export function newTable(
  table: TableName,
  sheet: string,
  names: Names,
  rows: Rows = START_ROWS[table]?.() ?? [],
): NewTable {
  const headers = [...HEADERS[table]];
  const lines = rows.length > 0 ? rows : [{}];
  const body = lines.map((given, index) =>
    table === "Runs"
      ? runRowCells(headers, index + 1, 0, given, { shoes: names.Shoes, rules: names.Rules })
      : headers.map((header) => given[header] ?? ""),
  );
  const choices = [
    { column: headers.indexOf("Raceway"), list: [...RACEWAYS] },
    { column: headers.indexOf("Size"), list: [...TRADE_SIZES] },
  ];
  return {
    sheet,
    table: names[table],
    cells: [headers, ...body],
    formats: [headers, ...body].map((row) => row.map((cell, column) => cellFormat(table, headers[column] ?? "", cell))),
    choices: choices.filter(({ column }) => column >= 0),
  };
}

/** Columns whose cells stay text: Excel would make dates of 1/2 and 3-4. */
const TEXT_COLUMNS = ["Run", "Size", "Made for"];

/** A rule's value is a number or words, such as a size. */
const cellFormat = (table: TableName, header: string, cell: Cell): string =>
  TEXT_COLUMNS.includes(header) || (table === "Rules" && header === "Value" && typeof cell === "string")
    ? "@"
    : "General";

const START_ROWS: Partial<Record<TableName, () => Rows>> = {
  Shoes: shoeRows,
  Rules: () => recordsOf(rulesTable(readRules(null))),
  Bench: () => benchRows,
};

const benchRows: Rows = [
  { Setting: "Plane", Value: USUAL_BENCH.plane, Note: strings.start.bench.plane },
  { Setting: "Curls", Value: USUAL_BENCH.curls, Note: strings.start.bench.curls },
  { Setting: "Swings", Value: USUAL_BENCH.swings, Note: strings.start.bench.swings },
  { Setting: "Shoe height", Value: USUAL_BENCH.height, Note: strings.start.bench.height },
  { Setting: "Support beyond", Value: USUAL_BENCH.supportBeyond, Note: strings.start.bench.support },
];

function shoeRows(): Rows {
  return SHOP_RACEWAYS.flatMap((raceway) =>
    SHOP_SIZES.flatMap((size): Rows => {
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

/** The formula behind each result sheet. */
export function newResult(result: ResultName, sheet: string, names: Names): NewResult {
  const all = (table: TableName) => `${names[table]}[#All]`;
  const formulas: Record<ResultName, string> = {
    Schedule: `JOB.SCHEDULE(${all("Runs")},${all("Shoes")},${all("Rules")})`,
    "Set-up": `JOB.SETUP(${all("Runs")},${all("Shoes")},${all("Bench")},${all("Rules")})`,
    Takeoff: `JOB.TAKEOFF(${all("Runs")},${all("Prices")},${all("Shoes")},,${all("Labor")},${all("Rules")},${all("Stock")})`,
    "Bend counts": `JOB.BENDS(${all("Runs")},,${all("Shoes")},${all("Labor")},${all("Rules")})`,
    Checks: `JOB.CHECKS(${all("Runs")},${all("Shoes")},,${all("Rules")})`,
    "Cutting plan": `JOB.CUTS(${all("Runs")},${all("Stock")},${all("Shoes")},,,${all("Rules")})`,
  };
  return { sheet, formula: `=CONDUIT.${formulas[result]}` };
}
