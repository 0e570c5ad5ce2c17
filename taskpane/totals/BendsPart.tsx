import { useMemo, useState } from "react";
import { drawCounts } from "../../src/drawing/drawCounts";
import { bendCounts } from "../../src/takeoff/bendCounts";
import { attempt } from "../components/attempt";
import { Choice } from "../components/Choice";
import { Drawing } from "../components/Drawing";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { useWidth } from "../components/useWidth";
import { useLedger } from "../hooks/useLedger";
import { strings } from "../strings";
import { recordsOf } from "../workbook/recordsOf";
import { RowLinks } from "./RowLinks";

const t = strings.totals.bends;
const BY = ["Kind", "Size", "Raceway", "Area", "Job", "Crew", "Date"] as const;
type By = (typeof BY)[number];

/** Bends the shop makes, as bars, and the runs behind each bar. */
export function BendsPart() {
  const { tables } = useLedger();
  const [by, setBy] = useState<By>("Kind");
  const [watch, width] = useWidth(296);
  const counts = useMemo(() => attempt(() => countBy(tables.Runs?.cells, tables.Shoes?.cells, by)), [tables, by]);
  return (
    <Section title={t.title}>
      <Choice<By> label={t.by} value={by} options={BY} onChange={setBy} />
      {counts.problem && <Notice intent="error">{counts.problem}</Notice>}
      <div ref={watch}>
        {counts.value && counts.value.length > 0 && (
          <Drawing scene={drawCounts(counts.value, { title: t.chart(by), width })} />
        )}
      </div>
      {counts.value && counts.value.length > 0 && (
        <details className="rl-words">
          <summary>{t.behind}</summary>
          <ul className="rl-behind">
            {counts.value.map(({ label, runs }) => (
              <li key={label}>
                {label}: <RowLinks names={runs} />
              </li>
            ))}
          </ul>
        </details>
      )}
      {counts.value?.length === 0 && <p className="rl-hint">{t.none}</p>}
    </Section>
  );
}

/** Each label with its number of bends and the runs that have them. */
function countBy(runs: unknown, shoes: unknown, by: By): { label: string; count: number; runs: string[] }[] {
  const lines = new Map<string, { label: string; count: number; runs: string[] }>();
  for (const row of recordsOf(bendCounts(runs, { by: `${by}, Run`, shoes }))) {
    if (typeof row.Bends !== "number" || row[by] === "Total") continue;
    const label = String(row[by] === "" ? t.unnamed : row[by]);
    const line = lines.get(label) ?? { label, count: 0, runs: [] };
    lines.set(label, line);
    line.count += row.Bends;
    line.runs.push(String(row.Run));
  }
  return [...lines.values()];
}
