import type { Ticket } from "./ticket";
import { TICKET_SHEET_LABELS } from "./ticketLabels";

/** What stands over tickets: tickets of one job are named for it. */
export function ticketTitle(tickets: readonly Ticket[]): string {
  const [job = "", ...others] = new Set(tickets.map(({ run }) => run.job));
  return TICKET_SHEET_LABELS.title(others.length === 0 ? job : "");
}
