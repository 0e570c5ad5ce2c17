import { Notice } from "../components/Notice";
import { strings } from "../strings";

/** Shop tickets, one for each piece. */
export function TicketsView(_: { toStart(): void }) {
  return <Notice>{strings.tickets.none}</Notice>;
}
