import type { Ticket, TicketBend } from "../../shop/ticket/ticket";
import { TICKET_LABELS as t, TICKET_SHEET_LABELS } from "../../shop/ticket/ticketLabels";
import type { TicketWriter } from "../../shop/ticket/ticketWords";
import { picture, PICTURE_DOWN, type TicketBlock } from "./blocks";
import { lieScene } from "./lieScene";
import { cellsLine, textLines, TICKET_COLUMNS, type TicketLetters, type TicketLine } from "./ticketLines";
import { isClose, isTight, lieHeight } from "./ticketScenes";

/** How the conduit lies at the shoe, in the last column. */
const LIE = { column: TICKET_COLUMNS.length - 1, width: TICKET_COLUMNS.at(-1)! - 4, tight: 80 };
/** Room under a picture [pt]. */
const AIR = 1;

/** A row for each bend; the lead and the headings stay with the first. */
export function bendBlocks(ticket: Ticket, words: TicketWriter, pictures: boolean): TicketBlock[] {
  const columns = [...TICKET_SHEET_LABELS.columns, ...(pictures ? [t.lie] : [])];
  const lead = [
    ...textLines(t.marks, isTight(ticket) ? "small" : "strong"),
    cellsLine(columns.map((text) => ({ text, letters: "heading" }))),
  ];
  return ticket.bends.map((_, step) => {
    const before = step === 0 ? lead : [];
    const line = bendLine(ticket, step, words, pictures);
    if (!pictures) return { lines: [...before, line] };
    const scene = lieScene(ticket, step, { height: lieHeight(ticket) });
    const drawn = picture(scene, isTight(ticket) ? LIE.tight : LIE.width, { line: before.length, column: LIE.column });
    const height = Math.max(line.height, Math.ceil(drawn.height) + PICTURE_DOWN + AIR);
    return { lines: [...before, { ...line, height }], pictures: [drawn] };
  });
}

function bendLine(ticket: Ticket, step: number, words: TicketWriter, pictures: boolean): TicketLine {
  const [bend, before] = [ticket.bends[step]!, ticket.bends[step - 1]];
  const letters: TicketLetters = isTight(ticket) ? "cell-tiny" : isClose(ticket) ? "cell-small" : "cell";
  return cellsLine([
    { text: String(step + 1), letters: "number" },
    { text: words.length(bend.mark), letters: "number" },
    { text: words.lineUp(bend), letters: "cell" },
    { text: t.hookEnd[bend.hook], letters: "cell" },
    typeof bend.dial === "number"
      ? { text: words.dial(bend), letters: "number" }
      : { text: t.pastDial, letters: "cell" },
    { text: turnText(bend, step + 1, before, words), letters },
    ...(pictures ? [{ text: "", letters } as const] : []),
  ]);
}

function turnText(bend: TicketBend, step: number, before: TicketBend | undefined, words: TicketWriter): string {
  const finished = bend.dial === bend.angle ? [] : [t.finished(words.degrees(bend.angle))];
  const number = bend.number === step ? [] : [t.bendNumber(bend.number)];
  return [words.turn(bend, before), ...number, bend.kind, ...finished, ...bend.notes].join("; ");
}
