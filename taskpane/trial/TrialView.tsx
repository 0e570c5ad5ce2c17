import { Button, ProgressBar, Textarea } from "@fluentui/react-components";
import { useMemo, useRef, useState } from "react";
import { Notice } from "../components/Notice";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import raceway from "../../package.json";
import { strings } from "../strings";
import { AskPerson } from "./AskPerson";
import { PARTS } from "./parts";
import { absences, differences, reportText, type Seen } from "./report";
import { runTrial, type PartReport } from "./runTrial";
import { trialStrings as t } from "./trialStrings";
import type { Part } from "./types";

/** Tries this Excel out, and shows what was found as a text to copy. */
export default function TrialView({ parts = PARTS }: { parts?: readonly Part[] }) {
  const task = useTask();
  const stopped = useRef(false);
  const [step, setStep] = useState({ words: "", share: 0 });
  const [reports, setReports] = useState<readonly PartReport[]>();
  const [seen, setSeen] = useState<Seen>({ print: undefined, save: undefined });
  const [copied, setCopied] = useState("");
  const field = useRef<HTMLTextAreaElement>(null);
  const text = useMemo(() => (reports ? reportText(reports, seen, raceway.version) : ""), [reports, seen]);

  const begin = () =>
    task.run(async () => {
      stopped.current = false;
      setReports(undefined);
      setCopied("");
      const onStep = (words: string, share: number) => setStep({ words, share });
      setReports(await runTrial(parts, { onStep, isCanceled: () => stopped.current }));
    });
  const copy = async () => {
    field.current?.select();
    const done = await navigator.clipboard?.writeText(text).then(
      () => true,
      () => document.execCommand("copy"),
    );
    setCopied(done ? t.copied : t.copyByHand);
  };
  return (
    <>
      <p>{t.about}</p>
      <p className="rl-hint">{t.noData}</p>
      <SheetButton appearance="primary" disabledFocusable={task.busy} onClick={() => void begin()}>
        {task.busy ? strings.common.working : reports ? t.again : t.button}
      </SheetButton>
      {task.busy && (
        <div className="rl-stack" role="status">
          <span>{step.words}</span>
          <ProgressBar value={step.share} aria-label={strings.start.trial.title} />
          <Button size="small" onClick={() => void (stopped.current = true)}>
            {strings.common.cancel}
          </Button>
        </div>
      )}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {reports && (
        <>
          {stopped.current ? (
            <Notice intent="warning">{t.canceled}</Notice>
          ) : (
            <Notice intent={differences(reports) === 0 ? "success" : "warning"}>
              {t.through(differences(reports), absences(reports))}
            </Notice>
          )}
          <AskPerson seen={seen} onSeen={setSeen} />
          <Textarea
            aria-label={t.report}
            textarea={{ ref: field }}
            readOnly
            value={text}
            rows={12}
            resize="vertical"
            className="rl-report"
          />
          <Button onClick={() => void copy()}>{t.copy}</Button>
          {copied && <Notice intent="info">{copied}</Notice>}
          <p className="rl-hint">{t.where}</p>
        </>
      )}
    </>
  );
}
