import { Notice } from "../components/Notice";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";

const t = strings.leftOut;

/** Says that rows under the Runs table are not counted, with the way to take them in. */
export function RowsLeftOut() {
  const workbook = useWorkbook();
  const { tables, below, reload } = useLedger();
  const task = useTask();
  const runs = tables.Runs;
  if (!runs || !below) return null;
  const takeIn = () =>
    task.run(async () => {
      await workbook.takeRowsIn(runs, below.reach);
      await reload();
    });
  return (
    <Notice
      intent="warning"
      title={t.title(below.count, runs.name)}
      actions={
        <SheetButton size="small" appearance="primary" disabledFocusable={task.busy} onClick={() => void takeIn()}>
          {t.takeIn}
        </SheetButton>
      }
    >
      {task.problem || t.words}
    </Notice>
  );
}
