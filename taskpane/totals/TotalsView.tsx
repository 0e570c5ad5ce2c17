import { Spinner } from "@fluentui/react-components";
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
import { TakeoffPart } from "./TakeoffPart";

const t = strings.totals;
const PARTS = ["takeoff", "bends", "cuts", "made", "changes"] as const;
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
        {part === "bends" && <BendsPart />}
        {part === "cuts" && <CutsPart />}
        {part === "made" && <MadePart />}
        {part === "changes" && <ChangesPart />}
      </div>
    </>
  );
}
