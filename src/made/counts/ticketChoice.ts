import { jobTickets, type JobTickets } from "../../shop/ticket/jobTickets";
import type { Bench } from "../../shop/bench/bench";
import { builtRows, type Job } from "../../shop/job/job";
import type { Ticket } from "../../shop/ticket/ticket";
import { runPieces } from "../../shop/run/builtRun";
import { ticketText } from "../../shop/ticket/ticketText";
import { readMade } from "../records/madeTable";
import { tallyJob } from "./tally";

/** Which tickets are wanted; an empty text or a false takes no part in the choice. */
export interface TicketWishes {
  readonly area: string;
  readonly date: string;
  readonly crew: string;
  /** Raceway and size: EMT 1/2. */
  readonly conduit: string;
  /** Straight pieces stand on the cutting sheet. */
  readonly bentOnly: boolean;
  readonly notMade: boolean;
  readonly changed: boolean;
}

/** What a job's tickets are told apart by, besides their runs. */
export interface TicketFacts {
  /** A Made range. */
  readonly made?: unknown;
  /** The job as it was issued. */
  readonly issued?: Job | undefined;
  readonly bench?: Bench | undefined;
}

/** Tickets that were chosen, and how many straight pieces were left to the cutting sheet. */
export interface ChosenTickets extends JobTickets {
  readonly straight: number;
  /** Rows of the Runs range (1 is the header's) with a piece that is wanted, straight ones too: what the cutting sheet is made for. */
  readonly rows: readonly number[];
  /** Of all tickets: what can be chosen by. */
  readonly choices: TicketChoices;
}

export type TicketChoices = Readonly<Record<"area" | "date" | "crew" | "conduit", readonly string[]>>;

const PICK = {
  area: ({ run }: Ticket) => run.area,
  date: ({ run }: Ticket) => run.date,
  crew: ({ run }: Ticket) => run.crew,
  conduit: ({ run }: Ticket) => `${run.raceway} ${run.size}`,
} as const;
const COLUMNS = Object.keys(PICK) as (keyof typeof PICK)[];

/**
 * The tickets of a job that are wanted, in the order of its rows.
 * @throws InputError when the Made range lacks a needed column
 */
export function chooseTickets(
  job: Job,
  wishes: TicketWishes,
  { made, issued, bench }: TicketFacts = {},
): ChosenTickets {
  const { tickets, problems } = jobTickets(job, bench);
  // Pieces and tickets come in one order: run by run, piece by piece.
  const left = wishes.notMade && made ? tallyJob(job, readMade(made)).pieces.map((piece) => piece.left) : undefined;
  const before = wishes.changed && issued ? issuedTexts(issued, bench) : undefined;
  const places = [...tickets.keys()].filter((place) => {
    const ticket = tickets[place]!;
    return (
      COLUMNS.every((column) => wishes[column] === "" || PICK[column](ticket) === wishes[column]) &&
      (left?.[place] ?? 1) > 0 &&
      before?.get(ticket.name) !== ticketText(ticket)
    );
  });
  const wanted = places.map((place) => tickets[place]!);
  const bent = wanted.filter(({ bends }) => bends.length > 0);
  const rowOf = builtRows(job).flatMap(({ rowNumber, built }) => runPieces(built).map(() => rowNumber));
  return {
    tickets: wishes.bentOnly ? bent : wanted,
    problems,
    straight: wishes.bentOnly ? wanted.length - bent.length : 0,
    rows: [...new Set(places.map((place) => rowOf[place]!))],
    choices: choicesOf(tickets),
  };
}

/** What tickets said when their runs were issued, by the name of the piece. */
const issuedTexts = (issued: Job, bench: Bench | undefined): Map<string, string> =>
  new Map(jobTickets(issued, bench).tickets.map((ticket) => [ticket.name, ticketText(ticket)]));

function choicesOf(tickets: readonly Ticket[]): TicketChoices {
  const of = (column: keyof typeof PICK) => [...new Set(tickets.map(PICK[column]))].filter((cell) => cell !== "");
  return { area: of("area"), date: of("date"), crew: of("crew"), conduit: of("conduit") };
}
