import { createRequire } from "node:module";
import { join } from "node:path";
import type * as Engine from "../../workbench/commandLine/engine";
import { GUIDE_TABLES, type GuideCell } from "./tables";

/** A formula of the guide, with the cells it reads on its own sheet, from A1. */
export interface GuideFormula {
  readonly formula: string;
  readonly cells?: readonly (readonly GuideCell[])[];
}

export interface CellProblem {
  readonly code: string;
  readonly message: string;
}

/** One cell of a result: its value, or an error with its message. */
export type ResultCell = GuideCell | boolean | CellProblem;

export const isError = (cell: ResultCell | undefined): cell is CellProblem => typeof cell === "object" && cell !== null;

/** Room for what a formula of the guide gives. */
const [ROWS, COLUMNS] = [200, 60];

/**
 * Computes formulas with the built functions in the headless engine, in one workbook that has the guide's tables.
 *
 * @param dist folder of the built functions and tools
 * @returns the rows that each formula fills
 */
export async function evaluateGuide(dist: string, formulas: readonly GuideFormula[]): Promise<ResultCell[][][]> {
  const require = createRequire(join(dist, "guide.cjs"));
  const engine = require("./tools/engine.cjs") as typeof Engine;
  const { book, close } = engine.openHeadless(engine.readBundle(dist), workbookOf(formulas));
  try {
    await book.settled();
    return formulas.map((formula, index) => {
      const sheet = book.sheet(sheetName(index));
      const cells = sheet.used() ?? sheet.cells(0, 0);
      const [from, errors] = [formulaColumn(formula), cells.errors];
      return filled(
        cells.values.map((row, at) =>
          row.map((value, column): ResultCell => errors[at]?.[column] ?? value).slice(from),
        ),
      );
    });
  } finally {
    close();
  }
}

/** Without the empty rows that the cells a formula reads may add under what it gives. */
function filled(rows: ResultCell[][]): ResultCell[][] {
  const used = rows.map((row) => row.some((cell) => cell !== null && cell !== ""));
  return rows.slice(0, Math.max(1, used.lastIndexOf(true) + 1));
}

const sheetName = (index: number): string => `Formula ${index + 1}`;

/** A free column stands between the cells that a formula reads and the formula. */
const formulaColumn = ({ cells }: GuideFormula): number => (cells ? (cells[0]?.length ?? 0) + 1 : 0);

type WorkbookData = Parameters<typeof Engine.openHeadless>[1];

function workbookOf(formulas: readonly GuideFormula[]): WorkbookData {
  const sheets = Object.fromEntries([
    ...GUIDE_TABLES.map(({ name, rows }) => [name, sheet(name, `${name} table`, rows)]),
    ...formulas.map((each, index) => {
      const data = cellData(each.cells ?? []);
      data[0] = { ...data[0], [formulaColumn(each)]: { f: each.formula } };
      return [`f${index}`, { ...sheet(`f${index}`, sheetName(index), []), cellData: data }];
    }),
  ]) as Record<string, object>;
  const tables = Object.fromEntries(GUIDE_TABLES.map((table) => [table.name, [tableOf(table)]]));
  const resources = [{ name: "SHEET_TABLE_PLUGIN", data: JSON.stringify(tables) }];
  return { id: "guide", sheetOrder: Object.keys(sheets), sheets, resources } as WorkbookData;
}

const sheet = (id: string, name: string, rows: readonly (readonly GuideCell[])[]) => {
  return { id, name, rowCount: ROWS, columnCount: COLUMNS, cellData: cellData(rows) };
};

type CellData = Record<number, Record<number, { v?: string | number; t?: number; f?: string }>>;

const [TEXT, NUMBER] = [1, 2];

const cellData = (rows: readonly (readonly GuideCell[])[]): CellData =>
  Object.fromEntries(
    rows.map((row, at) => [
      at,
      Object.fromEntries(
        row.flatMap((v, column) => (v === null ? [] : [[column, { v, t: typeof v === "number" ? NUMBER : TEXT }]])),
      ),
    ]),
  );

function tableOf({ name, rows }: (typeof GUIDE_TABLES)[number]): object {
  const header = rows[0] ?? [];
  return {
    id: `${name}-table`,
    name,
    range: { startRow: 0, endRow: rows.length - 1, startColumn: 0, endColumn: header.length - 1 },
    options: { showHeader: true, showFooter: false },
    filters: { tableColumnFilterList: [] },
    columns: header.map((title, column) => ({
      ...{ id: `${name}-${column}`, displayName: String(title), dataType: "none", formula: "", meta: {}, style: {} },
    })),
    meta: {},
  };
}
