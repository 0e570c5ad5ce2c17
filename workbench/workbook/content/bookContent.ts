import {
  BooleanNumber,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  type Nullable,
} from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Book, Sheet } from "../../engine";
import { currentSpills } from "../../engine/calculation/spills";
import { lookOfStyle } from "../file/looks";
import { choicesOf, tablesOf } from "../file/resources";
import type { ContentCell, Look, SheetContent } from "./sheetContent";

/** What an open workbook holds: values and spills exact, formulas, looks, tables and lists to choose from. */
export function contentOfBook(book: Book): SheetContent[] {
  const data = book.snapshot();
  const spills = [...currentSpills(book.services.get(FormulaDataModel)).values()];
  return book.sheets().map((sheet) => {
    const stored = data.sheets[sheet.id] ?? {};
    const looks = new Looks(data);
    return {
      name: sheet.name,
      cells: cellsOf(
        sheet,
        stored,
        looks,
        spills.filter(({ sheetId }) => sheetId === sheet.id).map(({ range }) => range),
      ),
      columns: columnsOf(stored, looks),
      frozenRows: Math.max(0, stored.freeze?.ySplit ?? 0),
      frozenColumns: Math.max(0, stored.freeze?.xSplit ?? 0),
      ...(stored.tabColor && { tabColor: stored.tabColor.replace("#", "").toUpperCase() }),
      tables: tablesOf(data, sheet.id),
      choices: choicesOf(data, sheet.id),
    };
  });
}

type Spill = { startRow: number; endRow: number; startColumn: number; endColumn: number };

function cellsOf(
  sheet: Sheet,
  stored: Partial<IWorksheetData>,
  looks: Looks,
  spills: Spill[],
): (ContentCell | null)[][] {
  const used = sheet.used();
  if (!used) return [];
  const { values, errors, formulas } = used;
  return values.map((row, at) =>
    row.map((value, column): ContentCell | null => {
      const look = looks.of(stored.cellData?.[at]?.[column]);
      const formula = formulas[at]![column]!;
      if (value === null && !formula && !look) return null;
      const error = errors[at]![column];
      const spill = spills.find((range) => range.startRow === at && range.startColumn === column);
      return {
        value,
        ...(error && { error }),
        ...(formula && { formula }),
        ...(formula && spill && { spill: { rows: spill.endRow - at + 1, columns: spill.endColumn - column + 1 } }),
        ...(look && { look }),
      };
    }),
  );
}

function columnsOf(stored: Partial<IWorksheetData>, looks: Looks): SheetContent["columns"] {
  const places = Object.keys(stored.columnData ?? {}).map(Number);
  return Array.from({ length: places.length > 0 ? Math.max(...places) + 1 : 0 }, (_, column) => {
    const data = stored.columnData?.[column];
    const look = looks.of(data);
    return {
      ...(data?.w && { width: data.w }),
      ...(look && { look }),
      ...(data?.hd === BooleanNumber.TRUE && { hidden: true }),
    };
  });
}

/** Styles stand in the workbook once and are named where they are used. */
class Looks {
  constructor(private readonly data: IWorkbookData) {}

  of(styled: Nullable<Pick<ICellData, "s">> | { s?: Nullable<IStyleData | string> } | undefined): Look | undefined {
    const style = styled?.s;
    return lookOfStyle(typeof style === "string" ? this.data.styles?.[style] : style);
  }
}
