import { MADE_COLUMNS } from "../../src/made/records/madeTable";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import { SHOE_COLUMNS } from "../../src/shop/shoe/readShoe";
import type { Column } from "../../src/table/headerTable";
import { attempt } from "../components/attempt";
import { sameName, type Contents, type Names } from "../excel";
import { strings } from "../strings";
import { missingColumns } from "./columns";
import { isResultFormula, type NamedTables } from "./design/formulas";
import { isTable, type SheetWishes } from "./design/newSheets";
import { INPUTS, sheetColumns } from "./design/sheets";
import { TABLES, TABS, type ItemName, type TableName } from "./items";

/** What becomes of one table or result sheet when the workbook is set up. */
export interface PlanItem {
  item: ItemName;
  /** Already in the workbook, and left as it is. */
  there: boolean;
  /** Sheet to make; another than the item's own name where that is taken. */
  sheet: string;
  /** Our name for it is taken by something of the person's. */
  taken: boolean;
  /** A set-up that broke half way has begun this sheet: it is gone on with. */
  begun?: boolean;
}

/**
 * What there is to make in a workbook, so that nothing in it is written over.
 * @param begun sheets that a set-up which broke half way was to make
 */
export function planSetUp(contents: Contents, names: Names, begun: readonly string[] = []): PlanItem[] {
  const sheets = [...contents.sheets];
  const half = begun.filter((name) => contents.sheets.some((sheet) => sameName(sheet, name)));
  return TABS.map((item): PlanItem => {
    const own = half.find((name) => sameName(isTable(item) ? tableName(name) : name, names[item]));
    if (own !== undefined) return { item, there: false, sheet: own, taken: false, begun: true };
    if (isThere(contents, names, item)) return { item, there: true, sheet: names[item], taken: false };
    const sheet = freeSheetName(item, contents, sheets);
    sheets.push(sheet);
    return { item, there: false, sheet, taken: sheet !== item };
  });
}

/** The names a plan leads to. A table is called as its sheet, without what a table's name cannot hold. */
export function plannedNames(plan: readonly PlanItem[], names: Names): Names {
  const next = { ...names };
  for (const { item, there, sheet } of plan) if (!there) next[item] = isTable(item) ? tableName(sheet) : sheet;
  return next;
}

/** The names of sheets and tables that formulas will find: those that are there, and those a plan makes. */
export function plannedSheets(
  contents: Contents,
  names: Names,
  plan: readonly PlanItem[],
): Omit<SheetWishes, "currency"> {
  const next = plannedNames(plan, names);
  const there = (table: TableName) => contents.tables.find(({ name }) => sameName(name, next[table]));
  const sheetOf = ({ item, sheet }: PlanItem) => (isTable(item) && there(item)?.sheet) || sheet.trim();
  return {
    sheets: Object.fromEntries(plan.map((item) => [item.item, sheetOf(item)])) as SheetWishes["sheets"],
    tables: Object.fromEntries(
      TABLES.map((table) => {
        const headers = there(table)?.headers ?? sheetColumns(table, "").map(({ header }) => header);
        return [table, { name: next[table], headers }];
      }),
    ) as unknown as NamedTables,
  };
}

/** A table's name for a sheet: without what it cannot hold, and not one that Excel would read as a cell, such as Job1. */
export const tableName = (sheet: string): string => {
  const name = sheet.trim().replace(/[^\p{L}\p{N}_]/gu, "_");
  return LIKE_A_CELL.test(name) ? `${name}_` : name;
};

const LIKE_A_CELL = /^([a-z]{1,3}\d{1,7}|r\d*(c\d*)?|c\d*)$/i;

/** Why a sheet cannot be called so; undefined when it can. */
export function sheetNameProblem(item: PlanItem, plan: readonly PlanItem[], contents: Contents): string | undefined {
  if (item.begun) return undefined;
  const t = strings.start.names;
  const sheet = item.sheet.trim();
  if (sheet === "") return t.empty;
  if (sheet.length > 31) return t.tooLong(sheet.length);
  if (/[[\]:*?/\\]|^'|'$/.test(sheet)) return t.characters;
  if (isTable(item.item) && !/^[\p{L}_]/u.test(sheet)) return t.letterFirst;
  const others = plan.filter((other) => other !== item && !other.there).map((other) => other.sheet.trim());
  if ([...contents.sheets, ...others].some((name) => sameName(name, sheet))) return t.sheetTaken(sheet);
  const tables = contents.tables.map(({ name }) => name);
  if (isTable(item.item) && contents.names.some((name) => sameName(name, tableName(sheet))))
    return t.nameDefined(sheet);
  if (isTable(item.item) && tables.some((name) => sameName(name, tableName(sheet)))) return t.tableTaken(sheet);
  return undefined;
}

const NEEDED: Record<Exclude<TableName, "Runs" | "Shoes" | "Made" | "Issued">, readonly string[]> = {
  Stock: ["Raceway", "Size", "Length"],
  Prices: ["Item", "Price"],
  Labor: ["Operation", "Minutes"],
  Counts: ["Item", "Quantity"],
  Factors: ["Column", "Is", "Percent"],
  Crews: ["Worker", "Base"],
  Rules: ["Rule", "Value"],
  Bench: ["Setting", "Value"],
  "One bend": ["Result"],
  Costs: ["Job cost", "Price"],
  Allowances: ["Allowance", "Value", "Unit"],
  Bid: ["Line", "Value", "Unit"],
};

/** Columns a table of ours must have to be used as it is. */
export const columnsOf = (table: TableName): readonly Column[] => {
  if (table === "Runs" || table === "Issued") return RUN_COLUMNS;
  if (table === "Shoes") return SHOE_COLUMNS;
  if (table === "Made") return MADE_COLUMNS;
  return INPUTS[table].map((name) => ({
    name,
    required: NEEDED[table].includes(name),
    ...(name === "Price" ? { also: ["Unit price"] } : {}),
  }));
};

/** Needed columns that a table lacks; every one of them when its headers cannot be told apart. */
export function lacking(table: TableName, headers: readonly string[]): string[] {
  const columns = columnsOf(table);
  const all = columns.filter(({ required }) => required).map(({ name }) => name);
  return attempt(() => missingColumns(headers, columns)).value ?? all;
}

function isThere(contents: Contents, names: Names, item: ItemName): boolean {
  if (!isTable(item)) {
    const place = contents.sheets.findIndex((name) => sameName(name, names[item]));
    if (place < 0) return false;
    return isResultFormula(contents.corners[place] ?? "") || contents.gone.includes(contents.sheets[place]!);
  }
  const table = contents.tables.find(({ name }) => sameName(name, names[item]));
  return table !== undefined && lacking(item, table.headers).length === 0;
}

/** The name, or the name with a number behind it where a sheet or table is called so already. */
export function freeSheetName(name: string, contents: Contents, sheets: readonly string[] = contents.sheets): string {
  const taken = [...sheets, ...contents.tables.map((table) => table.name), ...contents.names];
  const isTaken = (candidate: string) =>
    taken.some((other) => sameName(other, candidate) || sameName(other, tableName(candidate)));
  if (!isTaken(name)) return name;
  for (let number = 2; ; number++) if (!isTaken(`${name} ${number}`)) return `${name} ${number}`;
}
