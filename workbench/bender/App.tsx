import { useMemo, useState } from "react";
import { readBenderJob } from "../../src/made/records/benderJob";
import type { RecordCells } from "../../src/made/records/recordsText";
import { readBench } from "../../src/shop/bench/bench";
import { buildJob } from "../../src/shop/job/job";
import { jobTickets } from "../../src/shop/ticket/jobTickets";
import { Bender } from "../../taskpane/bender/Bender";
import { benderStrings as t } from "../../taskpane/bender/benderStrings";
import { strings } from "../../taskpane/strings";
import { attempt } from "../../taskpane/components/attempt";
import { dropRecords, keepJob, keepRecords, keptJob, keptRecords } from "./kept";
import { KeptRecords } from "./KeptRecords";
import { OpenJob } from "./OpenJob";

/** The view at the bender by itself: a job from a file, records kept on this device until they are in Made. */
export function App() {
  const [text, setText] = useState(keptJob);
  const [records, setRecords] = useState<readonly RecordCells[]>(keptRecords);
  const [problem, setProblem] = useState("");
  const read = useMemo(() => attempt(() => ticketsOf(text)), [text]);

  const open = (next: string) => {
    const tried = attempt(() => ticketsOf(next));
    if (!tried.value) return setProblem(tried.problem);
    setProblem("");
    setText(next);
    try {
      keepJob(next);
    } catch {
      setProblem(t.keptNot);
    }
  };
  const record = (more: readonly RecordCells[]) => {
    setRecords(keepRecords(more));
    return Promise.resolve();
  };
  const counted = (piece: string) =>
    records.reduce((sum, each) => sum + (each["Piece"] === piece ? Number(each["Good"]) : 0), 0);

  return (
    <main className="page rlb">
      <h1>{strings.app.title}</h1>
      <h2>{t.title}</h2>
      {text === "" || !read.value ? (
        <OpenJob open={open} problem={problem || (text === "" ? "" : (read.problem ?? ""))} />
      ) : (
        <>
          <Bender tickets={read.value.tickets} style={read.value.style} madeOf={counted} record={record} />
          {read.value.problems.map(({ run, message }) => (
            <p key={`${run} ${message}`} className="rlb-note">{`${run}: ${message}`}</p>
          ))}
        </>
      )}
      <KeptRecords records={records} forget={(gone) => setRecords(dropRecords(new Set(gone.map(({ Id }) => Id))))} />
      {text !== "" && (
        <button type="button" onClick={() => setText("")}>
          {t.otherJob}
        </button>
      )}
    </main>
  );
}

function ticketsOf(text: string) {
  const { style, runs, shoes, rules, bench } = readBenderJob(text);
  return { style, ...jobTickets(buildJob({ runs, shoes, rules }), bench ? readBench(bench) : undefined) };
}
