import { useEffect, useMemo, useState } from "react";
import { chooseTickets, type ChosenTickets, type TicketWishes } from "../../src/made/counts/ticketChoice";
import { readBench } from "../../src/shop/bench/bench";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import { buildJob, type Job } from "../../src/shop/job/job";
import { attempt } from "../components/attempt";
import type { TableCells } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { untilRead } from "../hooks/untilRead";
import { useWorkbook } from "../hooks/useWorkbook";
import { useMade } from "../made/useMade";
import { writtenRows } from "../workbook/rows";
import { readSnapshots, SNAPSHOTS, type Snapshot } from "../totals/snapshots";

/** Every ticket. */
export const NO_WISHES: TicketWishes = {
  ...{ area: "", date: "", crew: "", conduit: "" },
  ...{ bentOnly: false, notMade: false, changed: false },
};

/** What the runs were issued as, the last time they were: a snapshot and its cells. */
export interface Issue {
  readonly name: string;
  readonly cells: TableCells["cells"];
}

const NONE: ChosenTickets["choices"] = { area: [], date: [], crew: [], conduit: [] };

/**
 * Tickets of one row of Runs (1 for the first under the header), or of the whole job, worked out again when the workbook
 * changes. A table that cannot be read at all comes back as one problem.
 */
export function useTickets(row: number | "all", wishes: TicketWishes, issue: Issue | undefined): ChosenTickets {
  const { Runs, Shoes, Rules, Bench } = useLedger().tables;
  const { made } = useMade();
  const [job, issued] = useMemo(() => {
    const build = (runs: unknown) =>
      attempt(
        () =>
          buildJob({
            runs,
            shoes: Shoes?.cells,
            rules: Rules?.cells,
            which: row === "all" ? "job" : "any alternate",
          }) satisfies Job,
      );
    const [headers = [], ...lines] = Runs?.cells ?? [];
    const now = build([headers, ...(row === "all" ? lines : lines.slice(row - 1, row))]);
    return [now, issue && build(issue.cells)];
  }, [Runs, Shoes, Rules, row, issue]);
  return useMemo(() => {
    const tried = attempt(() => {
      // Where nothing is said of the bench, the order is the schedule's.
      const bench = Bench ? readBench(Bench.cells) : undefined;
      return job.value && chooseTickets(job.value, wishes, { made: made?.cells, issued: issued?.value, bench });
    });
    // One row alone was read: where it stands in the table is known better here.
    const chosen = tried.value && { ...tried.value, ...(row !== "all" && { rows: [row + 1] }) };
    const message = job.problem ?? tried.problem ?? "";
    return (
      chosen ?? {
        tickets: [],
        problems: [{ run: Runs?.name ?? "Runs", message }],
        straight: 0,
        rows: [],
        choices: NONE,
      }
    );
  }, [job, issued, made, Bench, Runs, wishes, row]);
}

/** The Issued table where something stands in it, else the last issue that Totals keeps; undefined where there is neither. */
export function useIssue(): Issue | undefined {
  const workbook = useWorkbook();
  const { tables } = useLedger();
  const [issue, setIssue] = useState<Issue>();
  useEffect(() => {
    const read = async () => {
      const latest: Snapshot | undefined = readSnapshots((await workbook.readSettings([SNAPSHOTS]))[0]).at(-1);
      const [table] = latest ? await workbook.readTables([latest.table]) : [];
      return table && latest && { name: latest.table, cells: table.cells };
    };
    return untilRead(read, setIssue);
  }, [workbook, tables]);
  const { Issued } = tables;
  const inTable = useMemo(
    () =>
      Issued && writtenRows(Issued.cells, RUN_COLUMNS).length > 0
        ? { name: Issued.name, cells: Issued.cells }
        : undefined,
    [Issued],
  );
  return inTable ?? issue;
}
