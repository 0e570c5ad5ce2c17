import type { Ticket } from "../../shop/ticket/ticket";
import { TICKET_CAUTIONS } from "../../shop/ticket/ticketCautions";
import { TICKET_LABELS as t } from "../../shop/ticket/ticketLabels";
import type { TicketWriter } from "../../shop/ticket/ticketWords";
import type { LengthStyle } from "../../units/formatLength";
import type { Scene } from "../paper/scene";
import { bendBlocks } from "./bendBlocks";
import { picture, type TicketBlock } from "./blocks";
import { headBlock } from "./headBlock";
import { gapLine, heightOfLines, textLines, TICKET_COLUMNS, widthOf, type TicketLetters } from "./ticketLines";
import { isClose, isTight, shapeScene, stickScene } from "./ticketScenes";

/** Widths the drawings are made for [px]: letters of 12 px come out at 9 to 10 pt. */
const SCENES = { stickWidth: 620, shapeWidth: 280 };
/** The same where a ticket has many bends to find room for. */
const LOW_SCENES = { stickWidth: 760, shapeWidth: 280, low: true };
const LOWEST_SCENES = { stickWidth: 840, shapeWidth: 340, low: true };
/** The finished shape stands left of its checks. */
const SHAPE = { columns: 4, gap: 6 };
const SHAPE_WIDTH = widthOf(TICKET_COLUMNS, 0, SHAPE.columns) - SHAPE.gap;
/** Between the items of a list that is set as a paragraph. */
const DASH = "\u2013";
/** [pt] */
const AIR = 5;

/** A ticket as blocks of worksheet rows, top to bottom, with or without its drawings. */
export function ticketBlocks(
  ticket: Ticket,
  words: TicketWriter,
  { style, pictures }: { style: LengthStyle; pictures: boolean },
): TicketBlock[] {
  const { bends, join, shoe } = ticket;
  const cautions = [...TICKET_CAUTIONS, ...(bends.length > 0 ? [t.source(shoe.source)] : [])];
  const look = { style, ...(isTight(ticket) ? LOWEST_SCENES : isClose(ticket) ? LOW_SCENES : SCENES) };
  const drawn = (scene: () => Scene) => (pictures ? scene() : undefined);
  return [
    headBlock(
      ticket,
      words,
      drawn(() => stickScene(ticket, look, words)),
    ),
    ...(bends.length === 0 ? [{ lines: textLines(t.straight, "strong") }] : bendBlocks(ticket, words, pictures)),
    ...(join ? [{ lines: [gapLine(AIR), ...textLines(`${t.coupledOn} ${words.join(join)}`, "strong")] }] : []),
    isClose(ticket) ? running(t.caution, cautions) : listBlock(t.caution, cautions, "small"),
    ...(bends.length === 0
      ? []
      : [
          finished(
            ticket,
            words,
            drawn(() => shapeScene(ticket, look, words)),
          ),
        ]),
  ];
}

function listBlock(title: string, texts: readonly string[], letters: TicketLetters): TicketBlock {
  return {
    lines: [gapLine(AIR), ...textLines(title, "strong"), ...texts.flatMap((text) => textLines(text, letters))],
  };
}

/** A list set as one paragraph, where a ticket has many bends to find room for. */
const running = (title: string, texts: readonly string[], columns = {}): TicketBlock => ({
  lines: [gapLine(AIR), ...textLines(`${title}: ${texts.join(` ${DASH} `)}`, "tiny", columns)],
});

/** Checks beside the finished shape, or across the page where there is none. */
function finished(ticket: Ticket, words: TicketWriter, scene: Scene | undefined): TicketBlock {
  const [checks, letters] = [words.checks(ticket), isTight(ticket) ? "small" : "check"] as const;
  if (!scene) return listBlock(t.checks, checks, letters);
  const drawn = picture(scene, SHAPE_WIDTH, { line: 1 });
  const right = { first: SHAPE.columns };
  const beside = isTight(ticket)
    ? [...running(t.checks, checks, right).lines]
    : [...textLines(t.checks, "strong", right), ...checks.flatMap((check) => textLines(check, letters, right))];
  const short = Math.ceil(drawn.height - heightOfLines(beside));
  return { lines: [gapLine(AIR), ...beside, ...(short > 0 ? [gapLine(short)] : [])], pictures: [drawn] };
}
