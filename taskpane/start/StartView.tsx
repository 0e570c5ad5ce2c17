import { Button, Spinner } from "@fluentui/react-components";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { useTask } from "../components/useTask";
import { useLedger } from "../hooks/useLedger";
import { strings } from "../strings";
import { Cautions } from "./Cautions";
import { DemoJob } from "./DemoJob";
import { MapTable } from "./MapTable";
import { PlanList } from "./PlanList";
import { UnitChoice } from "./UnitChoice";
import { useSetUp } from "./useSetUp";
import { sheetNameProblem } from "../workbook/plan";

const t = strings.start;

/** Sets the workbook up: what is missing is made, what is there is left as it is. */
export function StartView({ toRun }: { toRun(): void }) {
  const { state, problem } = useLedger();
  const setUp = useSetUp();
  const task = useTask();
  const { contents, plan } = setUp;
  if (state === "failed")
    return <Notice intent="error" title={strings.common.notRead}>{`${problem} ${t.openOne}`}</Notice>;
  if (!contents) return <Spinner label={strings.common.reading} />;
  const missing = plan.filter(({ there }) => !there);
  const ready = missing.length === 0;
  const namesFit = missing.every((item) => sheetNameProblem(item, plan, contents) === undefined);
  return (
    <>
      <p>{t.intro}</p>
      {ready ? (
        <Notice
          intent="success"
          actions={
            <Button size="small" appearance="primary" onClick={toRun}>
              {t.toRun}
            </Button>
          }
        >
          {t.ready}
        </Notice>
      ) : (
        <Section title={t.setUp.title}>
          <p>{missing.some(({ taken }) => taken) ? t.setUp.someTaken : t.setUp.what}</p>
          <PlanList setUp={setUp} />
          <Button
            appearance="primary"
            disabledFocusable={task.busy || !namesFit}
            onClick={() => void task.run(async () => void (await setUp.carryOut()))}
          >
            {task.busy ? strings.common.working : t.setUp.button}
          </Button>
        </Section>
      )}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      <DemoJob setUp={setUp} />
      <MapTable setUp={setUp} />
      <Section title={t.units.title}>
        <UnitChoice />
      </Section>
      <Cautions />
    </>
  );
}
