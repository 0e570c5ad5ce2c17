import { Button, ProgressBar } from "@fluentui/react-components";
import { useEffect, useRef, useState } from "react";
import { drawCuts } from "../../../src/drawing/job/drawCuts";
import { Drawing } from "../../components/Drawing";
import { Notice } from "../../components/Notice";
import { Section } from "../../components/Section";
import { useWidth } from "../../hooks/useWidth";
import { useKept } from "../../hooks/useKept";
import { useLedger, type Ledger } from "../../hooks/useLedger";
import { useUnits } from "../../hooks/useUnits";
import { strings } from "../../strings";
import type { CutResult, CutSoFar, LotPlan } from "./cutWork";
import { cutJob } from "./cutJob";
import { CouplingsAdvised } from "./CouplingsAdvised";
import { DropsToStock } from "./DropsToStock";
import { planInWorker, type Planning } from "./planInWorker";
import { RowLinks } from "../RowLinks";

const t = strings.totals.cuts;

/** The cutting plan, made in the background: sticks as bars, what is left of each, and the proof. */
export function CutsPart() {
  const { tables } = useLedger();
  const planning = useRef<Planning | undefined>(undefined);
  const [soFar, setSoFar] = useState<CutSoFar>();
  const [made, setMade] = useKept<{ result: CutResult; from: string } | undefined>("totals.cuts", undefined);
  const [problem, setProblem] = useState("");
  useEffect(() => () => planning.current?.cancel(), []);

  const cancel = () => {
    planning.current?.cancel();
    setSoFar(undefined);
  };
  const plan = async () => {
    const from = usedTables(tables);
    const runs = cutJob(tables);
    if (!runs) return;
    const job = { ...runs, prices: tables.Prices?.cells };
    setProblem("");
    setSoFar({ done: 0, of: 1, title: "", share: 0 });
    try {
      planning.current = planInWorker(job, setSoFar);
      setMade({ result: await planning.current.result, from });
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
    setSoFar(undefined);
  };

  const isStale = made !== undefined && usedTables(tables) !== made.from;
  return (
    <Section title={t.title}>
      <p>{t.about}</p>
      {soFar ? (
        <div className="rl-stack" role="status">
          <span>{soFar.title ? t.progress(soFar.title, soFar.done + 1, soFar.of) : strings.common.working}</span>
          <ProgressBar value={soFar.share} aria-label={t.title} />
          <Button size="small" onClick={cancel}>
            {strings.common.cancel}
          </Button>
        </div>
      ) : (
        <Button onClick={() => void plan()}>{made ? t.again : t.button}</Button>
      )}
      {problem && <Notice intent="error">{problem}</Notice>}
      {isStale && <Notice intent="warning">{t.stale}</Notice>}
      {made?.result.total && (
        <p>
          <strong>{t.total}</strong> {made.result.total.proof}
          <span className="rl-hint"> {made.result.total.note}</span>
        </p>
      )}
      {made?.result.lots.map((lot) => (
        <Lot key={lot.title} lot={lot} />
      ))}
      {made && <CouplingsAdvised lots={made.result.lots} isStale={isStale} />}
      {made?.result.problems.map((words) => (
        <Notice key={words} intent="warning" title={t.notCut}>
          {words}
        </Notice>
      ))}
      {made && <DropsToStock after={made.result.stock} isStale={isStale} />}
    </Section>
  );
}

/** What a plan rests on. */
const usedTables = ({ Runs, Stock, Shoes, Rules, Prices }: Ledger["tables"]): string =>
  JSON.stringify([Runs, Stock, Shoes, Rules, Prices].map((table) => table?.cells));

function Lot({ lot }: { lot: LotPlan }) {
  const units = useUnits();
  const [watch, width] = useWidth(296);
  if (lot.problem) {
    return (
      <Notice intent="error" title={lot.title}>
        {lot.problem}
      </Notice>
    );
  }
  return (
    <details className="rl-card">
      <summary>
        <strong>{lot.title}</strong> {lot.proof}
      </summary>
      <p className="rl-hint">{lot.note}</p>
      <div ref={watch}>
        <Drawing scene={drawCuts(lot.sticks, { title: lot.title, width, show: units.show, kerf: lot.kerf })} />
      </div>
      <p className="rl-hint">{t.behind}</p>
      <RowLinks names={[...new Set(lot.sticks.flatMap(({ runs }) => runs))]} />
    </details>
  );
}
