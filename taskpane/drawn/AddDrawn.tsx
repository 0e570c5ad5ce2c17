import { useState } from "react";
import type { DrawnRow } from "../../src/drawn/drawnRows";
import { Notice } from "../components/Notice";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import type { Replaced } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
import { namedTables } from "../workbook/namedTables";
import { drawnEdits, hasStart, namesThere } from "./drawnEdits";
import { drawnStrings as t } from "./drawnStrings";

/** Puts runs of a drawing into the Runs table, and takes them out again. */
export function AddDrawn({ rows }: { rows: readonly DrawnRow[] }) {
  const workbook = useWorkbook();
  const { tables, names, mustBeFresh, reload } = useLedger();
  const task = useTask();
  const [state, setState] = useState<readonly Replaced[] | "taken back">();
  const table = tables.Runs;
  if (!table) return <Notice intent="warning">{t.noTable}</Notice>;
  if (rows.length === 0) return null;
  const there = state === undefined ? namesThere(table, rows) : [];

  const add = async () => {
    mustBeFresh();
    try {
      setState(await workbook.changeRows(table, drawnEdits(table, rows, namedTables(names, tables))));
    } finally {
      await reload();
    }
  };
  const takeBack = async (replaced: readonly Replaced[]) => {
    await workbook.putBack(replaced, []);
    setState("taken back");
    await reload();
  };

  return (
    <>
      {there.length > 0 && <Notice intent="warning">{t.there(there.slice(0, 8).join(", "))}</Notice>}
      {!hasStart(table) && <Notice intent="warning">{t.noStart}</Notice>}
      {state === undefined && (
        <SheetButton appearance="primary" disabledFocusable={task.busy} onClick={() => void task.run(add)}>
          {task.busy ? strings.common.working : t.add(rows.length)}
        </SheetButton>
      )}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {state === "taken back" && <Notice>{t.takenBack}</Notice>}
      {Array.isArray(state) && (
        <Notice
          intent="success"
          actions={
            <SheetButton
              size="small"
              disabledFocusable={task.busy}
              onClick={() => void task.run(() => takeBack(state as readonly Replaced[]))}
            >
              {t.takeBack}
            </SheetButton>
          }
        >
          {t.added(rows.length)}
        </Notice>
      )}
    </>
  );
}
