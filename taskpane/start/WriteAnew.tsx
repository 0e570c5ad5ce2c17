import { useState } from "react";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import type { EnteredAgain } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
import { resultFormula } from "../workbook/design/formulas";
import { isLost } from "../workbook/design/spelling";
import { RESULTS } from "../workbook/items";
import type { SetUp } from "./useSetUp";

const t = strings.start.again;

/** Says where Excel has lost touch with our functions, and enters the formulas again. */
export function WriteAnew({ setUp }: { setUp: SetUp }) {
  const workbook = useWorkbook();
  const { tables, reload } = useLedger();
  const task = useTask();
  const [entered, setEntered] = useState<EnteredAgain>();
  const { contents, wishes } = setUp;
  if (!contents || !wishes) return null;
  const runs = tables.Runs;
  const own: string[] = RESULTS.map((result) => wishes.sheets[result]);
  const gone = contents.gone.filter((sheet) => own.includes(sheet));
  const lost = [...new Set([...contents.lost, ...gone, ...(runs && lostIn(runs.cells) ? [runs.sheet] : [])])];
  if (lost.length === 0 && !entered) return null;

  const enter = () =>
    task.run(async () => {
      const results = RESULTS.map((result): [string, string] => [
        wishes.sheets[result],
        resultFormula(result, wishes.tables),
      ]);
      setEntered(await workbook.enterAgain(new Map(results)));
      await reload();
      await setUp.look();
    });
  return (
    <Section title={t.title}>
      {lost.length > 0 && (
        <>
          <Notice intent="warning">{t.about(lost.join(", "))}</Notice>
          <SheetButton appearance="primary" disabledFocusable={task.busy} onClick={() => void enter()}>
            {task.busy ? strings.common.working : t.button}
          </SheetButton>
        </>
      )}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {entered && (
        <Notice intent={entered.refused.length === 0 ? "success" : "warning"}>
          {[t.done(entered.cells), ...entered.refused.map(({ sheet, why }) => t.refused(sheet, why))].join(" ")}{" "}
          {t.hint}
        </Notice>
      )}
    </Section>
  );
}

/** Whether a cell of the table shows that Excel does not know a function. */
const lostIn = (cells: readonly (readonly unknown[])[]): boolean => cells.some((row) => row.some(isLost));
