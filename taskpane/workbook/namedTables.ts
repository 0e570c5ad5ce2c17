import type { Names, TableCells } from "../excel";
import type { NamedTables } from "./design/formulas";
import { sheetColumns } from "./design/sheets";
import { TABLES, type TableName } from "./items";

/** The tables as formulas name them: with the headers they have, or ours where a table is not there. */
export const namedTables = (names: Names, tables: Partial<Record<TableName, TableCells>>): NamedTables =>
  Object.fromEntries(
    TABLES.map((table) => {
      const headers = tables[table]?.cells[0]?.map(String) ?? sheetColumns(table, "").map(({ header }) => header);
      return [table, { name: names[table], headers }];
    }),
  ) as unknown as NamedTables;
