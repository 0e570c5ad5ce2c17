import { useMemo, useRef, useState } from "react";
import { drawWhole } from "../../../src/drawing/job/drawWhole";
import { standingRuns, type ToldBy } from "../../../src/drawing/job/standingRuns";
import { toSvg } from "../../../src/drawing/paper/toSvg";
import type { Scene } from "../../../src/drawing/paper/scene";
import type { RunView } from "../../../src/drawing/run/projection";
import { readMade } from "../../../src/made/records/madeTable";
import { clashesOf } from "../../../src/shop/checks/clashes";
import { buildJob } from "../../../src/shop/job/job";
import { attempt } from "../../components/attempt";
import { Choice } from "../../components/Choice";
import { Notice } from "../../components/Notice";
import { saveText } from "../../components/saveText";
import { Section } from "../../components/Section";
import { SheetButton } from "../../components/SheetButton";
import { Turned } from "../../components/Turned";
import { useKept } from "../../hooks/useKept";
import { useLedger } from "../../hooks/useLedger";
import { useUnits } from "../../hooks/useUnits";
import { useWorkbook } from "../../hooks/useWorkbook";
import { useMade } from "../../made/useMade";
import { ClashList } from "./ClashList";
import { wholeStrings as t } from "./wholeStrings";

const FILE = "job.svg";

/** All runs of the job where they stand, and where two of them take the same place. */
export function WholePart() {
  const { tables, selectRun } = useLedger();
  const { saves } = useWorkbook().waysOut();
  const { made } = useMade();
  const { show } = useUnits();
  const [area, setArea] = useKept("whole.area", "");
  const [by, setBy] = useKept<ToldBy>("whole.by", "Size");
  const [row, setRow] = useState(0);
  const [saved, setSaved] = useState("");
  const scene = useRef<Scene>(undefined);
  const { Runs, Shoes, Rules } = tables;
  const found = useMemo(
    () =>
      attempt(() => {
        const job = buildJob({ runs: Runs?.cells, shoes: Shoes?.cells, rules: Rules?.cells });
        const standing = standingRuns(job, by, area, made && readMade(made.cells));
        const { clashes, isAll } = clashesOf(job);
        const isIn = new Set(standing.runs.map(({ name }) => name));
        const seen = clashes.filter(({ one, other }) => isIn.has(one.run.name) || isIn.has(other.run.name));
        return { ...standing, clashes: seen, isAll };
      }),
    [Runs, Shoes, Rules, made, by, area],
  );
  if (!found.value) return <Notice intent="error">{found.problem}</Notice>;
  const { runs, kinds, areas, nowhere, leftOut, clashes, isAll } = found.value;
  const chosen = runs.find((run) => run.row === row);
  const draw = (view: RunView, width: number) => {
    const drawn = drawWhole(runs, {
      ...{ title: t.title, view, width, show, kinds },
      ...(chosen ? { chosen: chosen.row } : {}),
      places: clashes.map(({ point }) => point),
    });
    scene.current = drawn;
    return drawn;
  };
  const toRow = (to: number) => void selectRun(to).catch(() => undefined);
  const pick = (target: Element) => {
    const picked = Number(target.getAttribute("data-row") ?? 0);
    if (picked === 0) return;
    setRow(picked);
    toRow(picked);
  };
  return (
    <Section title={t.title}>
      <div className="rl-grid">
        {areas.length > 1 && (
          <Choice
            label={t.area}
            value={area}
            options={[{ value: "", text: t.allAreas }, ...areas]}
            onChange={setArea}
          />
        )}
        <Choice<ToldBy>
          label={t.by}
          value={by}
          options={[
            { value: "Size", text: t.bySize },
            { value: "State", text: t.byState },
          ]}
          onChange={setBy}
        />
        {runs.length > 0 && (
          <Choice
            label={t.run}
            value={String(chosen?.row ?? 0)}
            options={[
              { value: "0", text: t.noRun },
              ...runs.map((run) => ({ value: String(run.row), text: run.name })),
            ]}
            onChange={(value) => setRow(Number(value))}
          />
        )}
      </div>
      {chosen && <SheetButton onClick={() => toRow(chosen.row)}>{t.toRow(chosen.name)}</SheetButton>}
      {runs.length === 0 ? (
        <Notice>{t.nobody}</Notice>
      ) : (
        <>
          {leftOut > 0 && <p>{t.leftOut(runs.length, leftOut)}</p>}
          <Turned draw={draw} onPick={pick} />
          {saves ? (
            <SheetButton
              onClick={() => {
                if (!scene.current) return;
                saveText(toSvg(scene.current, { standalone: true }), FILE, "image/svg+xml");
                setSaved(FILE);
              }}
            >
              {t.save}
            </SheetButton>
          ) : (
            <p className="rl-hint">{t.notSaved}</p>
          )}
          {saved && <Notice intent="success">{t.saved(saved)}</Notice>}
          <ClashList clashes={clashes} isAll={isAll} />
        </>
      )}
      {runs.length > 0 && nowhere.length > 0 && <p className="rl-hint">{t.nowhere(nowhere)}</p>}
    </Section>
  );
}
