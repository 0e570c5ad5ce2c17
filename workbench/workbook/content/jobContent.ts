import { readRaceway } from "../../../src/raceway/raceway";
import { readTradeSize } from "../../../src/raceway/tradeSize";
import { STICK } from "../../../src/shop/run/runsTable";
import { attempt } from "../../../taskpane/components/attempt";
import { CURRENCY } from "../../../taskpane/workbook/design/look";
import { newSheets, type SheetWishes } from "../../../taskpane/workbook/design/newSheets";
import { sheetColumns } from "../../../taskpane/workbook/design/sheets";
import { EXTRAS, TABLES, TABS, type Cell, type ItemName } from "../../../taskpane/workbook/items";
import { tableName } from "../../../taskpane/workbook/plan";
import { plainText } from "../../../taskpane/workbook/plainText";
import { recordsOf } from "../../../taskpane/workbook/recordsOf";
import type { CellValue } from "../../engine";
import type { RunList } from "../csv/runsFromCsv";
import { designContent } from "./designContent";
import type { SheetContent } from "./sheetContent";

/** What new sheets go by where each table and sheet goes by its own name. */
export function wishesForNew(): SheetWishes {
  const sheets = Object.fromEntries(TABS.map((item) => [item, item])) as SheetWishes["sheets"];
  const tables = Object.fromEntries(
    TABLES.map((table) => [
      table,
      { name: tableName(table), headers: sheetColumns(table, CURRENCY).map(({ header }) => header) },
    ]),
  ) as unknown as SheetWishes["tables"];
  return { sheets, tables, currency: CURRENCY };
}

/** A workbook as Set up makes it in an empty one. */
export const setUpContent = (items: readonly ItemName[], given: Pick<SheetWishes, "rows" | "traced">): SheetContent[] =>
  designContent(newSheets(items, { ...wishesForNew(), ...given }));

/** Rows by their headers; empty cells are left out, and what looks like a formula stays the text it is. */
export const recordsIn = (table: readonly (readonly CellValue[])[]): Record<string, Cell>[] =>
  recordsOf(table).map((row) =>
    Object.fromEntries(
      Object.entries(row).flatMap(([header, cell]) => (cell === null ? [] : [[header, asText(cell)] as const])),
    ),
  );

const asText = (cell: Cell): Cell => (typeof cell === "string" && cell.startsWith("'") ? `'${cell}` : plainText(cell));

/**
 * The workbook of a job: what people fill in, and result sheets of one live formula each.
 * @param more of what a workbook does well without
 */
export const jobContent = (runs: RunList, more: readonly ItemName[] = []): SheetContent[] =>
  setUpContent(
    TABS.filter((item) => !EXTRAS.includes(item) || more.includes(item)),
    { rows: { Runs: recordsIn([runs.headers, ...runs.rows]), Stock: stockRows(runs) } },
  );

/** Sticks to buy for each raceway and size the runs name. */
function stockRows({ headers, rows }: RunList): Record<string, Cell>[] {
  const at = (row: readonly CellValue[], name: string) => row[headers.indexOf(name)];
  const kinds = new Map<string, Record<string, Cell>>();
  for (const row of rows) {
    const { value: raceway } = attempt(() => readRaceway(at(row, "Raceway")));
    const { value: size } = attempt(() => readTradeSize(at(row, "Size")));
    if (raceway && size) kinds.set(`${raceway} ${size}`, { Raceway: raceway, Size: size, Length: STICK });
  }
  return [...kinds.values()];
}
