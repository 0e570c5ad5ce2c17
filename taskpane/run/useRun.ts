import { useCallback, useEffect, useMemo, useRef } from "react";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import type { TableCells } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { appendRows } from "../workbook/appendRows";
import { columnPlaces } from "../workbook/columns";
import type { Cell } from "../workbook/items";
import { plainText } from "../workbook/plainText";
import { namedTables } from "../workbook/namedTables";
import { writtenRows } from "../workbook/rows";
import { freeRunName } from "../workbook/runRow";

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

/** What a cell holds once it is written; a person may type on before the sheet is read again. */
interface Written {
  readonly cell: Cell;
  /** A reading that began after the writing has ended. */
  isRead: boolean;
}

export function useRun(): SelectedRun {
  const workbook = useWorkbook();
  const { tables, names, runRow, selectRun, reload, mustBeFresh } = useLedger();
  const table = tables.Runs;
  const cells = table?.cells;
  const places = useMemo(() => (cells?.[0] ? columnPlaces(cells[0], RUN_COLUMNS) : new Map<string, number>()), [cells]);
  const runs = useMemo(() => listRuns(cells ?? [], places), [cells, places]);
  const row = runs.some((run) => run.row === runRow) ? runRow : (runs[0]?.row ?? 0);

  /** Cells written and not yet read again, by line and column. */
  const written = useRef(new Map<string, Written>());
  useEffect(() => {
    for (const [key, { cell, isRead }] of written.current) {
      const [line, column] = key.split(",").map(Number);
      if (isRead || table?.cells[line!]?.[column!] === cell) written.current.delete(key);
    }
  }, [table]);
  const lastWriting = useRef<Promise<void>>(Promise.resolve());

  const setCell = useCallback(
    async (column: string, value: Cell) => {
      const place = places.get(column);
      if (!table || place === undefined || row === 0) return;
      mustBeFresh();
      const at = (line: number, column: number) => {
        const cell = written.current.get(`${line},${column}`)?.cell ?? table.cells[line]?.[column] ?? "";
        return { sheet: table.sheet, row: table.row + line, column: table.column + column, value: cell };
      };
      const own = [place, ...["Run", "Route"].flatMap((name) => places.get(name) ?? [])];
      const seen = () => [at(0, place), ...own.map((column) => at(row, column))];
      const now = { cell: value, isRead: false };
      // After the writing before it, whose end this one looks for in the sheet.
      const writing = lastWriting.current.then(async () => {
        await workbook.writeCells(at(row, place), [[plainText(value)]], seen());
        written.current.set(`${row},${place}`, now);
      });
      lastWriting.current = writing.catch(() => undefined);
      try {
        await writing;
      } finally {
        await reload();
        now.isRead = true;
      }
    },
    [workbook, table, places, row, reload, mustBeFresh],
  );

  const addRun = useCallback(
    async (given: Readonly<Record<string, Cell>> = {}) => {
      if (!table) return;
      mustBeFresh();
      // Row 0 is the header: with no run to go by, the usual stands in.
      const like = (row > 0 && table.cells[row]) || [];
      const from = (column: string, fallback: string) => String(like[places.get(column) ?? -1] || fallback);
      const entries = {
        Run: freeRunName(runs.map(({ name }) => name)),
        Job: from("Job", ""),
        Raceway: from("Raceway", "EMT"),
        Size: from("Size", "1/2"),
        Quantity: 1,
        ...given,
      };
      const asText = Object.fromEntries(Object.entries(entries).map(([column, cell]) => [column, plainText(cell)]));
      const free = await appendRows(workbook, "Runs", table, [asText], namedTables(names, tables));
      await reload();
      await selectRun(free);
    },
    [workbook, table, tables, names, places, runs, row, reload, selectRun, mustBeFresh],
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

/** The rows that hold anything, under the names people choose them by. */
function listRuns(cells: readonly (readonly Cell[])[], places: ReadonlyMap<string, number>): RunEntry[] {
  if (cells.length === 0) return [];
  const nameOf = (row: number) => String(cells[row]?.[places.get("Run") ?? -1] ?? "").trim() || `row ${row}`;
  return writtenRows(cells, RUN_COLUMNS).map((row) => ({ row, name: nameOf(row) }));
}
