import { isUserError } from "../../units/errors";
import type { Bench } from "../bench/bench";
import { buildRunWith } from "../run/buildRun";
import { USUAL_ELBOWS, type ElbowRule } from "../run/factoryElbows";
import type { RunRow } from "../run/runsTable";
import type { ShoeBook } from "../shoe/shoeBook";
import { ticketsOf, type Ticket } from "./ticket";

/** Tickets of a job, and the runs that have none, with the reason. */
export interface JobTickets {
  readonly tickets: readonly Ticket[];
  readonly problems: readonly { readonly run: string; readonly message: string }[];
}

/**
 * Tickets for every piece of every run, in the order of the rows; each piece bent as `bench` has room for, where it is
 * known. A run that cannot be built, and a rule that cannot be read, hide no other.
 */
export function jobTickets(
  rows: readonly RunRow[],
  shoes: ShoeBook,
  bench?: Bench,
  elbows: ElbowRule = USUAL_ELBOWS,
): JobTickets {
  const tickets: Ticket[] = [];
  const problems: JobTickets["problems"][number][] = [];
  for (const row of rows) {
    if ("problem" in row) {
      problems.push({ run: row.name, message: row.problem });
      continue;
    }
    try {
      tickets.push(...ticketsOf(buildRunWith(row.run, shoes, elbows), bench));
    } catch (error) {
      if (!isUserError(error)) throw error;
      problems.push({ run: row.run.name, message: error.message });
    }
  }
  problems.push(...elbows.problems.map((message) => ({ run: "Rules", message })));
  return { tickets, problems };
}
