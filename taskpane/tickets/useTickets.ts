import { useMemo } from "react";
import { jobTickets, type JobTickets } from "../../src/shop/ticket/jobTickets";
import { readBench } from "../../src/shop/bench/bench";
import { buildJob } from "../../src/shop/job/job";
import { attempt } from "../components/attempt";
import { useLedger } from "../hooks/useLedger";

/**
 * Tickets of one row of Runs (1 for the first under the header), or of the whole job, worked out again when the workbook
 * changes. A table that cannot be read at all comes back as one problem.
 */
export function useTickets(row: number | "all"): JobTickets {
  const { Runs, Shoes, Rules, Bench } = useLedger().tables;
  return useMemo(() => {
    const [headers = [], ...lines] = Runs?.cells ?? [];
    const cells = [headers, ...(row === "all" ? lines : lines.slice(row - 1, row))];
    const tried = attempt(() => {
      // Where nothing is said of the bench, the order is the schedule's.
      const bench = Bench ? readBench(Bench.cells) : undefined;
      return jobTickets(buildJob({ runs: cells, shoes: Shoes?.cells, rules: Rules?.cells }), bench);
    });
    return tried.value ?? { tickets: [], problems: [{ run: Runs?.name ?? "Runs", message: tried.problem ?? "" }] };
  }, [Runs, Shoes, Rules, Bench, row]);
}
