import type { Ticket } from "../../shop/ticket/ticket";
import type { TicketWriter } from "../../shop/ticket/ticketWords";
import { TICKET_LABELS as t } from "../../shop/ticket/ticketLabels";
import type { LengthStyle } from "../../units/formatLength";
import { drawRun } from "../run/drawRun";
import { drawStick } from "../bench/drawStick";
import type { Scene } from "../paper/scene";

/** With more marks than this, their distances stand under them: a row for each would fill the page. */
const MOST_ROWS = 2;
/** From behind, above and the right of the piece: ahead goes away, left to the left. */
const FROM_BEHIND = { azimuth: 45, elevation: 35 };
/** Most height of the finished piece, as a share of the drawing's width; less where the table is long. */
const shapeHeight = (bends: number): number => (bends < 3 ? 0.4 : 0.3);
const LEVEL = 1e-6;

/** More bends than this make a ticket that has to be set close to stand on one page. */
const MANY = 2;
/** More bends than this, and it is set as close as can be read. */
const VERY_MANY = 6;
export const isClose = ({ bends }: Ticket): boolean => bends.length > MANY;
export const isTight = ({ bends }: Ticket): boolean => bends.length > VERY_MANY;
/** Most height of the conduit at the shoe in each bend's picture [px]. */
export const lieHeight = (ticket: Ticket): number => (isTight(ticket) ? 24 : isClose(ticket) ? 30 : 50);

export interface TicketLook {
  readonly style: LengthStyle;
  /** Widths the drawings are made for [px]; what they shrink or grow to is the page's business. */
  readonly stickWidth: number;
  readonly shapeWidth: number;
  /** Drawings as low as they can be, where pieces share a page or have many bends. */
  readonly low?: boolean;
}

const STICK_ENDS = { datum: `${t.letters.datum}: ${t.writeD}`, far: `${t.letters.far}: ${t.farEnd.toLowerCase()}` };

const nameOf = ({ run, piece }: Ticket): string => `${run.name} piece ${piece}`;

/** The straight stick with its marks. */
export const stickScene = (ticket: Ticket, { stickWidth: width, low }: TicketLook, words: TicketWriter): Scene =>
  drawStick(
    {
      name: nameOf(ticket),
      cutLength: ticket.cutLength,
      marks: ticket.bends.map((bend) => ({
        ...{ bend: bend.number, distance: bend.mark, lineUp: bend.lineUp, hook: bend.hook },
        lineUpWords: words.lineUp(bend),
      })),
      coupledBefore: ticket.coupledBefore,
      coupledAfter: ticket.coupledAfter,
    },
    {
      ...{ width, show: words.length, ends: STICK_ENDS },
      distances: !low && ticket.bends.length <= MOST_ROWS ? "rows" : "under",
    },
  );

/** The finished piece, its first straight ahead and its first bend up: from the side where it lies in one plane. */
export function shapeScene(ticket: Ticket, { shapeWidth: width, low }: TicketLook, words: TicketWriter): Scene {
  const { path, shoe, coupledBefore, coupledAfter } = ticket;
  const flat = path.points.every(([, left]) => Math.abs(left) < LEVEL);
  const end = (coupled: boolean) => (coupled ? "coupling" : "open");
  return drawRun(
    {
      name: nameOf(ticket),
      outsideDiameter: shoe.outsideDiameter,
      pulls: [{ path, start: end(coupledBefore), end: end(coupledAfter) }],
    },
    {
      ...(flat
        ? { view: "elevation", heading: t.shapeFlat, axes: null }
        : { view: FROM_BEHIND, heading: t.shape, axes: t.axes }),
      width,
      show: words.length,
      listUnlabeled: false,
      maxHeight: width * (low ? 0.2 : shapeHeight(ticket.bends.length)),
    },
  );
}
