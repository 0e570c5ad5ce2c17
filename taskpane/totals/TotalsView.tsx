import { Spinner } from "@fluentui/react-components";
import { lazy, Suspense } from "react";
import { tabId, Tabs } from "../components/Tabs";
import { NoRuns } from "../components/NoRuns";
import { useKept } from "../hooks/useKept";
import { useLedger } from "../hooks/useLedger";
import { useRun } from "../run/useRun";
import { strings } from "../strings";
import { BendsPart } from "./BendsPart";
import { ChangesPart } from "./ChangesPart";
import { CutsPart } from "./cuts/CutsPart";
import { MadePart } from "./MadePart";
import { OverviewPart } from "./overview/OverviewPart";
import { TakeoffPart } from "./TakeoffPart";

// Drawings in space load when they are asked for.
const WholePart = lazy(() =>
  import(/* webpackChunkName: "pane-whole" */ "./whole/WholePart").then(({ WholePart: part }) => ({ default: part })),
);

const t = strings.totals;
const PARTS = ["takeoff", "overview", "bends", "cuts", "made", "changes", "whole"] as const;
const PANEL = "rl-totals";
type PartName = (typeof PARTS)[number];

/** The whole job: what to order, what to cut, what to bend, what has changed. */
export function TotalsView({ toStart }: { toStart(): void }) {
  const { state } = useLedger();
  const { table, runs } = useRun();
  const [part, setPart] = useKept<PartName>("totals.part", "takeoff");
  if (state === "loading") return <Spinner label={strings.common.reading} />;
  if (!table) return <NoRuns toStart={toStart} />;
  if (runs.length === 0) return <p>{t.empty}</p>;
  return (
    <>
      <Tabs<PartName>
        label={t.parts}
        tabs={PARTS.map((name) => ({ value: name, text: t.tabs[name] }))}
        value={part}
        onChange={setPart}
        panel={PANEL}
      />
      <div id={PANEL} role="tabpanel" aria-labelledby={tabId(PANEL, part)}>
        {part === "takeoff" && <TakeoffPart />}
        {part === "overview" && <OverviewPart />}
        {part === "bends" && <BendsPart />}
        {part === "cuts" && <CutsPart />}
        {part === "made" && <MadePart />}
        {part === "changes" && <ChangesPart />}
        {part === "whole" && (
          <Suspense fallback={<Spinner label={strings.common.opening} />}>
            <WholePart />
          </Suspense>
        )}
      </div>
    </>
  );
}
