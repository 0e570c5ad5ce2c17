import { hasToBeEntered, isLost } from "../workbook/design/spelling";
import { reading } from "./batch";
import { ifThere, knows } from "./ifThere";

/** One table of the workbook: its name, its sheet and its headers. */
export interface TableInfo {
  name: string;
  sheet: string;
  headers: string[];
}

/** What stands in the workbook: enough to see what would be in the way. */
export interface Contents {
  sheets: string[];
  /** Formula of A1 for each sheet, in the order of `sheets`. */
  corners: string[];
  /** Sheets with a formula of ours in A1 that has to be entered again. */
  lost: string[];
  /** Sheets whose A1 holds nothing but the error of a function that Excel does not know: the formula is gone. */
  gone: string[];
  /** The only sheet, where it is empty: what a new workbook begins with. */
  blank?: string;
  tables: TableInfo[];
  /** Names that are defined for the whole workbook. */
  names: string[];
}

/** Lists sheets, tables and names in two round trips. */
export function readContents(): Promise<Contents> {
  return reading(async (context) => {
    const { worksheets, tables } = context.workbook;
    worksheets.load("items/name");
    tables.load("items/name");
    const defined: Excel.NamedItemCollection[] = [];
    ifThere(() => defined.push(context.workbook.names.load("items/name")));
    await context.sync();
    const corners = worksheets.items.map((sheet) => sheet.getRange("A1").load("formulas,values"));
    const headers = tables.items.map((table) => table.getHeaderRowRange().load("values"));
    const sheets = tables.items.map((table) => table.worksheet.load("name"));
    const only = worksheets.items.length === 1 ? worksheets.items[0] : undefined;
    const used = only?.getUsedRangeOrNullObject().load("rowIndex");
    const drawn = only ? drawnOn(only) : [];
    await context.sync();
    const nothing = used?.isNullObject && tables.items.length === 0 && drawn.every(({ value }) => value === 0);
    const formulas = corners.map((range) => String(range.formulas[0]?.[0] ?? ""));
    const values = corners.map((range): unknown => range.values[0]?.[0]);
    const sheetsWhere = (holds: (formula: string, value: unknown) => boolean) =>
      worksheets.items.flatMap(({ name }, at) => (holds(formulas[at]!, values[at]) ? [name] : []));
    return {
      sheets: worksheets.items.map((sheet) => sheet.name),
      ...(only && nothing && { blank: only.name }),
      corners: formulas,
      lost: sheetsWhere(hasToBeEntered),
      gone: sheetsWhere((formula, value) => isLost(value) && !formula.startsWith("=")),
      tables: tables.items.map((table, index) => ({
        name: table.name,
        sheet: sheets[index]?.name ?? "",
        headers: (headers[index]?.values[0] ?? []).map(String),
      })),
      names: defined.flatMap(({ items }) => items.map(({ name }) => name)),
    };
  });
}

/** How many charts, and how many pictures and shapes, stand on a sheet: its cells say nothing of them. */
function drawnOn(sheet: Excel.Worksheet): OfficeExtension.ClientResult<number>[] {
  const counts: OfficeExtension.ClientResult<number>[] = [];
  ifThere(() => counts.push(sheet.charts.getCount()));
  if (knows("1.9")) ifThere(() => counts.push(sheet.shapes.getCount()));
  return counts;
}
