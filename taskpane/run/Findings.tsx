import { Button } from "@fluentui/react-components";
import { Notice } from "../components/Notice";
import { strings } from "../strings";
import type { WorkedRun } from "./workOut";

const t = strings.run.checks;

/** The checks of a run in words; each that concerns a step leads to it. */
export function Findings({ worked, onStep }: { worked: WorkedRun; onStep(step: number): void }) {
  const toStep = (step: number | undefined) =>
    step === undefined ? undefined : (
      <Button size="small" onClick={() => onStep(step)}>
        {t.goToStep(step)}
      </Button>
    );
  if (worked.problem) {
    return (
      <Notice intent="error" title={t.notBuilt} actions={toStep(worked.step)}>
        {worked.problem}
      </Notice>
    );
  }
  if (worked.findings.length === 0) return <Notice intent="success">{t.none}</Notice>;
  return (
    <>
      {worked.findings.map((finding, index) => (
        <Notice
          key={index}
          intent={finding.weight === "stop" ? "error" : "warning"}
          title={finding.rule}
          actions={toStep(finding.step)}
        >
          {finding.finding} {finding.fix}
        </Notice>
      ))}
    </>
  );
}
