/** How the conduit lies at the shoe: what holds for every step of a ticket, whichever end is hooked. Lengths [in]. */
import { conduitAtShoe, type ConduitAtShoe } from "../../../src/drawing/ticket/conduitAtShoe";
import { lieScene } from "../../../src/drawing/ticket/lieScene";
import { buildRun } from "../../../src/shop/run/buildRun";
import { arrowLead, starFromArrow } from "../../../src/shop/shoe/shoe";
import { ticketsOf, type Ticket } from "../../../src/shop/ticket/ticket";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const ticketFor = (route: string): Ticket => ticketsOf(buildRun(runOf(route, { stick: 240 }), HALF_EMT))[0]!;
const lies = (ticket: Ticket): ConduitAtShoe[] => ticket.bends.map((_, step) => conduitAtShoe(ticket, step));
const LEAD = arrowLead(HALF_EMT);

const FLAT = ticketFor("up 20, east 40, down 20");
const SADDLE = ticketFor("up 30, east 40, saddle 4 up at 45, ahead 40");
const TURNED = ticketFor("up 20, east 30, north 30, offset 5 up at 30, ahead 30");

test.each([
  ["flat", FLAT],
  ["saddle", SADDLE],
  ["in three dimensions", TURNED],
])("%s: the held side lies still, straight through the shoe, and the free side comes up", (_, ticket) => {
  lies(ticket).forEach(({ before, after, angle, radius }, step) => {
    const held = ticket.bends[step]!.hook === "datum" ? 0 : -1;
    for (const axis of [0, 1]) expect(after.at(held)![axis]).toBeCloseTo(before.at(held)![axis]!, 9);
    // The end of an arc that starts at the origin along x, by hand: R·sin A, R·(1 − cos A).
    const [x, y] = [radius * Math.sin((angle * Math.PI) / 180), radius * (1 - Math.cos((angle * Math.PI) / 180))];
    expect(Math.min(...after.map(([px, py]) => Math.hypot(px - x, py - y)))).toBeLessThan(1e-9);
    expect(before.some(([px, py]) => Math.abs(py) < 1e-9 && px <= 1e-9)).toBe(true);
  });
});

test("the arrow's mark stands its lead before the bend, the star's past it, whichever end is hooked", () => {
  const [first, second] = lies(FLAT);
  expect(first!.mark).toBeCloseTo(-LEAD, 9);
  expect(FLAT.bends[1]).toMatchObject({ lineUp: "star", hook: "far" });
  expect(second!.mark).toBeCloseTo(-LEAD + starFromArrow(HALF_EMT), 9);
});

test("a notch's mark is at the middle of the arc", () => {
  const step = SADDLE.bends.findIndex(({ lineUp }) => lineUp === "notch");
  expect(step).toBeGreaterThan(0);
  const { mark, angle, radius } = conduitAtShoe(SADDLE, step);
  expect(mark).toBeCloseTo((radius * angle * Math.PI) / 360, 9);
});

test("only the bends made so far are bent", () => {
  // A bent conduit has points of arcs beside its ends: none before the first step.
  const [first, second] = lies(FLAT);
  expect(first!.before.every(([, y]) => Math.abs(y) < 1e-9)).toBe(true);
  expect(second!.before.some(([, y]) => Math.abs(y) > HALF_EMT.radius / 2)).toBe(true);
});

test("the picture names its step, has both ends' letters and keeps to its page", () => {
  const { title, items, width } = lieScene(TURNED, 2, { width: 150, height: 40 });
  expect(title).toBe("How the conduit lies at the shoe in step 3");
  const texts = items.flatMap((item) => (item.kind === "text" ? [item] : []));
  expect(texts.map(({ text }) => text)).toEqual(["D", "F"]);
  for (const { box } of texts) {
    expect(box.left).toBeGreaterThanOrEqual(0);
    expect(box.right).toBeLessThanOrEqual(width);
  }
});
