import { remember } from "../../memory/remember";
import type { Bench } from "../bench/bench";
import { builtRows, unbuiltRows, type Job } from "../job/job";
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
export const jobTickets = (job: Job, bench?: Bench): JobTickets => ({
  tickets: builtRows(job).flatMap(({ built }) => ticketsOnce(built, bench)),
  problems: [
    ...unbuiltRows(job).map(({ name, problem }) => ({ run: name, message: problem })),
    ...job.rules.problems.map((message) => ({ run: "Rules", message })),
  ],
});

const ticketsOnce = remember(ticketsOf);
