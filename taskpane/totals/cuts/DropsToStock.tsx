import { Button } from "@fluentui/react-components";
import { Notice } from "../../components/Notice";
import { useTask } from "../../components/useTask";
import type { Replaced } from "../../excel";
import { useKept } from "../../hooks/useKept";
import { useLedger } from "../../hooks/useLedger";
import { useWorkbook } from "../../hooks/useWorkbook";
import { strings } from "../../strings";
import type { StockWork } from "./cutWork";

const t = strings.totals.cuts.stock;

/** Writes into Stock what is on hand once a plan is cut, and can take that back. */
export function DropsToStock({ after, isStale }: { after: StockWork; isStale: boolean }) {
  const workbook = useWorkbook();
  const { tables, reload } = useLedger();
  const task = useTask();
  const [written, setWritten] = useKept<Replaced[] | undefined>("totals.cuts.stock", undefined);
  const table = tables.Stock;
  if (after.drops + after.used === 0 && !written) return null;
  if (!table) return <p className="rl-hint">{t.noTable}</p>;

  const write = async () => {
    try {
      setWritten(await workbook.changeRows(table, after.edits));
    } finally {
      await reload();
    }
  };
  const takeBack = async (replaced: Replaced[]) => {
    await workbook.putBack(replaced, []);
    setWritten(undefined);
    await reload();
  };
  return (
    <div className="rl-stack">
      {!written && (
        <>
          <p className="rl-hint">{t.about(after.drops, after.used)}</p>
          <Button disabledFocusable={task.busy || isStale} onClick={() => void task.run(write)}>
            {t.button}
          </Button>
        </>
      )}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {written && (
        <Notice
          intent="success"
          actions={
            <Button size="small" onClick={() => void task.run(() => takeBack(written))}>
              {strings.bend.put.takeBack}
            </Button>
          }
        >
          {t.done}
        </Notice>
      )}
    </div>
  );
}
