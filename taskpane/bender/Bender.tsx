import { useState } from "react";
import type { PieceLabel } from "../../src/shop/ticket/pieceLabel";
import type { Ticket } from "../../src/shop/ticket/ticket";
import type { RecordCells } from "../../src/made/records/recordsText";
import type { LengthStyle } from "../../src/units/formatLength";
import "./bender.css";
import { benderStrings as t } from "./benderStrings";
import type { Outcome } from "./outcome";
import { Piece } from "./Piece";
import { PieceList } from "./PieceList";
import { pieceOfCode } from "./pieceOfCode";
import { recordsOf } from "./recordsOf";

export interface BenderProps {
  readonly tickets: readonly Ticket[];
  readonly style: LengthStyle;
  /** Good pieces recorded so far, by the name of the piece. */
  readonly madeOf: (piece: string) => number;
  /** Keeps records; what is wrong with that is thrown. Undefined where nothing can be recorded. */
  readonly record: ((records: readonly RecordCells[]) => Promise<void>) | undefined;
}

/** The view at the bender: choose a piece, make it bend by bend, record it. Large type, by touch alone. */
export function Bender({ tickets, style, madeOf, record }: BenderProps) {
  const [chosen, setChosen] = useState("");
  const [by, setBy] = useState("");
  const [said, setSaid] = useState("");
  const ticket = tickets.find(({ name }) => name === chosen);

  const choose = (name: string, words = "") => {
    setChosen(name);
    setSaid(words);
  };
  const read = (label: PieceLabel) => {
    const { name, words } = pieceOfCode(tickets, label);
    choose(name, words);
  };
  const finish = async (outcome: Outcome) => {
    if (!ticket || !record) return;
    try {
      await record(recordsOf(ticket, outcome, by));
      choose(ticket.name, t.recorded(ticket.name, outcome.good));
    } catch (error) {
      setSaid(t.notRecorded(error instanceof Error ? error.message : String(error)));
      throw error;
    }
  };

  return (
    <div className="rlb">
      <p className="rlb-said" role="status">
        {said}
      </p>
      {ticket ? (
        <Piece
          key={ticket.name}
          ticket={ticket}
          style={style}
          made={madeOf(ticket.name)}
          by={by}
          setBy={setBy}
          finish={record && finish}
          leave={() => choose("")}
        />
      ) : (
        <PieceList tickets={tickets} style={style} madeOf={madeOf} choose={choose} read={read} />
      )}
    </div>
  );
}
