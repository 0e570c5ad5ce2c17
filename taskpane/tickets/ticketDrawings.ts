import { drawRun } from "../../src/drawing/drawRun";
import { drawStick } from "../../src/drawing/drawStick";
import type { Scene } from "../../src/drawing/scene";
import type { Ticket } from "../../src/shop/ticket";
import { ticketStrings } from "./ticketStrings";

const t = ticketStrings.ticket;

/** With more marks than this, the distances stand in the table only: their rows would fill the page. */
const MOST_ROWS = 4;
/** Most height of the finished piece, as a share of the drawing's width. */
const SHAPE_HEIGHT = 0.4;
const LEVEL = 1e-6;

type Show = (inches: number) => string;

const nameOf = ({ run, piece }: Ticket): string => `${run.name} piece ${piece}`;

/** The straight stick with its marks. */
export const stickScene = (ticket: Ticket, width: number, show: Show): Scene =>
  drawStick(
    {
      name: nameOf(ticket),
      cutLength: ticket.cutLength,
      marks: ticket.bends.map(({ number, mark, lineUp, hook }) => ({ bend: number, distance: mark, lineUp, hook })),
      coupledBefore: ticket.coupledBefore,
      coupledAfter: ticket.coupledAfter,
    },
    { width, show, distances: ticket.bends.length <= MOST_ROWS },
  );

/** The finished piece, its first straight ahead and its first bend up: from the side where it lies in one plane. */
export function shapeScene(ticket: Ticket, width: number, show: Show): Scene {
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
        : { view: "isometric", heading: t.shape, axes: t.axes }),
      width,
      show,
      maxHeight: width * SHAPE_HEIGHT,
    },
  );
}
