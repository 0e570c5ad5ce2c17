import { useState } from "react";
import type { PieceLabel } from "../../src/shop/ticket/pieceLabel";
import type { Ticket } from "../../src/shop/ticket/ticket";
import { writerFor } from "../../src/shop/ticket/ticketWords";
import type { LengthStyle } from "../../src/units/formatLength";
import { benderStrings as t } from "./benderStrings";
import { CodeReader } from "./CodeReader";

/** Pieces shown at once: the rest is found by name. */
const SHOWN = 60;

/** The pieces with bends, those not made first, to touch or to find by name or by code. */
export function PieceList({
  tickets,
  style,
  madeOf,
  choose,
  read,
}: {
  tickets: readonly Ticket[];
  style: LengthStyle;
  madeOf(piece: string): number;
  choose(piece: string): void;
  read(label: PieceLabel): void;
}) {
  const [wanted, setWanted] = useState("");
  const words = writerFor(style);
  const isMade = ({ name, run }: Ticket) => madeOf(name) >= run.quantity;
  const bent = tickets.filter(({ bends }) => bends.length > 0);
  const found = bent
    .filter(({ name }) => name.toLowerCase().includes(wanted.trim().toLowerCase()))
    .sort((a, b) => Number(isMade(a)) - Number(isMade(b)));
  if (bent.length === 0) return <p>{t.noPieces}</p>;
  return (
    <section aria-label={t.choose}>
      <h3>{t.choose}</h3>
      <CodeReader read={read} />
      <label className="rlb-field">
        {t.find}
        <input
          value={wanted}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) => setWanted(event.target.value)}
        />
      </label>
      <ul className="rlb-list">
        {found.slice(0, SHOWN).map((ticket) => (
          <li key={ticket.name}>
            <button type="button" className={isMade(ticket) ? "rlb-done" : ""} onClick={() => choose(ticket.name)}>
              <strong>{ticket.name}</strong>
              <span>{t.summary(words.length(ticket.cutLength), ticket.bends.length)}</span>
              <span>{t.counted(madeOf(ticket.name), ticket.run.quantity)}</span>
            </button>
          </li>
        ))}
      </ul>
      {found.length === 0 && <p>{t.noneFound}</p>}
    </section>
  );
}
