import { useMemo } from "react";
import { drawCounts } from "../../../src/drawing/job/drawCounts";
import { overview } from "../../../src/overview/overview";
import type { OverviewPart as Part } from "../../../src/overview/part";
import { showMoney } from "../../../src/units/money";
import { show } from "../../../src/units/show";
import { attempt } from "../../components/attempt";
import { Drawing } from "../../components/Drawing";
import { Notice } from "../../components/Notice";
import { Section } from "../../components/Section";
import { useLedger } from "../../hooks/useLedger";
import { useWidth } from "../../hooks/useWidth";
import { useMade } from "../../made/useMade";
import { orderTables } from "../orderTables";
import { overviewStrings as t } from "./overviewStrings";
import { PaperPart } from "./PaperPart";

/** Feet, money, hours, waste and progress of the job, a drawing to each, and the bid on paper. */
export function OverviewPart() {
  const { tables } = useLedger();
  const { made } = useMade();
  const [watch, width] = useWidth(296);
  const { Runs, Bid, Costs, Factors } = tables;
  const found = useMemo(() => {
    const lists = orderTables(tables);
    const more = { made: made?.cells, bid: Bid?.cells, costs: Costs?.cells, factors: Factors?.cells };
    return attempt(() => overview(Runs?.cells, { ...lists, ...more }));
  }, [tables, Runs, Bid, Costs, Factors, made]);
  return (
    <>
      <PaperPart />
      <Section title={t.title}>
        {found.problem && <Notice intent="error">{found.problem}</Notice>}
        <div ref={watch}>
          {found.value?.parts.map((part) => (
            <section key={part.name} className="rl-section">
              <h4>{part.name}</h4>
              {part.bars.length > 0 && (
                <Drawing scene={drawCounts(part.bars.map(barOf(part)), { title: part.name, width })} />
              )}
              {part.note !== "" && <p className="rl-hint">{part.note}</p>}
            </section>
          ))}
        </div>
        {found.value && found.value.problems.length > 0 && (
          <details className="rl-words">
            <summary>{t.notIn}</summary>
            <ul className="rl-behind">
              {found.value.problems.map((problem) => (
                <li key={problem}>{problem}</li>
              ))}
            </ul>
          </details>
        )}
      </Section>
    </>
  );
}

const barOf =
  ({ unit }: Part) =>
  ({ label, amount }: Part["bars"][number]) => ({
    label,
    count: Math.max(0, amount),
    text: unit === "money" ? showMoney(amount) : `${show(amount, amount < 1 ? 2 : 1)} ${t.units[unit] ?? ""}`.trim(),
  });
