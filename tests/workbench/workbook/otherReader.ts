import ExcelJS from "exceljs";
import { strFromU8, unzipSync } from "fflate";

/** A workbook file as ExcelJS reads it: another library than the one that wrote it. */
export async function readWithExcelJs(bytes: Uint8Array): Promise<ExcelJS.Workbook> {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(Buffer.from(bytes) as unknown as ExcelJS.Buffer);
  return book;
}

export type Shown = string | number | boolean | null;

/** What each cell of a sheet shows: the kept result of a formula, the code of an error. */
export function shownValues(book: ExcelJS.Workbook, name: string): Shown[][] {
  const sheet = book.getWorksheet(name);
  if (!sheet) throw new Error(`The file has no sheet ${name}.`);
  return Array.from({ length: sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.columnCount }, (_, column) => shownIn(sheet.getCell(row + 1, column + 1))),
  );
}

/** The reader keeps a formula's result of 0 out of its value. */
const shownIn = (cell: ExcelJS.Cell): Shown =>
  cell.type === ExcelJS.ValueType.Formula ? shown(cell.result as ExcelJS.CellValue) : shown(cell.value);

function shown(value: ExcelJS.CellValue): Shown {
  if (value === null || value === undefined) return null;
  if (typeof value !== "object") return value;
  // The number of a date, which the other reader makes a date of: 25569 is 1970-01-01.
  if (value instanceof Date) return 25569 + value.getTime() / 86_400_000;
  if ("error" in value) return value.error;
  if ("result" in value) return shown(value.result as ExcelJS.CellValue);
  if ("formula" in value || "sharedFormula" in value) return null;
  throw new Error(`A cell holds ${JSON.stringify(value)}.`);
}

/** One part of the file as text, for what no reader tells. */
export function partOf(bytes: Uint8Array, path: string): string {
  const part = unzipSync(bytes)[path];
  if (!part) throw new Error(`The file has no ${path}.`);
  return strFromU8(part);
}
