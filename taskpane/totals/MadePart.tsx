import { useMemo } from "react";
import { drawDays, type Day } from "../../src/drawing/job/drawDays";
import { daily } from "../../src/made/counts/daily";
import { progress } from "../../src/made/counts/progress";
import { attempt } from "../components/attempt";
import { Drawing } from "../components/Drawing";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { useWidth } from "../hooks/useWidth";
import { useLedger } from "../hooks/useLedger";
import { useMade } from "../made/useMade";
import { strings } from "../strings";
import { recordsOf } from "../workbook/recordsOf";
import { orderTables } from "./orderTables";

const t = strings.totals.made;

/** What was made and scrapped day by day, what is left, and records that name no piece of the job. */
export function MadePart() {
  const { tables } = useLedger();
  const { made } = useMade();
  const [watch, width] = useWidth(296);
  const runs = tables.Runs?.cells;
  const found = useMemo(
    () =>
      attempt(() => {
        const { shoes, rules, labor } = orderTables(tables);
        const rows = recordsOf(progress(runs, made?.cells, { by: "none", shoes, rules, labor }));
        const days = recordsOf(daily(runs, made?.cells, { shoes, rules })).map((row): Day => ({
          label: [row.Date, row.Crew].filter((part) => part !== "").join(" "),
          ...{ made: Number(row["Pieces made"]), scrapped: Number(row["Pieces scrapped"]) },
          left: Number(row["Pieces left"]),
        }));
        return { rows, days };
      }),
    [runs, made, tables],
  );
  if (!made) return <Notice>{t.none}</Notice>;
  if (!found.value) return <Notice intent="error">{found.problem}</Notice>;
  const [total, ...told] = found.value.rows;
  return (
    <Section title={t.title}>
      {total && (
        <p className="rl-sum">
          {t.sum(Number(total["Pieces made"]), Number(total["Pieces needed"]), Number(total["Pieces scrapped"]))}{" "}
          {t.bends(Number(total["Bends made"]), Number(total["Bends needed"]))}
        </p>
      )}
      <div ref={watch}>
        <Drawing scene={drawDays(found.value.days, { title: t.chart, width })} />
      </div>
      {told.length > 0 && (
        <ul className="rl-behind">
          {told.map((row, index) => (
            <li key={index}>{`${String(Object.values(row)[0])}: ${String(row.Note)}`}</li>
          ))}
        </ul>
      )}
    </Section>
  );
}
