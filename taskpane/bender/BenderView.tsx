import { Spinner } from "@fluentui/react-components";
import { useMemo } from "react";
import { benderJobText } from "../../src/made/records/benderJob";
import { readMade } from "../../src/made/records/madeTable";
import { MADE_HEADERS, type RecordCells } from "../../src/made/records/recordsText";
import { tallyJob } from "../../src/made/counts/tally";
import { buildJob } from "../../src/shop/job/job";
import { attempt } from "../components/attempt";
import { NoRuns } from "../components/NoRuns";
import { Notice } from "../components/Notice";
import { useLedger } from "../hooks/useLedger";
import { useUnits } from "../hooks/useUnits";
import { useWorkbook } from "../hooks/useWorkbook";
import { addToMade } from "../made/addToMade";
import { useMade } from "../made/useMade";
import { strings } from "../strings";
import { NO_WISHES, useTickets } from "../tickets/useTickets";
import { Bender } from "./Bender";
import { benderStrings as t } from "./benderStrings";
import { ForTablet } from "./ForTablet";

/** The view at the bender as a view of the pane: what is recorded goes straight into Made. */
export function BenderView({ toStart }: { toStart(): void }) {
  const { state, tables } = useLedger();
  if (state === "loading") return <Spinner label={strings.common.reading} />;
  if (!tables.Runs) return <NoRuns toStart={toStart} />;
  return <AtBender />;
}

function AtBender() {
  const workbook = useWorkbook();
  const { style } = useUnits();
  const { tables, mustBeFresh } = useLedger();
  const { made, reload } = useMade();
  const { tickets, problems } = useTickets("all", NO_WISHES, undefined);
  const { Runs, Shoes, Rules, Bench } = tables;
  const counted = useMemo(() => {
    const tried = attempt(() => {
      const job = buildJob({ runs: Runs?.cells, shoes: Shoes?.cells, rules: Rules?.cells });
      return new Map(
        tallyJob(job, readMade(made?.cells ?? [[...MADE_HEADERS]])).pieces.map((each) => [each.name, each]),
      );
    });
    return tried.value;
  }, [Runs, Shoes, Rules, made]);
  const record = async (records: readonly RecordCells[]) => {
    if (!made) return;
    mustBeFresh();
    const cells = records.map((each) => MADE_HEADERS.map((header) => each[header] ?? ""));
    await addToMade(workbook, made, [[...MADE_HEADERS], ...cells]);
    await reload();
  };
  const job = benderJobText({
    ...{ style, runs: Runs?.cells ?? [] },
    ...(Shoes ? { shoes: Shoes.cells } : {}),
    ...(Rules ? { rules: Rules.cells } : {}),
    ...(Bench ? { bench: Bench.cells } : {}),
  });
  return (
    <>
      {!made && <Notice intent="warning">{t.noTable}</Notice>}
      {problems.map(({ run, message }, index) => (
        <Notice key={index} intent="error" title={run}>
          {message}
        </Notice>
      ))}
      <Bender
        tickets={tickets}
        style={style}
        madeOf={(piece) => counted?.get(piece)?.made ?? 0}
        record={made && record}
      />
      <ForTablet job={job} made={made} reload={reload} />
    </>
  );
}
