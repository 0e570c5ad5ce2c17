import { useRef, useState } from "react";
import { Notice } from "../components/Notice";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import { joinRoute, splitRoute } from "../run/steps";
import { useRun } from "../run/useRun";
import { strings } from "../strings";
import type { BendChoice, Values } from "./kinds";
import { stepsToAdd } from "./readFields";

const t = strings.bend.run;

/** Adds the bend to the selected run's route, or makes a run of it. */
export function PutInRun({
  kind,
  values,
  texts,
  raceway,
  size,
}: {
  kind: BendChoice;
  values: Values;
  /** The same as they were typed. */
  texts: Readonly<Record<string, string>>;
  raceway: string;
  size: string;
}) {
  const run = useRun();
  const task = useTask();
  const [done, setDone] = useState<{ words: string; before?: string }>();
  const addButton = useRef<HTMLButtonElement>(null);
  if (!run.table) return null;
  const route = run.text("Route");
  const name = run.text("Run");
  const add = async () => {
    const own = splitRoute(route);
    await run.setCell("Route", joinRoute([...own, ...stepsToAdd(kind, values, texts, own.length > 0)]));
    setDone({ words: t.added(name), before: route });
  };
  const make = async () => {
    await run.addRun({ Raceway: raceway, Size: size, Route: joinRoute(stepsToAdd(kind, values, texts, false)) });
    setDone({ words: t.made });
  };
  return (
    <div className="rl-stack">
      <div className="rl-row">
        {run.row > 0 && (
          <SheetButton ref={addButton} disabledFocusable={task.busy} onClick={() => void task.run(add)}>
            {t.add(name)}
          </SheetButton>
        )}
        <SheetButton disabledFocusable={task.busy} onClick={() => void task.run(make)}>
          {t.make}
        </SheetButton>
      </div>
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {done && (
        <Notice
          intent="success"
          actions={
            done.before === undefined ? undefined : (
              <SheetButton
                size="small"
                onClick={() =>
                  void task.run(async () => {
                    await run.setCell("Route", done.before ?? "");
                    setDone(undefined);
                    addButton.current?.focus();
                  })
                }
              >
                {strings.bend.put.takeBack}
              </SheetButton>
            )
          }
        >
          {done.words}
        </Notice>
      )}
    </div>
  );
}
