import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { useTask } from "../components/useTask";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { useRun } from "../run/useRun";
import { strings } from "../strings";
import type { Rows } from "../workbook/newTables";
import { runRowCells } from "../workbook/runRow";
import { readDemoRuns } from "./demoJob";
import type { SetUp } from "./useSetUp";

const t = strings.start.demo;

/** Opens the demo job: in new tables where there are none, else, when asked, under the runs that are there. */
export function DemoJob({ setUp }: { setUp: SetUp }) {
  const workbook = useWorkbook();
  const { names, reload } = useLedger();
  const { table, runs } = useRun();
  const task = useTask();
  const [step, setStep] = useState<"ready" | "asking" | "done">("ready");

  const open = (place: (rows: Rows) => Promise<void>) =>
    task.run(async () => {
      const rows = await readDemoRuns().catch((error: Error) => {
        throw new Error(t.notFound(error.message));
      });
      await place(rows);
      setStep("done");
    });
  const addBelow = (rows: Rows): Promise<void> => {
    if (!table) return setUp.carryOut(rows);
    const headers = table.cells[0] ?? [];
    const first = table.row + table.cells.length;
    const lines = rows.map((row, index) => runRowCells(headers, first + index, table.column, row, names.Shoes));
    return workbook.addRows(table.name, lines).then(reload);
  };
  const start = () => {
    if (runs.length > 0) setStep("asking");
    else void open(addBelow);
  };

  return (
    <Section title={t.title}>
      <p>{t.about}</p>
      <Button disabledFocusable={task.busy} onClick={start}>
        {task.busy ? strings.common.working : t.button}
      </Button>
      {step === "asking" && (
        <Notice
          intent="warning"
          actions={
            <>
              <Button size="small" appearance="primary" onClick={() => void open(addBelow)}>
                {t.below}
              </Button>
              <Button size="small" onClick={() => setStep("ready")}>
                {strings.common.cancel}
              </Button>
            </>
          }
        >
          {t.ask(runs.length)}
        </Notice>
      )}
      {step === "done" && <Notice intent="success">{t.done}</Notice>}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
    </Section>
  );
}
