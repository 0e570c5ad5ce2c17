import { useEffect, useState } from "react";
import { RACEWAYS, readRaceway } from "../../src/raceway/raceway";
import { readTradeSize, TRADE_SIZES } from "../../src/raceway/tradeSize";
import { dayText } from "../../src/units/day";
import { toNumber } from "../../src/units/number";
import { attempt } from "../components/attempt";
import { Choice } from "../components/Choice";
import { Entry } from "../components/Entry";
import { Notice } from "../components/Notice";
import { useTask } from "../hooks/useTask";
import { strings } from "../strings";
import type { SelectedRun } from "./useRun";

const t = strings.run.fields;

/** Cells that say where a run goes and who makes it, as their headers name them. */
const MORE = ["Area", "From", "To", "Conductors", "Date", "Crew"] as const;

/** Name, raceway, size and quantity of the selected run, and what else is said of it, written to its row as they change. */
export function RunFields({ run }: { run: SelectedRun }) {
  const task = useTask();
  const set = (column: string, value: string | number) => void task.run(() => run.setCell(column, value));
  const more = MORE.filter((column) => run.has(column));
  const shown = (column: string) =>
    column === "Date" && Number(run.text(column)) > 0 ? dayText(Number(run.text(column))) : run.text(column);
  const raceway = attempt(() => readRaceway(run.text("Raceway")));
  const size = attempt(() => readTradeSize(run.text("Size")));
  return (
    <>
      <div className="rl-grid rl-grid-2">
        <CellEntry label={t.name} text={run.text("Run")} onDone={(value) => set("Run", value)} />
        {run.has("Quantity") && (
          <CellEntry
            label={t.quantity}
            text={run.text("Quantity")}
            check={(value) => toNumber(Number(value || 1), t.quantity, { min: 1, integer: true })}
            onDone={(value) => set("Quantity", Number(value || 1))}
          />
        )}
        <Choice
          label={t.raceway}
          value={raceway.value ?? run.text("Raceway")}
          options={withOther(RACEWAYS, raceway.value ?? run.text("Raceway"))}
          onChange={(value) => set("Raceway", value)}
        />
        <Choice
          label={t.size}
          value={size.value ?? run.text("Size")}
          options={withOther(TRADE_SIZES, size.value ?? run.text("Size"))}
          onChange={(value) => set("Size", value)}
        />
      </div>
      {more.length > 0 && (
        <details className="rl-words">
          <summary>{t.more}</summary>
          <div className="rl-grid rl-grid-2">
            {more.map((column) => (
              <CellEntry key={column} label={column} text={shown(column)} onDone={(value) => set(column, value)} />
            ))}
          </div>
        </details>
      )}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
    </>
  );
}

/** What stands in the cell stays choosable even when it is none of the known values. */
const withOther = (known: readonly string[], value: string): string[] =>
  known.includes(value) ? [...known] : [value, ...known];

interface CellEntryProps {
  label: string;
  text: string;
  check?(value: string): unknown;
  onDone(value: string): void;
}

function CellEntry({ label, text, check, onDone }: CellEntryProps) {
  const [value, setValue] = useState(text);
  useEffect(() => setValue(text), [text]);
  const problem = check && attempt(() => check(value)).problem;
  const commit = () => {
    if (!problem && value !== text) onDone(value);
  };
  return <Entry label={label} value={value} onChange={setValue} onCommit={commit} problem={problem} />;
}
