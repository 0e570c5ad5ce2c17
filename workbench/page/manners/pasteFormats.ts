import {
  CellValueType,
  type ICellData,
  isTextFormat,
  type Injector,
  type IObjectMatrixPrimitiveType,
  type IStyleData,
  IUniverInstanceService,
} from "@univerjs/core";
import { COPY_TYPE, ISheetClipboardService, type ISheetClipboardHook } from "@univerjs/preset-sheets-core";
import { SetRangeValuesMutation, SetRangeValuesUndoMutationFactory } from "@univerjs/sheets";

type PasteCells = NonNullable<ISheetClipboardHook["onPasteCells"]>;

const nothing = { redos: [], undos: [] };

/**
 * Number formats after a paste, as Excel has them: a copied cell brings its own; text from elsewhere takes the one of the
 * cell it comes into. By itself the grid makes a date of every text that could be one, 1/2 and 3/4 too, and writes that
 * into the style which the copied cell shares with its column.
 */
export function keepFormatsWhenPasting(services: Injector): void {
  const clipboard = services.get(ISheetClipboardService);

  const ownStyles: PasteCells = (_from, _to, cells) => {
    cells.forValue((_row, _column, cell) => {
      if (cell?.s && typeof cell.s === "object") cell.s = structuredClone(cell.s);
    });
    return nothing;
  };

  const formats: PasteCells = (from, to, cells, { copyType }) => {
    if (copyType === COPY_TYPE.CUT) return nothing;
    const book = services.get(IUniverInstanceService).getUniverSheetInstance(to.unitId);
    const sheet = book?.getSheetBySheetId(to.subUnitId);
    if (!sheet) return nothing;
    const cellValue: IObjectMatrixPrimitiveType<ICellData> = {};
    cells.forValue((row, column, cell) => {
      const [at, across] = [to.range.rows[row], to.range.cols[column]];
      if (at === undefined || across === undefined) return;
      const brought = cell && typeof cell.s === "object" ? cell.s?.n : undefined;
      const there = sheet.getComposedCellStyle(at, across).n;
      const format = from ? brought : (brought ?? there);
      const style = { s: { ...(from ? {} : unset(cell?.s)), n: format ? { ...format } : null } };
      // The grid knows a cell's own text format only, not its column's: there it has read 3/4 as a date by now.
      const asText = !from && isTextFormat(format?.pattern) && cell?.v != null && !cell.p;
      const text = asText ? { v: String(cell.v), t: CellValueType.STRING } : {};
      if (from || format || cell?.s) (cellValue[at] ??= {})[across] = { ...text, ...style };
    });
    const change = { unitId: to.unitId, subUnitId: to.subUnitId, cellValue };
    return {
      redos: [{ id: SetRangeValuesMutation.id, params: change }],
      undos: [{ id: SetRangeValuesMutation.id, params: SetRangeValuesUndoMutationFactory(services, change) }],
    };
  };

  // Before the grid's own, which have 0 and 10, and after them.
  clipboard.addClipboardHook({ id: "ledger-own-styles", priority: -1, onPasteCells: ownStyles });
  clipboard.addClipboardHook({ id: "ledger-formats", priority: 20, onPasteCells: formats });
}

/** What the grid writes into a pasted cell that brought no style of its own: it would stand over its column's. */
const USUAL: IStyleData = { ff: "Arial", fs: 11, it: 0, bl: 0, td: 0, ht: 0, vt: 0, tb: 0 };
const USUAL_PARTS = ["ul", "st", "ol", "tr", "pd"] as const;

/** Takes away the parts of a pasted style that say nothing. */
function unset(style: ICellData["s"]): IStyleData {
  if (!style || typeof style !== "object") return {};
  const silent = Object.entries(USUAL).filter(([key, usual]) => style[key as keyof IStyleData] === usual);
  const parts = USUAL_PARTS.filter((key) => !(style[key] as { s?: number } | undefined)?.s);
  return Object.fromEntries([...silent.map(([key]) => key), ...parts].map((key) => [key, null])) as IStyleData;
}
