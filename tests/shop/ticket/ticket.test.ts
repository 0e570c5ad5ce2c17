import { buildJob } from "../../../src/shop/job/job";
import fc from "fast-check";
import { distance } from "../../simulator/frame";
import { USUAL_BENCH } from "../../../src/shop/bench/bench";
import { buildRun } from "../../../src/shop/run/buildRun";
import { jobTickets } from "../../../src/shop/ticket/jobTickets";
import { type Run } from "../../../src/shop/run/runsTable";
import type { Shoe } from "../../../src/shop/shoe/shoe";
import { ticketsOf, type Ticket } from "../../../src/shop/ticket/ticket";
import { ticketText } from "../../../src/shop/ticket/ticketText";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const EXACT = 9;

const tickets = (route: string, cells: Partial<Run> = {}, shoe: Partial<Shoe> = {}): Ticket[] =>
  ticketsOf(buildRun(runOf(route, cells), { ...HALF_EMT, ...shoe }));

const checkOf = ({ checks }: Ticket, start: string): readonly (string | number)[] => {
  const found = checks.filter(({ what }) => what.startsWith(start));
  expect(found).toHaveLength(1);
  return found[0]!.is;
};

describe("check dimensions of a finished piece", () => {
  test("a stub is 10 in. from its end to the back; the far end stands as the route says", () => {
    // By hand: half the OD is 0.353, so the corner stands at 9.647; the other leg is 60 from it.
    const [ticket] = tickets("stub 10 up, east 60");
    expect(checkOf(ticket!, "From the datum end to the back of bend 1")).toEqual([expect.closeTo(10, EXACT)]);
    expect(checkOf(ticket!, "From the back of bend 1 to the far end")).toEqual([expect.closeTo(60.353, EXACT)]);
    expect(checkOf(ticket!, "End to end")).toEqual([expect.closeTo(Math.hypot(9.647, 60), EXACT)]);
    expect(checkOf(ticket!, "Far end")).toEqual([
      expect.closeTo(9.647, EXACT),
      " ahead",
      ", ",
      expect.closeTo(60, EXACT),
      " up",
    ]);
  });

  test("two 90s that face each other are measured back to back, a Z center to center", () => {
    expect(checkOf(tickets("up 20, east 30, down 25")[0]!, "Back to back, bends 1 and 2")).toEqual([
      expect.closeTo(30.706, EXACT),
    ]);
    expect(checkOf(tickets("up 20, east 30, up 25")[0]!, "Center to center")).toEqual([expect.closeTo(30, EXACT)]);
  });

  test("an offset's rise stands between its parallel straights; its piece lies flat", () => {
    const [ticket] = tickets("east 40, offset 6 up at 30, ahead 35");
    expect(checkOf(ticket!, "Straights before bend 1 and after bend 2, face to same face")).toEqual([
      expect.closeTo(6, EXACT),
    ]);
    // By hand: 6 in. at 30° is 12 in. from corner to corner.
    expect(checkOf(ticket!, "Corner to corner, bends 1 and 2")).toEqual([expect.closeTo(12, EXACT)]);
    expect(checkOf(ticket!, "Laid on a level floor")).toEqual(["every bend lies flat"]);
  });

  test("the crest of a three-bend saddle stands at its height, and its ends are in line", () => {
    const [ticket] = tickets("east 40, saddle 3 up at 45, ahead 40");
    expect(checkOf(ticket!, "Crest of bend 2")).toEqual([expect.closeTo(3, EXACT)]);
    expect(checkOf(ticket!, "Straights before bend 1 and after bend 3")).toEqual(["in one line"]);
  });

  test("the far end tells a piece from its mirror image", () => {
    // Up first, then east, then north: for one who looks up along the first leg with east on top (bend 1 up), north is
    // to the right, as it is for one who lies on his back, head to the west.
    const east = checkOf(tickets("up 30, east 20, north 15")[0]!, "Far end");
    const west = checkOf(tickets("up 30, east 20, south 15")[0]!, "Far end");
    expect(east.at(-1)).toBe(" right");
    expect(west.at(-1)).toBe(" left");
    expect(east.filter((part) => typeof part === "number")).toEqual(
      [30, 20, 15].map((each) => expect.closeTo(each, EXACT)),
    );
  });

  test("a sweep's inner shots are not measured one by one", () => {
    const [ticket] = tickets("up 30, sweep 20 in 6, east 40");
    expect(ticket!.bends).toHaveLength(6);
    expect(ticket!.checks.filter(({ what }) => what.startsWith("Corner to corner"))).toHaveLength(0);
  });

  test("a straight piece has none", () => {
    expect(tickets("east 60")[0]!.checks).toEqual([]);
  });
});

describe("ends, joints and notes", () => {
  test("each end says what it goes to", () => {
    const ends = tickets("up 60, east 100, box, south 20", { from: "Panel", to: "Fan" }).map((ticket) => ticket.ends);
    expect(ends).toEqual([
      { datum: "Panel", far: "couples to piece 2" },
      { datum: "couples to piece 1", far: "a box" },
      { datum: "a box", far: "Fan" },
    ]);
  });

  test("a piece that is coupled on says how its first bend points against the last one", () => {
    const [first, second] = tickets("up 60, east 100, north 20");
    expect(first!.join).toBeUndefined();
    // By hand: up then east turns about north, east then north about up; for one who looks east, north is on the left, and
    // from the left to the top is 90° clockwise.
    expect(second!.join).toEqual({ piece: 1, roll: 90 });
    expect(ticketText(second!)).toContain(
      "Coupled on: bend 1 points 90° clockwise from the last bend of piece 1, seen from the datum end",
    );
  });

  test("a dial that does not reach and a tail too short to hold are told", () => {
    const [ticket] = tickets("up 5.5, east 5.5", {}, { springback: 20, shortestTail: 3 });
    expect(ticket!.bends[0]!.dial).toBe("past 105°");
    expect(ticket!.bends[0]!.notes).toEqual([
      "the datum end has 1.5 in. to hold; the shoe needs 3 in.: cut it long and trim it after bending",
      "the dial does not reach this: start it below zero by the springback, or make the bend in two",
    ]);
  });
});

