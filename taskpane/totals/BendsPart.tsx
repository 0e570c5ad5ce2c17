import { useMemo, useState } from "react";
import { drawCounts } from "../../src/drawing/job/drawCounts";
import { bendCounts } from "../../src/takeoff/reports/bendCounts";
import { show } from "../../src/units/show";
import { attempt } from "../components/attempt";
import { Choice } from "../components/Choice";
import { Drawing } from "../components/Drawing";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { useWidth } from "../hooks/useWidth";
import { useLedger, type Ledger } from "../hooks/useLedger";
import { strings } from "../strings";
import { recordsOf } from "../workbook/recordsOf";
import { orderTables } from "./orderTables";
import { RowLinks } from "./RowLinks";

const t = strings.totals.bends;
const BY = ["Kind", "Size", "Raceway", "Area", "Job", "Crew", "Date"] as const;
type By = (typeof BY)[number];

/** Bends the shop makes, as bars, and the runs behind each bar. */
export function BendsPart() {
  const { tables } = useLedger();
  const [by, setBy] = useState<By>("Kind");
  const [watch, width] = useWidth(296);
  const counts = useMemo(() => attempt(() => countBy(tables, by)), [tables, by]);
  return (
    <Section title={t.title}>
      <Choice<By> label={t.by} value={by} options={BY} onChange={setBy} />
      {counts.problem && <Notice intent="error">{counts.problem}</Notice>}
      {counts.value && counts.value.length > 0 && <p>{totalWords(counts.value)}</p>}
      <div ref={watch}>
        {counts.value && counts.value.length > 0 && (
          <Drawing scene={drawCounts(counts.value, { title: t.chart(by), width })} />
        )}
      </div>
      {counts.value && counts.value.length > 0 && (
        <details className="rl-words">
          <summary>{t.behind}</summary>
          <ul className="rl-behind">
            {counts.value.map(({ label, hours, runs }) => (
              <li key={label}>
                {hours === undefined ? label : `${label}, ${strings.totals.takeoff.hours(show(hours, 1))}`}:{" "}
                <RowLinks names={runs} />
              </li>
            ))}
          </ul>
        </details>
      )}
      {counts.value?.length === 0 && <p className="rl-hint">{t.none}</p>}
    </Section>
  );
}

/** Bends under one label, and the runs that have them. */
interface BendBar {
  label: string;
  count: number;
  /** Undefined without minutes for any of them. */
  hours?: number;
  runs: string[];
}

function countBy(tables: Ledger["tables"], by: By): BendBar[] {
  const { shoes, labor, rules } = orderTables(tables);
  const lines = new Map<string, BendBar>();
  for (const row of recordsOf(bendCounts(tables.Runs?.cells, { by: `${by}, Run`, shoes, labor, rules }))) {
    if (typeof row.Bends !== "number" || row[by] === "Total") continue;
    const label = String(row[by] === "" ? t.unnamed : row[by]);
    const line = lines.get(label) ?? { label, count: 0, runs: [] };
    lines.set(label, line);
    line.count += row.Bends;
    if (typeof row.Hours === "number") line.hours = (line.hours ?? 0) + row.Hours;
    line.runs.push(String(row.Run));
  }
  return [...lines.values()];
}

function totalWords(bars: readonly BendBar[]): string {
  const hours = bars.reduce((sum, bar) => sum + (bar.hours ?? 0), 0);
  return t.sum(
    bars.reduce((sum, { count }) => sum + count, 0),
    hours > 0 ? show(hours, 1) : "",
  );
}
