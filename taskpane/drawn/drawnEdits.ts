import type { DrawnRow } from "../../src/drawn/drawnRows";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import type { TableCells, TableEdit } from "../excel";
import { columnPlaces } from "../workbook/columns";
import type { NamedTables } from "../workbook/design/formulas";
import { plainText } from "../workbook/plainText";
import { columnsOf } from "../workbook/plan";
import { firstFreeRow } from "../workbook/rows";
import { runRowCells } from "../workbook/runRow";

/** The cells that put runs of a drawing under the last written row of the Runs table. */
export function drawnEdits(table: TableCells, rows: readonly DrawnRow[], tables: NamedTables): TableEdit[] {
  const free = firstFreeRow(table.cells, columnsOf("Runs"));
  return rows.flatMap(({ run, raceway, size, route, start }, at) => {
    const given = { Run: plainText(run), Raceway: raceway, Size: size, Route: route, Start: start };
    const cells = runRowCells(table.cells[0] ?? [], given, tables);
    return cells.flatMap((cell, column) => (cell === null || cell === "" ? [] : [{ row: free + at, column, cell }]));
  });
}

/** Whether the table has a place for where a run begins. */
export const hasStart = (table: TableCells): boolean => columnPlaces(table.cells[0] ?? [], RUN_COLUMNS).has("Start");

/** Names that runs of the table have already. */
export function namesThere(table: TableCells, rows: readonly DrawnRow[]): string[] {
  const place = columnPlaces(table.cells[0] ?? [], RUN_COLUMNS).get("Run");
  if (place === undefined) return [];
  const there = new Set(
    table.cells.slice(1).map((line) =>
      String(line[place] ?? "")
        .trim()
        .toLowerCase(),
    ),
  );
  return rows.map(({ run }) => run).filter((run) => there.has(run.toLowerCase()));
}
