import type { IRange, IWorkbookData } from "@univerjs/core";
import type { Choices, ContentTable, SheetContent } from "../content/sheetContent";

interface StoredTable {
  name: string;
  range: IRange;
  columns: { displayName: string }[];
}

interface StoredRule {
  type: string;
  formula1?: string;
  ranges: IRange[];
}

/** Tables and lists to choose from, as the grid keeps them beside the sheets. */
const names = { tables: "SHEET_TABLE_PLUGIN", choices: "SHEET_DATA_VALIDATION_PLUGIN" };

export function tablesOf(data: IWorkbookData, sheetId: string): ContentTable[] {
  const stored = read<StoredTable[] | { tables: StoredTable[] }>(data, names.tables, sheetId) ?? [];
  const tables = Array.isArray(stored) ? stored : stored.tables;
  return tables.map(({ name, range, columns }) => ({
    name,
    range: block(range),
    headers: columns.map(({ displayName }) => displayName),
  }));
}

export function choicesOf(data: IWorkbookData, sheetId: string): Choices[] {
  const rules = read<StoredRule[]>(data, names.choices, sheetId) ?? [];
  return rules
    .filter(({ type, formula1 }) => type === "list" && formula1 && !formula1.startsWith("="))
    .flatMap(({ formula1, ranges }) => ranges.map((range) => ({ list: listOf(formula1!), range: block(range) })));
}

/** The grid keeps a list as a JSON array or with commas. */
export const listOf = (source: string): string[] =>
  source.startsWith("[") ? (JSON.parse(source) as string[]) : source.split(",");

/** The same for a workbook to be opened: `ids` names each sheet's id. */
export function resourcesFor(sheets: readonly SheetContent[], ids: readonly string[]): IWorkbookData["resources"] {
  const bySheet = (make: (sheet: SheetContent, id: string) => unknown) =>
    JSON.stringify(Object.fromEntries(sheets.map((sheet, index) => [ids[index]!, make(sheet, ids[index]!)])));
  return [
    {
      name: names.tables,
      data: bySheet((sheet, id) => sheet.tables.map((table, at) => storedTable(table, `${id}-${at}`))),
    },
    {
      name: names.choices,
      data: bySheet((sheet, id) => sheet.choices.map((list, at) => storedRule(list, `${id}-${at}`))),
    },
  ];
}

function storedTable({ name, range, headers }: ContentTable, id: string): object {
  const columns = headers.map((displayName, index) => {
    return { id: `${id}-column-${index}`, displayName, dataType: "none", formula: "", meta: {}, style: {} };
  });
  const filters = { tableColumnFilterList: [], tableSortInfo: undefined };
  return {
    id: `${id}-table`,
    name,
    range,
    options: { showHeader: true, showFooter: false },
    filters,
    columns,
    meta: {},
  };
}

function storedRule({ list, range }: Choices, id: string): object {
  // A value outside the list is marked, not refused: the functions read many spellings.
  const look = { allowBlank: true, showDropDown: true, errorStyle: 2, showErrorMessage: false, renderMode: 1 };
  return { uid: `${id}-choices`, type: "list", formula1: list.join(","), ranges: [range], ...look };
}

function read<T>(data: IWorkbookData, name: string, sheetId: string): T | undefined {
  const text = data.resources?.find((resource) => resource.name === name)?.data;
  return text ? (JSON.parse(text) as Record<string, T>)[sheetId] : undefined;
}

function block({ startRow, endRow, startColumn, endColumn }: IRange) {
  return { startRow, endRow, startColumn, endColumn };
}
