import { Spinner, Tab, TabList } from "@fluentui/react-components";
import { NoRuns } from "../components/NoRuns";
import { useKept } from "../hooks/useKept";
import { useLedger } from "../hooks/useLedger";
import { useRun } from "../run/useRun";
import { strings } from "../strings";
import { BendsPart } from "./BendsPart";
import { ChangesPart } from "./ChangesPart";
import { CutsPart } from "./CutsPart";
import { TakeoffPart } from "./TakeoffPart";

const t = strings.totals;
const PARTS = ["takeoff", "bends", "cuts", "changes"] as const;
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
      <TabList
        size="small"
        selectedValue={part}
        aria-label={t.parts}
        onTabSelect={(_, data) => setPart(data.value as PartName)}
      >
        {PARTS.map((name) => (
          <Tab key={name} value={name}>
            {t.tabs[name]}
          </Tab>
        ))}
      </TabList>
      {part === "takeoff" && <TakeoffPart />}
      {part === "bends" && <BendsPart />}
      {part === "cuts" && <CutsPart />}
      {part === "changes" && <ChangesPart />}
    </>
  );
}
