import { Button, Spinner } from "@fluentui/react-components";
import { AddRegular, CopyRegular } from "@fluentui/react-icons";
import { useEffect, useMemo, useRef, useState } from "react";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import { Choice } from "../components/Choice";
import { NoRuns } from "../components/NoRuns";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { tabId, Tabs } from "../components/Tabs";
import { useTask } from "../hooks/useTask";
import { useLedger } from "../hooks/useLedger";
import { strings } from "../strings";
import { Findings } from "./Findings";
import { Marks } from "./Marks";
import { MoreColumns } from "./MoreColumns";
import { RunDrawing } from "./RunDrawing";
import { RunFields } from "./RunFields";
import { StepList } from "./StepList";
import { joinRoute, splitRoute } from "./steps";
import { useRun, type SelectedRun } from "./useRun";
import { workOut, type WorkedRun } from "./workOut";

const t = strings.run;
const PANEL = "rl-run-part";

/** A run as a list of steps beside its drawing, its checks and its marks. Follows the selected row of Runs. */
export function RunView({ toStart }: { toStart(): void }) {
  const { state } = useLedger();
  const run = useRun();
  const task = useTask();
  if (state === "loading") return <Spinner label={strings.common.reading} />;
  if (!run.table) return <NoRuns toStart={toStart} />;
  return (
    <>
      <RunPicker
        run={run}
        onAdd={() => void task.run(() => run.addRun())}
        onCopy={() => void task.run(() => run.addRun(cellsOf(run)))}
        busy={task.busy}
      />
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {run.row === 0 ? <p>{t.empty}</p> : <RunBuilder key={run.row} run={run} />}
    </>
  );
}

/** What the cells of the selected run say, but for its name. */
const cellsOf = (run: SelectedRun): Record<string, string> =>
  Object.fromEntries(
    RUN_COLUMNS.flatMap(({ name }) =>
      name !== "Run" && run.has(name) && run.text(name) !== "" ? [[name, run.text(name)]] : [],
    ),
  );

function RunPicker({ run, onAdd, onCopy, busy }: { run: SelectedRun; onAdd(): void; onCopy(): void; busy: boolean }) {
  const { selectRun } = useLedger();
  return (
    <div className="rl-row rl-row-end">
      {run.runs.length > 0 && (
        <Choice
          label={t.which}
          value={String(run.row)}
          options={run.runs.map(({ row, name }) => ({ value: String(row), text: name }))}
          onChange={(row) => void selectRun(Number(row)).catch(() => undefined)}
        />
      )}
      <Button size="small" icon={<AddRegular />} onClick={onAdd} disabledFocusable={busy}>
        {t.add}
      </Button>
      {run.row > 0 && (
        <Button size="small" icon={<CopyRegular />} onClick={onCopy} disabledFocusable={busy}>
          {t.duplicate}
        </Button>
      )}
    </div>
  );
}

function RunBuilder({ run }: { run: SelectedRun }) {
  const { tables } = useLedger();
  const task = useTask();
  const route = run.text("Route");
  const [steps, setSteps] = useState(() => splitRoute(route));
  const [part, setPart] = useState<"marks" | "checks">("checks");
  const [step, setStep] = useState(0);
  const [removed, setRemoved] = useState<{ before: readonly string[]; place: number }>();
  const list = useRef<HTMLDivElement>(null);
  const inSheet = useRef(route);
  const writing = useRef(0);

  // The sheet was edited: its words are the ones that count, unless they only trail behind what is being written.
  useEffect(() => {
    if (writing.current > 0 || inSheet.current === route) return;
    inSheet.current = route;
    setSteps((own) => (joinRoute(own) === joinRoute(splitRoute(route)) ? own : splitRoute(route)));
  }, [route]);

  const commit = (next: string[]) => {
    setSteps(next);
    const text = joinRoute(next);
    const before = inSheet.current;
    if (text === joinRoute(splitRoute(before))) return;
    inSheet.current = text;
    writing.current += 1;
    setRemoved(undefined);
    const write = async () => {
      try {
        await run.setCell("Route", text);
      } catch (error) {
        // The sheet still has what it had: Enter writes the same words again.
        if (inSheet.current === text) inSheet.current = before;
        throw error;
      } finally {
        writing.current -= 1;
      }
    };
    void task.run(write);
  };

  const draft = joinRoute(steps);
  const cells = run.table?.cells;
  const worked = useMemo(
    () => workOut(cells ?? [], run.row, draft, tables.Shoes?.cells, tables.Rules?.cells),
    [cells, run.row, draft, tables.Shoes, tables.Rules],
  );
  const notes = useMemo(() => notesOf(worked), [worked]);
  // The list has its step again only after the next drawing of the pane.
  const toStep = (step: number) =>
    setTimeout(() => list.current?.querySelectorAll<HTMLInputElement>(".rl-steps input")[step - 1]?.focus());

  return (
    <>
      <RunFields run={run} />
      <MoreColumns />
      <div ref={list}>
        <Section title={t.steps.title}>
          <StepList
            steps={steps}
            notes={notes}
            onDraft={setSteps}
            onStep={setStep}
            onCommit={commit}
            onRestore={() => setSteps(splitRoute(inSheet.current))}
            onRemoved={(before, place) => setRemoved({ before, place })}
          />
          {removed && (
            <Notice
              intent="success"
              actions={
                <Button
                  size="small"
                  onClick={() => {
                    commit([...removed.before]);
                    setRemoved(undefined);
                    toStep(removed.place);
                  }}
                >
                  {strings.bend.put.takeBack}
                </Button>
              }
            >
              {t.steps.removed(removed.place)}
            </Notice>
          )}
          {task.problem && <Notice intent="error">{task.problem}</Notice>}
        </Section>
      </div>
      <div className="rl-beside">
        {worked.built && <RunDrawing built={worked.built} beside={worked.beside} step={step} onPick={toStep} />}
        {worked.drawn && (
          <div>
            <RunDrawing built={worked.drawn.built} step={step} onPick={toStep} />
            <p className="rl-hint">{t.view.upTo(worked.drawn.upTo, steps[worked.drawn.upTo])}</p>
          </div>
        )}
        {draft !== "" && (
          <div className="rl-stack-wide">
            <Tabs<"checks" | "marks">
              label={t.parts}
              tabs={[
                { value: "checks", text: t.checks.tab(worked.problem ? 1 : worked.findings.length) },
                { value: "marks", text: t.marks.tab },
              ]}
              value={part}
              onChange={setPart}
              panel={PANEL}
            />
            <div id={PANEL} role="tabpanel" aria-labelledby={tabId(PANEL, part)} className="rl-stack-wide">
              {part === "checks" ? <Findings worked={worked} onStep={toStep} /> : <MarksOrWhy worked={worked} />}
            </div>
          </div>
        )}
      </div>
    </>
  );
}

/** The marks, or why there are none yet. */
function MarksOrWhy({ worked }: { worked: WorkedRun }) {
  return worked.built ? <Marks rows={worked.schedule} /> : <p className="rl-hint">{t.marks.none}</p>;
}

/** The words that stand under a step's field, by step number. */
const notesOf = ({ stepProblem, step }: WorkedRun): Map<number, string> =>
  new Map(step === undefined || stepProblem === undefined ? [] : [[step, stepProblem]]);
