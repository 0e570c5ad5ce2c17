import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { Ticket } from "../../src/shop/ticket/ticket";
import { useWidth } from "../hooks/useWidth";
import { useUnits } from "../hooks/useUnits";
import { ticketHtml } from "./paper/ticketHtml";
import { ticketStrings as t } from "./ticketStrings";

/** Pieces shown at first, and with each press of the button: a large job has thousands. */
const SHOWN = 25;

/** The pieces, each of which opens to its ticket as it will be printed; a single one is open. */
export function TicketList({ tickets }: { tickets: readonly Ticket[] }) {
  const [shown, setShown] = useState(SHOWN);
  const left = tickets.length - shown;
  return (
    <div>
      {tickets.slice(0, shown).map((ticket, place) => (
        <TicketCard
          key={`${place} ${ticket.run.name} ${ticket.piece}`}
          ticket={ticket}
          shownAtOnce={tickets.length === 1}
        />
      ))}
      {left > 0 && (
        <Button size="small" onClick={() => setShown(shown + SHOWN)}>
          {t.more(Math.min(left, SHOWN))}
        </Button>
      )}
    </div>
  );
}

function TicketCard({ ticket, shownAtOnce }: { ticket: Ticket; shownAtOnce: boolean }) {
  const units = useUnits();
  const [open, setOpen] = useState(shownAtOnce);
  const { run, piece, pieces, cutLength, bends } = ticket;
  return (
    <details className="rl-card" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <strong>{t.piece(run.name, piece, pieces)}</strong> {t.summary(units.show(cutLength), bends.length)}
      </summary>
      {open && <Preview ticket={ticket} />}
    </details>
  );
}

function Preview({ ticket }: { ticket: Ticket }) {
  const { style } = useUnits();
  const [watch, width] = useWidth(280);
  const html = ticketHtml(ticket, { style, stickWidth: width, shapeWidth: Math.min(width, 340) });
  // ticketHtml escapes every text it is given.
  return <div className="rlt-preview" ref={watch} dangerouslySetInnerHTML={{ __html: html }} />;
}
