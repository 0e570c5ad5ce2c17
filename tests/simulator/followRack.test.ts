/**
 * A rack made from the printed tickets of its conduits: each is bent by its words alone and laid at its place beside the
 * first, its first bend turned the way the first one's is. They must come to lie parallel, at the rack's spacing.
 */
import fc from "fast-check";
import { buildJob, builtRows, unbuiltRows } from "../../src/shop/job/job";
import { ticketsOf } from "../../src/shop/ticket/ticket";
import { ticketText, type TicketTextOptions } from "../../src/shop/ticket/ticketText";
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { alignRigid } from "./alignRigid";
import { followTickets } from "./followTicket";
import { blend, distance, inner, type Point } from "./frame";

/** Ten decimals, added up over a run [in]. */
const EXACT = 1e-6;

const WAYS: Record<string, Point> = {
  ...{ up: [0, 0, 1], down: [0, 0, -1], north: [0, 1, 0], south: [0, -1, 0], east: [1, 0, 0], west: [-1, 0, 0] },
};

interface RackOnPaper {
  /** The first leg's way and the side of the rack, words of the row; the way the first bend turns. */
  readonly first: string;
  readonly turns: Point;
  readonly side: string;
  readonly spacing: number;
  readonly tickets: readonly (readonly string[])[];
}

const ticketsOfRack = (runs: unknown[][], options: TicketTextOptions): string[][] => {
  const job = buildJob({ runs });
  expect(unbuiltRows(job).map(({ problem }) => problem)).toEqual([]);
  return builtRows(job).map(({ built }) => ticketsOf(built).map((ticket) => ticketText(ticket, options)));
};

/** How far from parallel at the rack's spacing the conduits lie, at either end of each leg [in]. */
function offParallel({ first, turns, side, spacing, tickets }: RackOnPaper): number {
  const shapes = tickets.map((texts, place) => {
    const [pull, ...more] = followTickets(texts);
    expect(more).toEqual([]);
    const begin = blend(place * spacing, WAYS[side]!, 0, WAYS[side]!);
    const next = blend(1, begin, 1, WAYS[first]!);
    return alignRigid(pull!.points, [begin, next, blend(1, next, 1, turns)]);
  });
  const [one, ...others] = shapes as [Point[], ...Point[][]];
  const offs = others.flatMap((points, index) => {
    expect(points).toHaveLength(one.length);
    return one.slice(1).flatMap((to, leg) => {
      const [from, wanted] = [one[leg]!, (index + 1) * spacing];
      return [points[leg]!, points[leg + 1]!].map((end) => Math.abs(beside(from, to, end) - wanted));
    });
  });
  return Math.max(...offs);
}

/** How far a point stands beside a line. */
function beside(from: Point, to: Point, point: Point): number {
  const length = distance(from, to);
  const way = blend(1 / length, to, -1 / length, from);
  const off = blend(1, point, -1, from);
  return distance(off, blend(inner(off, way), way, 0, way));
}

const HEAD = ["Run", "Raceway", "Size", "Route", "Rack"];
const rack = (
  first: string,
  turns: Point,
  side: string,
  route: string,
  options: TicketTextOptions = { exact: true },
) => ({
  ...{ first, turns, side, spacing: 3 },
  tickets: ticketsOfRack([HEAD, ["A", "EMT", "1/2", route, `3 at 3 ${side}`]], options),
});

test("the demo's rack of three: 3 in. apart along every leg", () => {
  const rows = demoRuns.filter(([run], at) => at === 0 || run === "WS-01");
  const tickets = ticketsOfRack(rows as unknown[][], { exact: true });
  expect(tickets).toHaveLength(3);
  // Five feet up, then east; the others lie to the south.
  expect(offParallel({ first: "up", turns: WAYS["east"]!, side: "south", spacing: 3, tickets })).toBeLessThan(EXACT);
});

