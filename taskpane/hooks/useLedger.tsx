import { createContext, useCallback, useContext, useEffect, useMemo, useRef, useState, type ReactNode } from "react";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import { attempt } from "../components/attempt";
import { defaultNames, type Names, type RowsBelow, type TableCells } from "../excel";
import { columnPlaces } from "../workbook/columns";
import { TABLES, type TableName } from "../workbook/items";
import { useWorkbook } from "./useWorkbook";

/** What the pane knows of the workbook, read again whenever it changes. */
export interface Ledger {
  state: "loading" | "ready" | "failed";
  /** Why it failed, in words. */
  problem: string;
  names: Names;
  tables: Partial<Record<TableName, TableCells>>;
  /** Rows that stand under the Runs table and are not in it. */
  below: RowsBelow | undefined;
  /** Row of the Runs table that is selected: 1 for the first under the header; 0 for none. */
  runRow: number;
  selectRun(row: number): Promise<void>;
  reload(): Promise<void>;
}

const LedgerContext = createContext<Ledger | undefined>(undefined);

/** Excel tells of every keystroke's change; one reading after this pause is enough [ms]. */
const PAUSE = 150;

export function LedgerProvider({ children }: { children: ReactNode }) {
  const workbook = useWorkbook();
  const [read, setRead] = useState<Pick<Ledger, "state" | "problem" | "names" | "tables" | "below">>({
    state: "loading",
    problem: "",
    names: defaultNames(),
    tables: {},
    below: undefined,
  });
  const [runRow, setRunRow] = useState(0);
  const known = useRef<Ledger["tables"]>({});

  const reload = useCallback(async () => {
    try {
      const names = await workbook.readNames();
      const cells = await workbook.readTables(TABLES.map((table) => names[table]));
      const tables = Object.fromEntries(
        TABLES.map((table, index) => [table, sameOr(known.current[table], cells[index])]),
      );
      known.current = tables;
      const runs = known.current.Runs;
      const below = runs && (await workbook.rowsBelow(runs, runColumns(runs)));
      setRead({ state: "ready", problem: "", names, tables, below });
    } catch (error) {
      setRead((before) => ({ ...before, state: "failed", problem: (error as Error).message }));
    }
  }, [workbook]);

  const follow = useCallback(async () => {
    const row = rowAt(known.current.Runs, await workbook.readSelection());
    if (row > 0) setRunRow(row);
  }, [workbook]);

  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const later = () => {
      clearTimeout(timer);
      timer = setTimeout(() => void reload(), PAUSE);
    };
    void reload().then(follow).catch(ignore);
    const stops = [workbook.onChange(later), workbook.onSelection(() => void follow().catch(ignore))];
    stops.forEach((stop) => void stop.catch(ignore));
    return () => {
      clearTimeout(timer);
      stops.forEach((stop) => void stop.then((end) => end()).catch(ignore));
    };
  }, [workbook, reload, follow]);

  const selectRun = useCallback(
    async (row: number) => {
      setRunRow(row);
      const table = known.current.Runs;
      if (table && row > 0) await workbook.select(runPlace(table, row), 1, table.cells[0]?.length ?? 1);
    },
    [workbook],
  );

  const ledger = useMemo(() => ({ ...read, runRow, selectRun, reload }), [read, runRow, selectRun, reload]);
  return <LedgerContext.Provider value={ledger}>{children}</LedgerContext.Provider>;
}

export function useLedger(): Ledger {
  const ledger = useContext(LedgerContext);
  if (!ledger) throw new Error("useLedger needs a LedgerProvider above it");
  return ledger;
}

/** Columns in which a row of runs holds something: its name and its route. */
const runColumns = ({ cells }: TableCells): number[] => {
  const places = attempt(() => columnPlaces(cells[0] ?? [], RUN_COLUMNS)).value;
  return ["Run", "Route"].flatMap((name) => places?.get(name) ?? []);
};

/** The table as it was known when nothing in it changed: what was worked out from it still holds. */
const sameOr = (known: TableCells | undefined, read: TableCells | undefined): TableCells | undefined =>
  JSON.stringify(known) === JSON.stringify(read) ? known : read;

const runPlace = (table: TableCells, row: number) => ({
  sheet: table.sheet,
  row: table.row + row,
  column: table.column,
});

/** Row of the table (1 for the first under the header) that a place lies in; 0 when it lies elsewhere. */
function rowAt(table: TableCells | undefined, place: { sheet: string; row: number; column: number }): number {
  if (!table || place.sheet !== table.sheet) return 0;
  const row = place.row - table.row;
  const column = place.column - table.column;
  const inside = row > 0 && row < table.cells.length && column >= 0 && column < (table.cells[0]?.length ?? 0);
  return inside ? row : 0;
}

/** Following the selection is a comfort: when Excel is busy the next event tries again. */
const ignore = (): void => undefined;
