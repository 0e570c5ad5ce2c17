import {
  BooleanNumber,
  CommandType,
  ICommandService,
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import type { FormulaDataModel } from "@univerjs/engine-formula";
import { SetRangeValuesMutation, SetWorksheetRowAutoHeightMutation } from "@univerjs/sheets";

type Rows = ReturnType<FormulaDataModel["getHiddenRowsFiltered"]>;

/** What an edit brings about that leaves the rows where they are, shown or hidden. */
const harmless = [SetRangeValuesMutation.id, SetWorksheetRowAutoHeightMutation.id];

/**
 * The rows hidden by hand or by a filter, for the formulas that leave those out. The engine asks every row of every
 * sheet in each calculation; here those are asked that hold something or were changed themselves, and only after
 * something may have hidden one.
 */
export class HiddenRows {
  private rows: Rows | null = null;

  constructor(private readonly injector: Injector) {
    injector.get(ICommandService).onCommandExecuted(({ id, type }) => {
      if (type === CommandType.MUTATION && id.startsWith("sheet.") && !harmless.includes(id)) this.rows = null;
    });
  }

  read(): Rows {
    return (this.rows ??= this.ask());
  }

  private ask(): Rows {
    const books = this.injector
      .get(IUniverInstanceService)
      .getAllUnitsForType<Workbook>(UniverInstanceType.UNIVER_SHEET);
    const sheetsOf = (book: Workbook) => book.getSheets().map((sheet) => [sheet.getSheetId(), hiddenIn(sheet)]);
    return Object.fromEntries(books.map((book) => [book.getUnitId(), Object.fromEntries(sheetsOf(book))])) as Rows;
  }
}

function hiddenIn(sheet: Worksheet) {
  const used = Array.from({ length: sheet.getLastRowWithContent() + 1 }, (_, row) => row);
  const changed = Object.keys(sheet.getRowManager().getRowData()).map(Number);
  const hidden = [...used, ...changed].filter((row) => !sheet.getRowVisible(row));
  return Object.fromEntries(hidden.map((row) => [row, { hd: BooleanNumber.TRUE }]));
}