test.each([
  ["turns away from the rack and toward it", "up", "east", "west", "up 60, east 90, south 70, up 60"],
  ["an offset toward the rack's side", "east", "north", "north", "east 60, offset 6 north at 30, ahead 70"],
  ["an offset square to it", "east", "up", "north", "east 60, offset 6 up at 45, ahead 70, north 60"],
  [
    "a rolling offset, 4 up and 3 north",
    "east",
    [0, 0.6, 0.8] as Point,
    "south",
    "east 60, offset 4 up 3 north at 30, ahead 80",
  ],
  ["a kick, and a turn out of its plane", "north", "east", "east", "north 70, kick 30 east, ahead 80, up 60"],
  ["a saddle square to the rack", "east", "up", "north", "east 70, saddle 3 up at 45, ahead 70"],
  ["sweeps that nest around one center", "up", "east", "east", "up 60, sweep 24, east 90"],
  ["sweeps nested on their outside", "up", "east", "west", "up 60, sweep 24, east 90, sweep 20, south 70"],
] as const)("%s", (_, first, turns, side, route) => {
  const toward = typeof turns === "string" ? WAYS[turns]! : turns;
  expect(offParallel(rack(first, toward, side, route))).toBeLessThan(EXACT);
});

test("as printed to a sixteenth they are parallel within what the rounding lets them be", () => {
  // Eight marks and cuts of half a sixteenth on each of two conduits, and half of 0.01° over 20 ft for each of two bends.
  const allowed = 2 * (8 / 32 + 2 * 240 * ((0.005 * Math.PI) / 180));
  const off = offParallel(rack("up", WAYS["east"]!, "south", "up 60, east 100, south 70", { style: "feet" }));
  expect(off).toBeGreaterThan(0);
  expect(off).toBeLessThan(allowed);
});

test("random racks come to lie parallel", () => {
  const across = (way: string) =>
    Object.keys(WAYS).filter((other) => inner(WAYS[way] ?? [0, 0, 0], WAYS[other]!) === 0);
  let seen = 0;
  fc.assert(
    fc.property(
      fc.constantFrom("up", "east", "south"),
      fc.array(fc.record({ turn: fc.nat(3), leg: fc.integer({ min: 60, max: 110 }), sweeps: fc.boolean() }), { minLength: 1, maxLength: 4 }), // prettier-ignore
      fc.nat(3),
      (first, turns, at) => {
        const side = across(first)[at]!;
        const steps = [`${first} 70`];
        let way: string = first;
        for (const { turn, leg, sweeps } of turns) {
          way = across(way)[turn]!;
          steps.push(...(sweeps ? ["sweep 20"] : []), `${way} ${leg}`);
        }
        const runs = [HEAD, ["A", "EMT", "1/2", steps.join(", "), `3 at 3 ${side}`]];
        if (unbuiltRows(buildJob({ runs })).length > 0) return;
        seen += 1;
        const tickets = ticketsOfRack(runs, { exact: true });
        const turnsTo = WAYS[across(first)[turns[0]!.turn]!]!;
        expect(offParallel({ first, turns: turnsTo, side, spacing: 3, tickets })).toBeLessThan(EXACT);
      },
    ),
    { numRuns: 80, seed: 33 },
  );
  expect(seen).toBeGreaterThan(40);
});

test.each([
  [
    "a mark an inch off",
    (text: string) =>
      text.replace(/mark at (\d+)\.(\d+) in\./, (_, whole, part) => `mark at ${Number(whole) + 1}.${part} in.`),
  ],
  ["a turn the other way", (text: string) => text.replace(/ counterclockwise/, " clockwise").replace(/(?<!counter)clockwise, seen/, "counterclockwise, seen")], // prettier-ignore
])("%s on one ticket is noticed", (_, spoil) => {
  const made = rack("up", WAYS["east"]!, "south", "up 60, east 90, south 70, up 60");
  const spoiled = { ...made, tickets: made.tickets.map((texts, place) => (place === 1 ? texts.map(spoil) : texts)) };
  expect(spoiled.tickets).not.toEqual(made.tickets);
  expect(offParallel(made)).toBeLessThan(EXACT);
  // An inch across the rack's side puts a conduit √(3² + 1²) from the first.
  expect(offParallel(spoiled)).toBeGreaterThan(0.16);
});
