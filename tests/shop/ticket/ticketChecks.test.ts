/** Everything there is to measure on a finished piece, in its order, by hand for 1/2 EMT (OD 0.706) on R 4. [in] */
import { buildRun } from "../../../src/shop/run/buildRun";
import { ticketsOf, type Ticket } from "../../../src/shop/ticket/ticket";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const EXACT = 9;
const near = (value: number) => expect.closeTo(value, EXACT) as number;
const [END, FAR] = [
  "End to end, center to center",
  "Far end, seen from the datum end with the first straight level and bend 1 up",
];
const FLAT = { what: "Laid on a level floor", is: ["every bend lies flat"] };

const ticketsFor = (route: string): Ticket[] => ticketsOf(buildRun(runOf(route), HALF_EMT));
const checksOf = (route: string) => ticketsFor(route)[0]!.checks;
const whatOf = (route: string): string[] => checksOf(route).map(({ what }) => what);

test("a single 90: to its back from both ends; one bend alone is not said to lie flat", () => {
  expect(checksOf("up 20, east 30")).toEqual([
    { what: "From the datum end to the back of bend 1", is: [near(20.353)] },
    { what: "From the back of bend 1 to the far end", is: [near(30.353)] },
    { what: END, is: [near(Math.hypot(20, 30))] },
    { what: FAR, is: [near(20), " ahead", ", ", near(30), " up"] },
  ]);
});

test("a bend that is no 90: to its corner", () => {
  // By hand: 13 at 60° from straight ahead is 6.5 ahead and 13·sin 60° up.
  expect(checksOf("east 20, bend 60 up, ahead 13")).toEqual([
    { what: "From the datum end to the corner of bend 1", is: [near(20)] },
    { what: "From the corner of bend 1 to the far end", is: [near(13)] },
    { what: END, is: [near(Math.hypot(26.5, 13 * Math.sin(Math.PI / 3)))] },
    { what: FAR, is: [near(26.5), " ahead", ", ", near(13 * Math.sin(Math.PI / 3)), " up"] },
  ]);
});

test("a U comes back: its straights run opposite ways, so nothing is measured from face to face", () => {
  expect(checksOf("up 20, east 30, down 25")).toEqual([
    { what: "From the datum end to the back of bend 1", is: [near(20.353)] },
    { what: "Back to back, bends 1 and 2", is: [near(30.706)] },
    { what: "From the back of bend 2 to the far end", is: [near(25.353)] },
    FLAT,
    { what: END, is: [near(Math.hypot(5, 30))] },
    { what: FAR, is: [near(5), " back", ", ", near(30), " up"] },
  ]);
});

test("a Z: center to center, and its outer straights face to same face", () => {
  expect(checksOf("up 20, east 30, up 25").slice(1, -2)).toEqual([
    { what: "Center to center of the straights before bend 1 and after bend 2", is: [near(30)] },
    { what: "From the back of bend 2 to the far end", is: [near(25.353)] },
    { what: "Straights before bend 1 and after bend 2, face to same face", is: [near(30)] },
    FLAT,
  ]);
});

test("a 90 beside another bend is measured to the corner between them, from either side", () => {
  expect(checksOf("up 20, east 30, bend 40 up, ahead 15")[1]).toEqual({
    what: "Corner to corner, bends 1 and 2",
    is: [near(30)],
  });
  expect(checksOf("up 20, bend 40 east, ahead 30, bend 90 north, ahead 15")[1]).toEqual({
    what: "Corner to corner, bends 1 and 2",
    is: [near(30)],
  });
});

test("a three-bend saddle: its crest once, its ends in one line", () => {
  expect(whatOf("east 40, saddle 3 up at 45, ahead 40")).toEqual([
    "From the datum end to the corner of bend 1",
    "Corner to corner, bends 1 and 2",
    "Corner to corner, bends 2 and 3",
    "From the corner of bend 3 to the far end",
    "Straights before bend 1 and after bend 3",
    "Crest of bend 2 over the straight before bend 1, face to same face",
    FLAT.what,
    END,
    FAR,
  ]);
});

test("an offset: no crest", () => {
  expect(whatOf("east 40, offset 6 up at 30, ahead 35")).toEqual([
    "From the datum end to the corner of bend 1",
    "Corner to corner, bends 1 and 2",
    "From the corner of bend 2 to the far end",
    "Straights before bend 1 and after bend 2, face to same face",
    FLAT.what,
    END,
    FAR,
  ]);
});

test("two sweeps that make a Z: the leg between them, none of their shots, nor straights that start a sweep", () => {
  expect(whatOf("up 30, sweep 20 in 3, east 60, sweep 20 in 3, up 30")).toEqual([
    "From the datum end to the corner of bend 1",
    "Corner to corner, bends 3 and 4",
    "From the corner of bend 6 to the far end",
    FLAT.what,
    END,
    FAR,
  ]);
});

test("a piece that leaves its plane is not said to lie flat, even where some of it does", () => {
  expect(whatOf("up 20, east 30, north 25")).not.toContain(FLAT.what);
});

test("a far end below the first straight", () => {
  // By hand: up 10 and 11 is 21 ahead; 12 up less 30 is 18 down.
  expect(checksOf("up 10, east 12, up 11, west 30").at(-1)!.is).toEqual([near(21), " ahead", ", ", near(18), " down"]);
});

describe("what a later piece starts with", () => {
  test("its own first bend points up and is rolled by nothing, whatever the plane before was", () => {
    const [, second, ...others] = ticketsFor("up 60, east 90, north 50");
    expect(others).toEqual([]);
    expect(second!.bends.map(({ roll, kind, notes }) => [roll, kind, notes])).toEqual([[0, "90", []]]);
    const end = second!.path.points.at(-1)!;
    expect([end[1], end[2]]).toEqual([near(0), near(50)]);
  });

  test("a roll of almost nothing is 0, not -0", () => {
    const built = buildRun(runOf("up 30, east 40, down 30"), HALF_EMT);
    const [pull] = built.pulls;
    const [piece] = pull!.pieces;
    const bends = piece!.bends.map((bend) => ({ ...bend, plane: -1e-12 }));
    const [ticket] = ticketsOf({ ...built, pulls: [{ ...pull!, pieces: [{ ...piece!, bends }] }] });
    expect(ticket!.bends.map(({ roll }) => roll)).toEqual([0, 0]);
  });

  test("it is joined to the last piece with a bend; not where it has the first bend itself", () => {
    expect(ticketsFor("up 30, east 260, north 30").map(({ join }) => join)).toEqual([
      undefined,
      undefined,
      { piece: 1, roll: 90 },
    ]);
    expect(ticketsFor("east 160, up 30").map(({ join, bends }) => [bends.length, join])).toEqual([
      [0, undefined],
      [1, undefined],
    ]);
    // Nor to a bend before a box.
    expect(ticketsFor("up 30, east 40, box, south 160, up 30").map(({ join }) => join)).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  test("a bend of several says which; a plain one beside another has its own word", () => {
    expect(ticketsFor("up 30, east 40, down 30")[0]!.bends.map(({ kind }) => kind)).toEqual([
      "stub-up",
      "back-to-back",
    ]);
    expect(ticketsFor("east 30, offset 6 up at 30, ahead 30")[0]!.bends.map(({ kind }) => kind)).toEqual([
      "offset, 1 of 2",
      "offset, 2 of 2",
    ]);
  });
});
