import { useState } from "react";
import { lieScene } from "../../src/drawing/ticket/lieScene";
import { stickScene } from "../../src/drawing/ticket/ticketScenes";
import { toSvg } from "../../src/drawing/paper/toSvg";
import type { Ticket } from "../../src/shop/ticket/ticket";
import { TICKET_LABELS } from "../../src/shop/ticket/ticketLabels";
import { writerFor, type TicketWriter } from "../../src/shop/ticket/ticketWords";
import type { LengthStyle } from "../../src/units/formatLength";
import type { Scene } from "../../src/drawing/paper/scene";
import { benderStrings as t } from "./benderStrings";
import { Measured, readings, type Reading } from "./Measured";
import type { Outcome } from "./outcome";
import { WhyScrapped } from "./WhyScrapped";
import { useSteps } from "./useSteps";

interface PieceProps {
  readonly ticket: Ticket;
  readonly style: LengthStyle;
  readonly made: number;
  readonly by: string;
  setBy(by: string): void;
  readonly finish: ((outcome: Outcome) => Promise<void>) | undefined;
  leave(): void;
}

/** One piece: the stick to mark, a bend at a time, the check; made or scrapped whenever it is. */
export function Piece({ ticket, style, made, by, setBy, finish, leave }: PieceProps) {
  const words = writerFor(style);
  const { step, last, back, next, begin } = useSteps(ticket);
  const [typed, setTyped] = useState<Readonly<Record<number, Reading>>>({});
  const [problem, setProblem] = useState("");
  const [asking, setAsking] = useState(false);
  const bend = ticket.bends[step - 1];

  const end = async (good: boolean, note: string) => {
    const read = readings(typed);
    if (!read) return setProblem(t.both);
    setProblem("");
    try {
      await finish?.({ good, note, measured: read });
      setTyped({});
      setAsking(false);
      begin();
    } catch {
      // Said above the piece; what was typed stays.
    }
  };

  return (
    <article className="rlb-piece" aria-label={ticket.name}>
      <header>
        <h3>{ticket.name}</h3>
        <p>{t.counted(made, ticket.run.quantity)}</p>
        <button type="button" onClick={leave}>
          {t.otherPiece}
        </button>
      </header>
      <div className="rlb-step" aria-live="polite">
        {step === 0 && <Stick ticket={ticket} words={words} style={style} />}
        {bend && <Bend ticket={ticket} step={step - 1} words={words} />}
        {bend && (
          <Measured
            reading={typed[bend.number] ?? { dial: "", angle: "" }}
            onChange={(reading) => setTyped({ ...typed, [bend.number]: reading })}
          />
        )}
        {step === last && <Check ticket={ticket} words={words} by={by} setBy={setBy} />}
      </div>
      {problem && (
        <p role="alert" className="rlb-problem">
          {problem}
        </p>
      )}
      {asking ? (
        <WhyScrapped choose={(why) => void end(false, why)} cancel={() => setAsking(false)} />
      ) : (
        <nav className="rlb-actions" aria-label={ticket.name}>
          <button type="button" disabled={step === 0} onClick={back}>
            {t.back}
          </button>
          <button type="button" className={step < last ? "rlb-primary" : ""} disabled={step === last} onClick={next}>
            {t.next}
          </button>
          <button
            type="button"
            className={step === last ? "rlb-primary" : ""}
            disabled={!finish}
            onClick={() => void end(true, "")}
          >
            {t.made}
          </button>
          <button type="button" disabled={!finish} onClick={() => setAsking(true)}>
            {t.scrapped}
          </button>
        </nav>
      )}
    </article>
  );
}

/** toSvg escapes every text it is given. */
const Picture = ({ scene, name }: { scene: Scene; name: string }) => (
  <div className={`rlb-picture ${name}`} dangerouslySetInnerHTML={{ __html: toSvg(scene) }} />
);

function Stick({ ticket, words, style }: { ticket: Ticket; words: TicketWriter; style: LengthStyle }) {
  const look = { style, stickWidth: 420, shapeWidth: 280, low: true };
  return (
    <>
      <h4>{t.markFirst}</h4>
      <p>{t.markWords}</p>
      <Picture scene={stickScene(ticket, look, words)} name="rlb-stick" />
      <dl className="rlb-facts">
        <Fact name={t.cut} large>
          {words.length(ticket.cutLength)}
        </Fact>
        {ticket.bends.map((bend) => (
          <Fact key={bend.number} name={`${t.mark} ${bend.number}`} large>
            {words.length(bend.mark)}
          </Fact>
        ))}
        <Fact name={t.shoe}>{words.shoe(ticket)}</Fact>
        <Fact name={TICKET_LABELS.sawnEnds}>{ticket.sawnEnds}</Fact>
      </dl>
    </>
  );
}

function Bend({ ticket, step, words }: { ticket: Ticket; step: number; words: TicketWriter }) {
  const bend = ticket.bends[step]!;
  const dial = words.dial(bend);
  return (
    <>
      <h4>
        {t.step(step + 1, ticket.bends.length)} <small>{t.bend(bend.number, bend.kind)}</small>
      </h4>
      <dl className="rlb-facts">
        <Fact name={t.turn}>{words.turn(bend, ticket.bends[step - 1])}</Fact>
        <Fact name={t.mark} large>
          {words.length(bend.mark)}
        </Fact>
        <Fact name={t.lineUp} large>
          {words.lineUp(bend)}
        </Fact>
        <Fact name={t.hook} large>
          {TICKET_LABELS.hookEnd[bend.hook]}
        </Fact>
        <Fact name={t.dial} large>
          {dial} <small>{t.finished(words.degrees(bend.angle))}</small>
        </Fact>
      </dl>
      {bend.notes.map((note) => (
        <p key={note} className="rlb-note">
          {note}
        </p>
      ))}
      <Picture scene={lieScene(ticket, step, { width: 260, height: 110 })} name="rlb-lie" />
      <p className="rlb-caution">{t.caution}</p>
    </>
  );
}

function Check({
  ticket,
  words,
  by,
  setBy,
}: {
  ticket: Ticket;
  words: TicketWriter;
  by: string;
  setBy(by: string): void;
}) {
  return (
    <>
      <h4>{t.check}</h4>
      <ul>
        {words.checks(ticket).map((check) => (
          <li key={check}>{check}</li>
        ))}
      </ul>
      <label className="rlb-field">
        {t.by}
        <input value={by} autoComplete="name" onChange={(event) => setBy(event.target.value)} />
      </label>
    </>
  );
}

const Fact = ({ name, large = false, children }: { name: string; large?: boolean; children: React.ReactNode }) => (
  <div className={large ? "rlb-large" : ""}>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
);
