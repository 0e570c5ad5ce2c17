import { useCallback, useMemo } from "react";
import { RUN_COLUMNS } from "../../src/shop/runsTable";
import type { TableCells } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { columnPlaces } from "../workbook/columns";
import type { Cell } from "../workbook/items";
import { freeRunName, runRowCells } from "../workbook/runRow";

export interface RunEntry {
  row: number;
  name: string;
}

/** The run the person is on, read from the sheet's row, and the ways to change it. */
export interface SelectedRun {
  table: TableCells | undefined;
  /** Rows that hold something, for choosing. */
  runs: RunEntry[];
  row: number;
  /** Text of a cell of the selected row, under a column by its name; empty when there is none. */
  text(column: string): string;
  has(column: string): boolean;
  setCell(column: string, value: Cell): Promise<void>;
  addRun(given?: Readonly<Record<string, Cell>>): Promise<void>;
}

export function useRun(): SelectedRun {
  const workbook = useWorkbook();
  const { tables, names, runRow, selectRun, reload } = useLedger();
  const table = tables.Runs;
  const cells = table?.cells;
  const places = useMemo(() => (cells?.[0] ? columnPlaces(cells[0], RUN_COLUMNS) : new Map<string, number>()), [cells]);
  const runs = useMemo(() => listRuns(cells ?? [], places), [cells, places]);
  const row = runs.some((run) => run.row === runRow) ? runRow : (runs[0]?.row ?? 0);

  const setCell = useCallback(
    async (column: string, value: Cell) => {
      const place = places.get(column);
      if (!table || place === undefined || row === 0) return;
      await workbook.writeCells({ sheet: table.sheet, row: table.row + row, column: table.column + place }, [[value]]);
      await reload();
    },
    [workbook, table, places, row, reload],
  );

  const addRun = useCallback(
    async (given: Readonly<Record<string, Cell>> = {}) => {
      if (!table) return;
      const like = table.cells[row] ?? [];
      const from = (column: string, fallback: string) => String(like[places.get(column) ?? -1] || fallback);
      const entries = {
        Run: freeRunName(runs.map(({ name }) => name)),
        Job: from("Job", ""),
        Raceway: from("Raceway", "EMT"),
        Size: from("Size", "1/2"),
        Quantity: 1,
        ...given,
      };
      const free = firstFreeRow(table.cells, runs);
      const line = runRowCells(table.cells[0] ?? [], table.row + free, table.column, entries, names.Shoes);
      if (free < table.cells.length) {
        await workbook.writeCells({ sheet: table.sheet, row: table.row + free, column: table.column }, [line]);
      } else await workbook.addRows(table.name, [line]);
      await reload();
      await selectRun(free);
    },
    [workbook, table, names, places, runs, row, reload, selectRun],
  );

  return {
    table,
    runs,
    row,
    text: (column) => String(cells?.[row]?.[places.get(column) ?? -1] ?? ""),
    has: (column) => places.has(column),
    setCell,
    addRun,
  };
}

/** Rows in which the person has written anything under a column of ours. */
function listRuns(cells: readonly (readonly Cell[])[], places: ReadonlyMap<string, number>): RunEntry[] {
  return cells.flatMap((line, row): RunEntry[] => {
    const written = [...places.values()].some((place) => String(line[place] ?? "").trim() !== "");
    if (row === 0 || !written) return [];
    return [{ row, name: String(line[places.get("Run") ?? -1] ?? "").trim() || `row ${row}` }];
  });
}

/** The first row after the last run: an empty row of the table, or the one under it. */
const firstFreeRow = (cells: readonly unknown[], runs: readonly RunEntry[]): number =>
  Math.min((runs.at(-1)?.row ?? 0) + 1, cells.length);
