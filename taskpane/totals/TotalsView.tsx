import { Spinner } from "@fluentui/react-components";
import { NoRuns } from "../components/NoRuns";
import { useLedger } from "../hooks/useLedger";
import { useRun } from "../run/useRun";
import { strings } from "../strings";
import { BendsPart } from "./BendsPart";
import { ChangesPart } from "./ChangesPart";
import { CutsPart } from "./CutsPart";
import { TakeoffPart } from "./TakeoffPart";

/** The whole job: what to order, what to cut, what to bend, what has changed. */
export function TotalsView({ toStart }: { toStart(): void }) {
  const { state } = useLedger();
  const { table, runs } = useRun();
  if (state === "loading") return <Spinner label={strings.common.reading} />;
  if (!table) return <NoRuns toStart={toStart} />;
  if (runs.length === 0) return <p>{strings.totals.empty}</p>;
  return (
    <>
      <TakeoffPart />
      <BendsPart />
      <CutsPart />
      <ChangesPart />
    </>
  );
}