test("which sawn ends are threaded and reamed", () => {
  const sawn = (raceway: string, route: string) =>
    ticketsOf(buildRun(runOf(route, { raceway: raceway as Run["raceway"] }), HALF_EMT)).map(({ sawnEnds }) => sawnEnds);
  expect(sawn("EMT", "up 20, east 30")).toEqual(["ream them"]);
  expect(sawn("RMC", "up 20, east 30")).toEqual([
    "thread and ream the far end; the datum end too, unless it has the stick's own thread",
  ]);
  expect(sawn("RMC", "east 120")).toEqual(["none: a whole stick"]);
});

test("a piece is known by run, number and the code of its shape", () => {
  const [first, , third] = tickets("east 300");
  expect([first!.name, third!.name]).toEqual(["A-1/1", "A-1/3"]);
  expect(first!.code).not.toBe(third!.code);
});

test("the text has the run, the cut, each mark rounded and exact, and the cautions", () => {
  const [ticket] = tickets("stub 10 up, east 60", { name: "Q-7", quantity: 3 }, { springback: 4, dialStart: -2 });
  // By hand: mark 10 − 5; cut 9.647 + 60 less the gain 8 − 2π.
  const cut = 69.647 - (8 - 2 * Math.PI);
  const text = ticketText(ticket!);
  expect(text).toContain("RUN Q-7\nPiece 1 of 1; make 3\n");
  expect(text).toContain(`Cut length: 5' 7-15/16" (${Number(cut.toFixed(3))} in.)`);
  expect(text).toContain('Step 1, bend 1 (stub-up): mark at 5" (5 in.)');
  expect(text).toContain("Dial: 92°, for a finished 90°");
  expect(text).toContain("springback 4° at 90°, dial starts at -2°");
  for (const word of [
    "crushes",
    "swings",
    "Disconnect the power",
    "eye and hand protection",
    "Support long ends",
    "test bend",
    "licensed electrician",
  ]) {
    expect(text).toContain(word);
  }
  expect(ticketText(ticket!, { style: "mm" })).toContain(`Cut length: ${Math.round(cut * 25.4)} mm`);
});

test("a run that cannot be built hides no other", () => {
  const runs = [
    ["Run", "Raceway", "Size", "Route"],
    ["A", "EMT", "1/2", "up 20, east 30"],
    ["B", "EMT", "1/2", "up 20, sideways 30"],
    ["C", "EMT", "9", "up 20"],
    ["D", "EMT", "3/4", "up 20, east 3, up 20"],
    ["E", "EMT", "3/4", "east 300"],
  ];
  const { tickets: made, problems } = jobTickets(buildJob({ runs }));
  expect(made.map(({ run, piece, pieces }) => [run.name, piece, pieces])).toEqual([
    ["A", 1, 1],
    ["E", 1, 3],
    ["E", 2, 3],
    ["E", 3, 3],
  ]);
  expect(problems.map(({ run }) => run)).toEqual(["B", "C", "D"]);
  expect(problems[0]!.message).toContain("step 2");
});

test("the finished piece is as long as its stick: path and cut length agree", () => {
  const leg = fc.integer({ min: 20, max: 60 });
  fc.assert(
    fc.property(leg, leg, leg, fc.constantFrom("north", "south", "up", "down"), (a, b, c, turn) => {
      const [ticket] = tickets(`east ${a}, offset 5 up at 40, ahead ${b}, ${turn} ${c}`, { stick: 480 });
      const { points } = ticket!.path;
      const legs = points.slice(1).reduce((sum, point, index) => sum + distance(point, points[index]!), 0);
      // Gains by hand: 2·4·tan(A/2) − 4·A for two of 40° and one of 90°.
      const gain = (degrees: number) => 8 * Math.tan((degrees * Math.PI) / 360) - (4 * degrees * Math.PI) / 180;
      expect(legs - 2 * gain(40) - gain(90)).toBeCloseTo(ticket!.cutLength, EXACT);
    }),
    { numRuns: 50 },
  );
});

describe("a ticket for a bench", () => {
  const built = () => buildRun(runOf("up 45, east 40, up 12"), HALF_EMT);

  test("comes in the order that the bench has room for, and says so", () => {
    // Bent last, the second 90 would hang the 45 in. stub under a bench 36 in. high.
    const [ticket] = ticketsOf(built(), USUAL_BENCH);
    expect(ticket!.bends.map(({ number }) => number)).toEqual([2, 1]);
    expect(ticket!.bends.map(({ notes }) => notes)).toEqual([
      ["keep this order and these ends: the bench has no room for the usual way"],
      [],
    ]);
  });

  test("keeps the schedule's order on a bench that is high enough, and where none is known", () => {
    const high = ticketsOf(built(), { ...USUAL_BENCH, height: 50 });
    expect(high[0]!.bends.map(({ number }) => number)).toEqual([1, 2]);
    expect(high).toEqual(ticketsOf(built()));
  });

  test("says what is in the way where no order works", () => {
    const [ticket] = ticketsOf(buildRun(runOf("up 45, east 40, up 50"), HALF_EMT), USUAL_BENCH);
    // The end of the 45 in. stub comes down half the OD of 0.706 lower.
    expect(ticket!.bends[1]!.notes).toEqual([
      "on this bench: meets the floor: reaches 45.4 in. below the conduit, the floor is 36 in. below",
    ]);
  });
});
