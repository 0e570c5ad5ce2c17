import { type ICellData, type IRange, type Injector, IUniverInstanceService, type Nullable } from "@univerjs/core";
import { ISheetClipboardService } from "@univerjs/preset-sheets-core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { currentSpills } from "../../engine";

/**
 * Cells of a result that spills are copied as their values. Copied alone the cell that holds the formula stays one; with
 * its neighbors it would spill once more over what is pasted.
 */
export function copyResultsAsValues(services: Injector): void {
  const model = services.get(FormulaDataModel);
  let valueAt: (row: number, column: number) => Nullable<ICellData> = () => null;

  services.get(ISheetClipboardService).addClipboardHook({
    id: "ledger-results",
    onBeforeCopy(unitId, subUnitId, copied) {
      const sheet = services.get(IUniverInstanceService).getUniverSheetInstance(unitId)?.getSheetBySheetId(subUnitId);
      const spills = [...currentSpills(model).values()].filter((spill) => spill.sheetId === subUnitId);
      const alone = copied.startRow === copied.endRow && copied.startColumn === copied.endColumn;
      valueAt = (row, column) => {
        if (alone || !sheet || !spills.some(({ range }) => holds(range, row, column))) return null;
        const cell = model.getArrayFormulaCellData()[unitId]?.[subUnitId]?.[row]?.[column];
        const shown = sheet.getCell(row, column);
        const style = sheet.getComposedCellStyle(row, column);
        return cell && { v: cell.v, t: cell.t, s: style, displayV: shown?.v == null ? "" : String(shown.v) };
      };
    },
    getCellValueBySpecialMatrix: (row: number, column: number) => valueAt(row, column) ?? undefined,
    onAfterCopy() {
      valueAt = () => null;
    },
  });
}

const holds = (range: IRange, row: number, column: number): boolean =>
  row >= range.startRow && row <= range.endRow && column >= range.startColumn && column <= range.endColumn;
