import { RACEWAYS, readRaceway } from "../../../src/raceway/raceway";
import { readTradeSize, TRADE_SIZES } from "../../../src/raceway/tradeSize";
import { STICK } from "../../../src/shop/run/runsTable";
import { attempt } from "../../../taskpane/components/attempt";
import { RESULTS, TABLES } from "../../../taskpane/workbook/items";
import { newResult, newTable } from "../../../taskpane/workbook/newTables";
import { runArguments, RUN_FORMULAS } from "../../../taskpane/workbook/runRow";
import type { CellValue } from "../../engine";
import { columnLook, columnWidth, inputHeading } from "../file/dress";
import type { RunList } from "../csv/runsFromCsv";
import type { ContentCell, SheetContent } from "./sheetContent";

/** Each table and result sheet goes by its own name. */
const names = Object.fromEntries([...TABLES, ...RESULTS].map((name) => [name, name])) as Parameters<
  typeof newResult
>[2];

const RUN_TABLES = { shoes: names.Shoes, rules: names.Rules };

/** The workbook of a job: what people fill in, and result sheets of one live formula each. */
export function jobContent(runs: RunList): SheetContent[] {
  const asSetUp = (table: "Shoes" | "Rules" | "Bench") => valueCells(newTable(table, table, names).cells);
  return [
    tableSheet("Runs", runsCells(runs)),
    tableSheet("Shoes", asSetUp("Shoes")),
    tableSheet("Stock", valueCells([["Raceway", "Size", "Length", "On hand", "Price"], ...stockRows(runs)])),
    tableSheet(
      "Prices",
      valueCells([
        ["Item", "Unit", "Price"],
        [null, null, null],
      ]),
    ),
    tableSheet(
      "Labor",
      valueCells([
        ["Operation", "Minutes"],
        [null, null],
      ]),
    ),
    tableSheet("Rules", asSetUp("Rules")),
    tableSheet("Bench", asSetUp("Bench")),
    ...RESULTS.map((result): SheetContent => {
      const { formula } = newResult(result, result, names);
      return { ...empty(result), cells: [[{ value: null, formula }]], tabColor: "5B4A1F" };
    }),
  ];
}

function runsCells({ headers, rows }: RunList): (ContentCell | null)[][] {
  const formulas = Object.values(RUN_FORMULAS).map(runFormula);
  const body = rows.length > 0 ? rows : [headers.map(() => null)];
  return [
    ...valueCells([[...headers, ...Object.keys(RUN_FORMULAS)]]),
    ...body.map((row) => [...valueCells([row])[0]!, ...formulas.map((formula) => ({ value: null, formula }))]),
  ];
}

function runFormula(name: string): string {
  const own = (column: string) => `Runs[[#This Row],[${column}]]`;
  return `=IF(${own("Route")}="","",CONDUIT.RUN.${name}(${own("Route")},${own("Raceway")},${own("Size")}${runArguments(name, RUN_TABLES)}))`;
}

/** Sticks to buy for each raceway and size the runs name. */
function stockRows({ headers, rows }: RunList): CellValue[][] {
  const at = (row: readonly CellValue[], name: string) => row[headers.indexOf(name)];
  const kinds = new Map<string, CellValue[]>();
  for (const row of rows) {
    const { value: raceway } = attempt(() => readRaceway(at(row, "Raceway")));
    const { value: size } = attempt(() => readTradeSize(at(row, "Size")));
    if (raceway && size) kinds.set(`${raceway} ${size}`, [raceway, size, STICK, null, null]);
  }
  return kinds.size > 0 ? [...kinds.values()] : [[null, null, null, null, null]];
}

function valueCells(rows: readonly (readonly CellValue[])[]): (ContentCell | null)[][] {
  return rows.map((row) => row.map((value) => (value === null || value === "" ? null : { value })));
}

function tableSheet(name: string, cells: (ContentCell | null)[][]): SheetContent {
  const headers = cells[0]!.map((cell) => String(cell?.value ?? ""));
  const range = { startRow: 0, endRow: cells.length - 1, startColumn: 0, endColumn: headers.length - 1 };
  const looks = headers.map((header) => columnLook(header, name === "Runs" && !(header in RUN_FORMULAS)));
  const list = (header: string, values: readonly string[]) => {
    const column = headers.indexOf(header);
    if (column < 0) return [];
    // Room for rows to come: a table grows when one types below it.
    return [
      { list: [...values], range: { startRow: 1, endRow: cells.length + 499, startColumn: column, endColumn: column } },
    ];
  };
  return {
    ...empty(name),
    cells: cells.map((row, at) =>
      row.map((cell, column) => ({ value: null, ...cell, look: at === 0 ? inputHeading : looks[column] })),
    ),
    columns: headers.map((header, column) => ({
      width: columnWidth(
        cells.map((row) => row[column]?.value ?? null),
        header,
      ),
      look: looks[column],
    })),
    frozenColumns: name === "Runs" ? 1 : 0,
    tabColor: "1F4E5F",
    tables: [{ name, range, headers }],
    choices: [...list("Raceway", RACEWAYS), ...list("Size", TRADE_SIZES)],
  };
}

const empty = (name: string): SheetContent => {
  return { name, cells: [], columns: [], frozenRows: 1, frozenColumns: 0, tables: [], choices: [] };
};
