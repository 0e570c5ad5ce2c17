import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Cell, Sheet, Workbook } from "hucre/xlsx";
import { cellName } from "../../taskpane/workbook/address";
import type { Book, CellValue } from "../engine";
import { currentSpills } from "../engine/calculation/spills";
import { readBlock } from "../workbook/address";
import type { CellBlock } from "../workbook/content/sheetContent";
import { fromFileFormula } from "../workbook/file/fileFormula";
import { plainValue } from "../workbook/readXlsx";
import type { Difference, Reading } from "./reading";

/** Two numbers that differ by less than this part of the larger are one: a file keeps 15 to 17 digits. */
const SAME = 1e-9;
/** Differences told of one sheet: one row more shifts all below it. */
const TOLD = 20;
/** Built-ins that answer otherwise each time. */
const EACH_TIME = /\b(?:NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\(/i;

type Compared = Pick<Reading, "compared" | "different" | "differences" | "notCompared">;

/** Holds the results saved in a file against those of the same formulas, worked out anew in an open workbook. */
export function compareResults(file: Workbook, book: Book, functions: readonly string[]): Compared {
  const all: Compared = { compared: 0, different: 0, differences: [], notCompared: 0 };
  const spills = spillsOf(book);
  for (const sheet of file.sheets) {
    const open = book.sheet(sheet.name);
    const now = open.used()?.values ?? [];
    const found: Difference[] = [];
    for (const [key, cell] of sheet.cells ?? []) {
      const [row, column] = key.split(",").map(Number) as [number, number];
      if (!cell.formula) continue;
      if (cannotCompare(fromFileFormula(cell.formula, functions), now[row]?.[column] ?? null)) {
        all.notCompared += 1;
        continue;
      }
      for (const [r, c] of places(row, column, [savedBlock(cell), spills.get(`${open.id}/${key}`)])) {
        const was = savedValue(sheet, r, c);
        const is = filled(now[r]?.[c] ?? null);
        if (was === null && is === null) continue;
        all.compared += 1;
        if (!sameValue(was, is)) found.push({ sheet: sheet.name, cell: cellName(r, c), was, now: is });
      }
    }
    all.different += found.length;
    all.differences.push(...found.slice(0, TOLD));
  }
  return all;
}

/** Spilled blocks of an open workbook, by sheet and first cell. */
const spillsOf = (book: Book): Map<string, CellBlock> =>
  new Map(
    [...currentSpills(book.services.get(FormulaDataModel)).values()].map(({ sheetId, range }) => [
      `${sheetId}/${range.startRow},${range.startColumn}`,
      range,
    ]),
  );

const cannotCompare = (formula: string, now: CellValue): boolean =>
  EACH_TIME.test(formula) || (now === "#NAME?" && !/\bCONDUIT\./i.test(formula));

const savedBlock = ({ formulaRef, formulaType }: Cell): CellBlock | undefined =>
  formulaRef && formulaType !== "shared" ? readBlock(formulaRef) : undefined;

/** A formula's own cell and every cell it filled or fills. */
function* places(row: number, column: number, blocks: readonly (CellBlock | undefined)[]): Generator<[number, number]> {
  const endRow = Math.max(row, ...blocks.map((block) => block?.endRow ?? 0));
  const endColumn = Math.max(column, ...blocks.map((block) => block?.endColumn ?? 0));
  for (let r = row; r <= endRow; r += 1) for (let c = column; c <= endColumn; c += 1) yield [r, c];
}

const savedValue = (sheet: Sheet, row: number, column: number): CellValue =>
  filled(plainValue(sheet.rows[row]?.[column]));

/** An empty text and an empty cell are one. */
const filled = (value: CellValue): CellValue => (value === "" ? null : value);

const sameValue = (was: CellValue, now: CellValue): boolean =>
  typeof was === "number" && typeof now === "number"
    ? Math.abs(was - now) <= SAME * Math.max(Math.abs(was), Math.abs(now))
    : was === now;
