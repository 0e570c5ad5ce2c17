import { asEntered, hasToBeEntered, isLost } from "../workbook/design/spelling";
import type { Cell } from "../workbook/items";
import { batch, reading } from "./batch";

/** What came of entering formulas again. */
export interface EnteredAgain {
  /** How many cells. */
  cells: number;
  /** Sheets where Excel would not, and why. */
  refused: { sheet: string; why: string }[];
}

/** Cells that are looked at with one round trip: Excel hands over 5 MB at most. */
const AT_ONCE = 40_000;

/**
 * Enters every formula of ours again that Excel has lost touch with: those that show an error for a function that is
 * there, or are spelled as files spell them. Other cells are not touched.
 * @param results formula for A1 of a sheet where the formula itself is gone
 */
export async function enterAgain(results: ReadonlyMap<string, string>): Promise<EnteredAgain> {
  const entered: EnteredAgain = { cells: 0, refused: [] };
  for (const sheet of await sheetNames()) {
    try {
      entered.cells += await inSheet(sheet, results.get(sheet));
    } catch (error) {
      entered.refused.push({ sheet, why: (error as Error).message });
    }
  }
  return entered;
}

const sheetNames = (): Promise<string[]> =>
  reading(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    return worksheets.items.map(({ name }) => name);
  });

interface Found {
  row: number;
  column: number;
  formula: string;
}

async function inSheet(name: string, result: string | undefined): Promise<number> {
  const found = await lookFor(name, result);
  if (found.length === 0) return 0;
  await batch(async (context, commit) => {
    const sheet = context.workbook.worksheets.getItem(name);
    for (const { row, column, formulas } of inColumns(found))
      sheet.getRangeByIndexes(row, column, formulas.length, 1).formulas = formulas.map((formula) => [formula]);
    await commit();
  });
  return found.length;
}

/** Cells under each other taken together: a request of single cells would be too large. */
function inColumns(found: readonly Found[]): { row: number; column: number; formulas: string[] }[] {
  const columns: { row: number; column: number; formulas: string[] }[] = [];
  for (const { row, column, formula } of [...found].sort((a, b) => a.column - b.column || a.row - b.row)) {
    const last = columns.at(-1);
    if (last?.column === column && last.row + last.formulas.length === row) last.formulas.push(formula);
    else columns.push({ row, column, formulas: [formula] });
  }
  return columns;
}

const lookFor = (name: string, result: string | undefined): Promise<Found[]> =>
  reading(async (context) => {
    const sheet = context.workbook.worksheets.getItem(name);
    const used = sheet.getUsedRangeOrNullObject().load("rowIndex,columnIndex,rowCount,columnCount");
    await context.sync();
    if (used.isNullObject) return [];
    const { rowIndex, columnIndex, rowCount, columnCount } = used;
    const found: Found[] = [];
    const step = Math.max(1, Math.floor(AT_ONCE / columnCount));
    for (let first = 0; first < rowCount; first += step) {
      const rows = Math.min(step, rowCount - first);
      const part = sheet.getRangeByIndexes(rowIndex + first, columnIndex, rows, columnCount).load("formulas,values");
      await context.sync();
      (part.formulas as Cell[][]).forEach((line, row) =>
        line.forEach((cell, column) => {
          const place = { row: rowIndex + first + row, column: columnIndex + column };
          const value: unknown = part.values[row]?.[column];
          const isCorner = place.row === 0 && place.column === 0;
          const gone = isCorner && result !== undefined && isLost(value) && !String(cell).startsWith("=");
          if (gone) found.push({ ...place, formula: result });
          else if (hasToBeEntered(String(cell), value)) found.push({ ...place, formula: asEntered(String(cell)) });
        }),
      );
    }
    return found;
  });
