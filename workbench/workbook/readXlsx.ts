import type { IWorkbookData } from "@univerjs/core";
import { unzipSync } from "fflate";
import { type Cell, readXlsx as readFile, type Sheet, type Workbook } from "hucre/xlsx";
import type { CellValue } from "../engine";
import { readBlock } from "./address";
import { fromFileFormula } from "./file/fileFormula";
import { DIGIT, lookOfFile } from "./file/looks";
import { openData } from "./openData";
import type { CellBlock, ContentCell, SheetContent } from "./content/sheetContent";

/** Largest file that is read, and the most that its parts may take unpacked [bytes]. */
const mostBytes = 50 * 1024 * 1024;
const mostUnpacked = 400 * 1024 * 1024;

/**
 * Reads the bytes of an .xlsx file as workbook data the engine opens. Results are not taken from the file: the engine
 * works them out anew.
 *
 * @param functions the functions at hand, with their namespace
 */
export async function readXlsx(bytes: Uint8Array, functions: readonly string[]): Promise<IWorkbookData> {
  return dataOfFile(await openFile(bytes), functions);
}

/** The same of a file that is read already. */
export const dataOfFile = (file: Workbook, functions: readonly string[]): IWorkbookData =>
  openData(file.sheets.map((sheet) => contentOf(sheet, functions)));

/**
 * The parts of an .xlsx file, results as they were saved among them.
 * @throws Error in words for what is none, is locked or too large
 */
export async function openFile(bytes: Uint8Array): Promise<Workbook> {
  if (bytes.length > mostBytes)
    throw new Error(`The file is ${Math.round(bytes.length / 1e6)} MB; at most 52 MB are read.`);
  if (isCompoundFile(bytes)) throw new Error("The file is locked with a password, or an .xls of the older kind.");
  try {
    checkUnpacked(bytes);
    return await readFile(bytes, { readStyles: true });
  } catch (error) {
    throw new Error(
      `This is not a workbook that can be read: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}

/** Adds up what the parts say of themselves, without unpacking any. */
function checkUnpacked(bytes: Uint8Array): void {
  let size = 0;
  unzipSync(bytes, {
    filter: ({ originalSize }) => {
      size += originalSize;
      return false;
    },
  });
  if (size <= mostUnpacked) return;
  throw new Error(
    `unpacked it takes ${Math.round(size / 1e6)} MB; at most ${Math.round(mostUnpacked / 1e6)} MB are read.`,
  );
}

/** Excel's older files, and newer ones under a password, begin so (MS-CFB, 2.2). */
const isCompoundFile = (bytes: Uint8Array): boolean => [0xd0, 0xcf, 0x11, 0xe0].every((byte, at) => bytes[at] === byte);

function contentOf(sheet: Sheet, functions: readonly string[]): SheetContent {
  const spilled = new Set<string>();
  for (const [key, cell] of sheet.cells ?? []) for (const place of spilledFrom(key, cell)) spilled.add(place);
  return {
    name: sheet.name,
    cells: sheet.rows.map((row, at) =>
      row.map((value, column) => {
        const key = `${at},${column}`;
        return contentCell(spilled.has(key) ? null : value, sheet.cells?.get(key), functions);
      }),
    ),
    columns: (sheet.columns ?? []).map(({ width, style, hidden }) => ({
      ...(hidden && { hidden }),
      ...(width && { width: Math.round(width * DIGIT) }),
      ...(lookOfFile(style) && { look: lookOfFile(style) }),
    })),
    frozenRows: sheet.freezePane?.rows ?? 0,
    frozenColumns: sheet.freezePane?.columns ?? 0,
    ...(sheet.view?.tabColor?.rgb && { tabColor: sheet.view.tabColor.rgb.slice(-6) }),
    tables: (sheet.tables ?? []).flatMap(({ name, range, columns }) =>
      range ? [{ name, range: readBlock(range), headers: columns.map((column) => column.name) }] : [],
    ),
    choices: (sheet.dataValidations ?? []).flatMap(({ type, values, range }) =>
      type === "list" && values ? range.split(" ").map((part) => ({ list: values, range: readBlock(part) })) : [],
    ),
  };
}

/** Cells that a spilling formula fills, its own not counted: kept as values, they would stand in the spill's way. */
function spilledFrom(key: string, cell: Cell): string[] {
  if (cell.formula === undefined || !cell.formulaRef || cell.formulaType === "shared") return [];
  const { startRow, endRow, startColumn, endColumn }: CellBlock = readBlock(cell.formulaRef);
  const places: string[] = [];
  for (let row = startRow; row <= endRow; row += 1) {
    for (let column = startColumn; column <= endColumn; column += 1) places.push(`${row},${column}`);
  }
  return places.filter((place) => place !== key);
}

function contentCell(value: unknown, cell: Cell | undefined, functions: readonly string[]): ContentCell | null {
  const look = lookOfFile(cell?.style);
  const formula = cell?.formula ? fromFileFormula(cell.formula, functions) : undefined;
  if ((value === null || value === undefined) && !formula && !look) return null;
  return { value: plainValue(value), ...(formula && { formula }), ...(look && { look }) };
}

/** Days from Excel's day 0 to 1970-01-01. */
const unixDay = 25569;

/** A value as the file's reader has it, as the engine has it: a day is its number. */
export function plainValue(value: unknown): CellValue {
  if (value instanceof Date) return value.getTime() / 86_400_000 + unixDay;
  return typeof value === "string" || typeof value === "number" || typeof value === "boolean" ? value : null;
}
