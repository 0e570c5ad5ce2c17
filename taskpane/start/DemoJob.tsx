import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import type { TableCells } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { useRun } from "../run/useRun";
import { strings } from "../strings";
import { appendRows } from "../workbook/appendRows";
import type { TableName } from "../workbook/items";
import { namedTables } from "../workbook/namedTables";
import { columnsOf } from "../workbook/plan";
import { writtenRows } from "../workbook/rows";
import { readDemoJob } from "./demoJob";
import type { SetUp } from "./useSetUp";

const t = strings.start.demo;

/**
 * Opens the demo job: what the workbook lacks is made with the job in it; of the tables that are there Runs takes its
 * rows below, when asked, and the others only when they are empty.
 */
export function DemoJob({ setUp }: { setUp: SetUp }) {
  const workbook = useWorkbook();
  const { names, tables, reload } = useLedger();
  const { runs } = useRun();
  const task = useTask();
  const [step, setStep] = useState<"ready" | "asking" | "done">("ready");

  const open = () =>
    task.run(async () => {
      const job = await readDemoJob().catch((error: Error) => {
        throw new Error(t.notFound(error.message));
      });
      const begun = setUp.plan.filter((item) => item.begun).map(({ item }) => item);
      const inUse = (await setUp.carryOut(true, job)) ?? names;
      for (const [name, known] of Object.entries(tables) as [TableName, TableCells | undefined][]) {
        const rows = job[name];
        if (
          !known ||
          !rows ||
          begun.includes(name) ||
          (name !== "Runs" && writtenRows(known.cells, columnsOf(name)).length > 0)
        )
          continue;
        await appendRows(workbook, name, known, rows, namedTables(inUse, tables));
      }
      await reload();
      setStep("done");
    });
  const start = () => {
    if (runs.length > 0) setStep("asking");
    else void open();
  };

  return (
    <Section title={t.title}>
      <p>{t.about}</p>
      <SheetButton disabledFocusable={task.busy} onClick={start}>
        {task.busy ? strings.common.working : t.button}
      </SheetButton>
      {step === "asking" && (
        <Notice
          intent="warning"
          actions={
            <>
              <SheetButton size="small" appearance="primary" onClick={() => void open()}>
                {t.below}
              </SheetButton>
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
