import { createContext, useCallback, useContext, useEffect, useMemo, useRef, useState, type ReactNode } from "react";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import { attempt } from "../components/attempt";
import { defaultNames, type Names, type RowsBelow, type TableCells } from "../excel";
import { strings } from "../strings";
import { columnPlaces } from "../workbook/columns";
import { TABLES, type TableName } from "../workbook/items";
import { oneAtATime } from "./oneAtATime";
import { backOff, untilRead } from "./untilRead";
import { useWorkbook, type WorkbookApi } from "./useWorkbook";

/** What the pane knows of the workbook, read again whenever it changes. */
export interface Ledger {
  /** Ready once it was read for the first time; what is shown since may be {@link behind}. */
  state: "loading" | "ready" | "failed";
  /** Why what is shown is older than the sheet, in words; empty while it is not. */
  behind: string;
  /** @throws Error while the pane is behind: nothing is written then that rests on what it shows */
  mustBeFresh(): void;
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
/** A reading that takes longer is told of [ms]. */
const SLOW = 2000;

type Read = Pick<Ledger, "state" | "names" | "tables" | "below"> & { problem: string; failures: number };

export function LedgerProvider({ children }: { children: ReactNode }) {
  const workbook = useWorkbook();
  const [{ problem, failures, ...read }, setRead] = useState<Read>({
    state: "loading",
    problem: "",
    failures: 0,
    names: defaultNames(),
    tables: {},
    below: undefined,
  });
  const [runRow, setRunRow] = useState(0);
  const known = useRef<Ledger["tables"]>({});

  const [waiting, setWaiting] = useState(false);

  const reload = useMemo(
    () =>
      oneAtATime(async () => {
        const slow = setTimeout(() => setWaiting(true), SLOW);
        try {
          const { names, below, tables } = await readLedger(workbook, known.current);
          known.current = tables;
          setRead({ state: "ready", problem: "", failures: 0, names, tables, below });
        } catch (error) {
          setRead((before) => ({
            ...before,
            state: before.state === "ready" ? "ready" : "failed",
            problem: (error as Error).message,
            failures: before.failures + 1,
          }));
        }
        clearTimeout(slow);
        setWaiting(false);
      }),
    [workbook],
  );

  useEffect(() => {
    if (failures === 0) return;
    const timer = setTimeout(() => void reload(), backOff(failures));
    return () => clearTimeout(timer);
  }, [failures, reload]);

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
    const ends = [
      // What changed before Excel let the pane listen was missed.
      listen(() => workbook.onChange(later), later),
      listen(() => workbook.onSelection(() => void follow().catch(ignore))),
    ];
    return () => {
      clearTimeout(timer);
      ends.forEach((end) => end());
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

  const behind = waiting ? strings.behind.waiting : problem && strings.behind.failed(problem);
  const isBehind = useRef(behind);
  isBehind.current = behind;
  const mustBeFresh = useCallback(() => {
    if (isBehind.current !== "") throw new Error(`${isBehind.current} ${strings.excel.untouched}`);
  }, []);
  const { state, names, tables, below } = read;
  const ledger = useMemo(
    () => ({ state, names, tables, below, behind, mustBeFresh, runRow, selectRun, reload }),
    [state, names, tables, below, behind, mustBeFresh, runRow, selectRun, reload],
  );
  return <LedgerContext.Provider value={ledger}>{children}</LedgerContext.Provider>;
}

export function useLedger(): Ledger {
  const ledger = useContext(LedgerContext);
  if (!ledger) throw new Error("useLedger needs a LedgerProvider above it");
  return ledger;
}

/** Everything the pane knows of the workbook; a table in which nothing changed stays the same object. */
async function readLedger(workbook: WorkbookApi, known: Ledger["tables"]) {
  const names = await workbook.readNames();
  const cells = await workbook.readTables(TABLES.map((table) => names[table]));
  const tables: Ledger["tables"] = Object.fromEntries(
    TABLES.map((table, index) => [table, sameOr(known[table], cells[index])]),
  );
  const runs = tables.Runs;
  return { names, tables, below: runs && (await workbook.rowsBelow(runs, runColumns(runs))) };
}

/** Listens as soon as Excel lets it; gives the way to stop. */
function listen(begin: () => Promise<() => Promise<void>>, missed: () => void = ignore): () => void {
  let isOver = false;
  let stop: (() => Promise<void>) | undefined;
  const end = () => void stop?.().catch(ignore);
  const begun = async () => {
    stop = await begin();
    if (isOver) end();
  };
  const giveUp = untilRead(begun, (_, failures) => failures > 0 && missed());
  return () => {
    isOver = true;
    giveUp();
    end();
  };
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
