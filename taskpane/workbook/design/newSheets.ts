import { plainText } from "../plainText";
import { runRowCells } from "../runRow";
import { TABLES, TABS, type Cell, type ItemName, type ResultName, type TableName } from "../items";
import { columnDesign, isDesigned, type ColumnDesign } from "./columns";
import { besideResult, resultFormula, type NamedTables } from "./formulas";
import { COLORS, FORMATS, heading, type Look } from "./look";
import { frozenColumns, sheetColumns } from "./sheets";
import { startRows, type Rows } from "./startRows";

/** A sheet to make: everything that Excel, the local page and a file need to know of it. */
export interface NewSheet {
  sheet: string;
  /** Name of the table in it; undefined for a sheet of one formula. */
  table: string | undefined;
  /** From A1: headers and rows, or the formula that spills. */
  cells: Cell[][];
  columns: ColumnDesign[];
  /** Look of each heading, over that of its column. */
  headings: readonly Look[];
  frozenColumns: number;
  /** RRGGBB. */
  tab: string;
  /** Cells beside a result, from the first row down. */
  beside?: { column: number; cells: readonly string[] };
}

/** What new sheets are made from. */
export interface SheetWishes {
  /** Sheet of each item, ours and those that are there already. */
  readonly sheets: Readonly<Record<ItemName, string>>;
  /** Tables as they will be called, and headers of those that are there already. */
  readonly tables: NamedTables;
  readonly currency: string;
  /** Rows of tables in place of what they start with. */
  readonly rows?: Partial<Record<TableName, Rows>>;
  /** Item of the take-off whose runs are told. */
  readonly traced?: string;
}

/** Rows for which lists to choose from reach below a table [rows]. */
export const LIST_ROOM = 500;

/** The sheets of some items, in the order of their tabs. */
export const newSheets = (items: readonly ItemName[], wishes: SheetWishes): NewSheet[] =>
  TABS.filter((item) => items.includes(item)).map((item) =>
    isTable(item) ? tableSheet(item, wishes) : resultSheet(item as ResultName, wishes),
  );

export const isTable = (item: ItemName): item is TableName => (TABLES as readonly string[]).includes(item);

function tableSheet(item: TableName, { sheets, tables, currency, rows }: SheetWishes): NewSheet {
  const given = rows?.[item] ?? startRows(item);
  const columns = [...sheetColumns(item, currency), ...ownColumns(item, given, currency)].map((column) =>
    column.hidden && given.some((row) => (row[column.header] ?? "") !== "") ? { ...column, hidden: false } : column,
  );
  const headers = columns.map(({ header }) => header);
  const lines = given.length > 0 ? given : [{}];
  const body = lines.map((row): Cell[] => {
    if (item === "Runs") return runRowCells(headers, dated(row), tables).map((cell) => cell ?? "");
    const cells = dated(row);
    return headers.map((header) => cells[header] ?? "");
  });
  return {
    sheet: sheets[item],
    table: tables[item].name,
    cells: [headers.map(plainText), ...body],
    columns,
    headings: tableHeadings(columns.length),
    frozenColumns: frozenColumns(item),
    tab: COLORS.input,
  };
}

/** At the left of their cells: the arrows to filter by stand at the right. */
const tableHeadings = (count: number): Look[] =>
  Array.from({ length: count }, () => ({ ...heading("input"), align: "left" }));

/** Above what they name. The first does not wrap: the words of a result that waits go on beside it. */
export const resultHeadings = (columns: readonly { look?: Look }[]): Look[] =>
  columns.map(({ look = {} }, place) => ({
    ...heading("result"),
    wrap: place > 0,
    align: look.align ?? (isNumber(look) ? "right" : "left"),
  }));

/** True for a column of numbers, which stand at the right by themselves. */
const isNumber = ({ format = FORMATS.text }: Look): boolean => format !== FORMATS.text && format !== FORMATS.date;

/** A sheet with a table of values, such as runs to keep as they are: it looks like ours, and nothing in it follows. */
export function keptTable(sheet: string, table: string, cells: Cell[][]): NewSheet & { table: string } {
  const columns = (cells[0] ?? []).map((header): ColumnDesign => {
    const { width, look } = columnDesign(String(header), "");
    return { header: String(header), width, look };
  });
  const common = { headings: tableHeadings(columns.length), frozenColumns: 0, tab: COLORS.input };
  return { sheet, table, cells, columns, ...common };
}

/** Columns of the person's own, which rows bring along: they stand at the far right. */
function ownColumns(item: TableName, rows: Rows, currency: string): ColumnDesign[] {
  const known = sheetColumns(item, currency).map(({ header }) => header);
  const own = new Set(rows.flatMap((row) => Object.keys(row)).filter((header) => !known.includes(header)));
  return [...own].map((header) => {
    const longest = Math.max(header.length, ...rows.map((row) => String(row[header] ?? "").length));
    return isDesigned(header)
      ? columnDesign(header, currency)
      : columnDesign(header, currency, { width: Math.min(250, 24 + longest * 7), look: { format: "@", wrap: true } });
  });
}

/** A day written as 2026-12-01 is written as the date it is, as Excel would have it. */
function dated(row: Readonly<Record<string, Cell>>): Readonly<Record<string, Cell>> {
  const { Date: day } = row;
  const [, year, month, date] = (typeof day === "string" && /^(\d{4})-(\d\d)-(\d\d)$/.exec(day)) || [];
  if (!year) return row;
  return { ...row, Date: globalThis.Date.UTC(Number(year), Number(month) - 1, Number(date)) / 86_400_000 + 25569 };
}

function resultSheet(item: ResultName, { sheets, tables, currency, traced }: SheetWishes): NewSheet {
  const columns = sheetColumns(item, currency).map(({ list: _, note: __, ...column }) => ({
    ...column,
    look: asResult(column.look),
  }));
  const beside = besideResult(item, traced);
  return {
    sheet: sheets[item],
    table: undefined,
    cells: [[resultFormula(item, tables)]],
    columns,
    headings: resultHeadings(columns.slice(0, columns.length - (beside.length > 0 ? 2 : 0))),
    frozenColumns: frozenColumns(item),
    tab: COLORS.result,
    ...(beside.length > 0 && { beside: { column: columns.length - 1, cells: beside } }),
  };
}

/** A result is what it is: text needs no text format, and a formula in a cell of that format would stay text. */
export const asResult = ({ format, ...look }: Look): Look =>
  format === undefined || format === FORMATS.text ? look : { ...look, format };
