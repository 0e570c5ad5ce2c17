import { cos, sin, toRadians } from "../../geometry/angle";
import type { Ticket } from "../../shop/ticket/ticket";
import { TICKET_LABELS as t } from "../../shop/ticket/ticketLabels";
import { fitTo, type Flat } from "../paper/fit";
import type { Scene, Spot } from "../paper/scene";
import { Sketch } from "../paper/sketch";
import { lineUpSymbol } from "../paper/symbols";
import { conduitAtShoe, type ConduitAtShoe } from "./conduitAtShoe";

export interface LieOptions {
  /** Width of the page [px]. */
  readonly width?: number;
  /** Most height of the conduit on it [px]. */
  readonly height?: number;
}

/** From the end of the conduit to its letter [px]. */
const LETTER = 10;
const ROOM = 2 * LETTER;
/** The hook holds the conduit this many radii before the bend. */
const HOOK = 0.8;

/**
 * How the conduit lies at the shoe when a step begins, hook at the left and bending up: the bends made so far, the mark
 * with what is lined up with it, the letters of the ends, and in dashes where the step takes it.
 *
 * @param step place of the bend in the ticket's order, 0 for the first
 */
export function lieScene(ticket: Ticket, step: number, { width = 150, height = 60 }: LieOptions = {}): Scene {
  const lie = conduitAtShoe(ticket, step);
  const { lineUp, hook, angle } = ticket.bends[step]!;
  const shoe = shoeOutline(lie);
  const sketch = new Sketch(width);
  const room = { left: ROOM, right: width - ROOM, top: 0, maxHeight: height };
  const fit = fitTo([...lie.before, ...lie.after, ...shoe], room);
  const [conduit, done] = [lie.before.map(fit.toPage), lie.after.map(fit.toPage)];
  sketch.line(shoe.map(fit.toPage), "shape", { closed: true });
  sketch.line(done, "ghost");
  sketch.line(conduit, "conduit-thin");
  const [hookX, axis] = fit.toPage([-HOOK * lie.radius, 0]);
  upright(sketch, hookX, axis, 5, 4);
  const [markX] = fit.toPage([lie.mark, 0]);
  upright(sketch, markX, axis, 7, 1.75);
  lineUpSymbol(sketch, lineUp, [markX, axis + 14], 5);
  if (lineUp === "notch") sketch.text(String(angle), [markX + 9, axis + 14], "start");
  sketch.text(t.letters.datum, beyond(conduit[0]!, conduit[1]!), "middle", "strong");
  sketch.text(t.letters.far, beyond(conduit.at(-1)!, conduit.at(-2)!), "middle", "strong");
  return sketch.finish(t.lies(step + 1), t.lieWords(t.letters[hook], lineUp));
}

function upright(sketch: Sketch, x: number, y: number, half: number, width: number): void {
  const spots: Spot[] = [
    [x, y - half],
    [x, y + half],
  ];
  sketch.line(spots, "mark", { width });
}

/** A spot a letter's room past an end, in line with it. */
function beyond(end: Spot, next: Spot): Spot {
  const length = Math.hypot(end[0] - next[0], end[1] - next[1]) || 1;
  return [end[0] + ((end[0] - next[0]) * LETTER) / length, end[1] + ((end[1] - next[1]) * LETTER) / length];
}

/** The shoe over the conduit: from its hub round the angle of the bend. */
function shoeOutline({ radius, angle }: ConduitAtShoe): Flat[] {
  const groove = radius * 0.9;
  const arc = Array.from({ length: 13 }, (_, part): Flat => {
    const turn = toRadians(-20 + ((angle + 20) * part) / 12);
    return [groove * sin(turn), radius - groove * cos(turn)];
  });
  return [[0, radius], ...arc];
}
