import { buildJob } from "../../../src/shop/job/job";
import { jobOfRuns } from "../../support/jobs";
/** The set-up table's rows, worked out by hand for 1/2 EMT on R 4, deduct 5 (arrow 0.647 before the bend). [in], [°] */
import { USUAL_BENCH, type Bench } from "../../../src/shop/bench/bench";
import { findSetup } from "../../../src/shop/bench/setupSearch";
import { setupTable } from "../../../src/shop/bench/setupTable";
import { buildRun } from "../../../src/shop/run/buildRun";
import type { Piece } from "../../../src/shop/run/builtRun";
import { strokeRoom } from "../../../src/shop/bench/strokeCheck";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const shoes = [
  ["Raceway", "Size", "Radius", "Deduct", "Springback", "Shortest tail"],
  ["EMT", "1/2", 4, 5, 3, 2],
];

function rowsOf(routes: readonly string[], bench: Partial<Bench> = {}): Record<string, string | number>[] {
  const runs = [
    ["Run", "Raceway", "Size", "Route"],
    ...routes.map((route, at) => [`A-${at + 1}`, "EMT", "1/2", route]),
  ];
  const [headers = [], ...rows] = setupTable(buildJob({ runs, shoes }), { ...USUAL_BENCH, ...bench });
  return rows.map((row) => {
    expect(row).toHaveLength(headers.length);
    return Object.fromEntries(headers.map((header, at) => [header, row[at]!]));
  });
}

/** Tries every order of the bends with either end on the hook, without any cleverness. */
function anyOrderWorks(piece: Piece, bench: Bench, done = piece.bends.map(() => false)): boolean {
  if (done.every(Boolean)) return true;
  return piece.bends.some((_, index) => {
    if (done[index]) return false;
    const fits = (["datum", "far"] as const).some(
      (hook) => strokeRoom(piece, done, index, hook, HALF_EMT, bench).blocked.length === 0,
    );
    return (
      fits &&
      anyOrderWorks(
        piece,
        bench,
        done.map((made, place) => made || place === index),
      )
    );
  });
}

const ARC = 2 * Math.PI;
const LEAD = 0.647;

test("the headers, in the order in which the bench reads them", () => {
  const [headers] = setupTable(jobOfRuns([]), USUAL_BENCH);
  expect(headers).toEqual(
    ["Run", "Piece", "Step", "Bend", "Mark", "Line up", "Hook", "Dial", "Turn"].concat([
      "Room above",
      "Room below",
      "Room beside",
      "Reach behind",
      "Reach ahead",
      "Verdict",
    ]),
  );
});

test("one 90 from the datum end", () => {
  const [row, ...more] = rowsOf(["up 45, east 40"]);
  expect(more).toEqual([]);
  expect(row).toMatchObject({ Run: "A-1", Piece: 1, Step: 1, Bend: 1, "Line up": "arrow", Hook: "datum", Dial: 93 });
  expect(row).toMatchObject({ Turn: "first bend", Verdict: "clear" });
  expect(row!["Mark"]).toBeCloseTo(41 - LEAD, 9);
  expect(row!["Room above"]).toBeCloseTo(45.353, 9);
  expect(row!["Room below"]).toBeCloseTo(0.353, 9);
  expect(row!["Room beside"]).toBeCloseTo(0.353, 9);
  expect(row!["Reach ahead"]).toBeCloseTo(36 + ARC, 9);
});

test("an order that the floor asks for: the far 90 first, then half a turn", () => {
  const rows = rowsOf(["up 45, east 40, up 12"]);
  expect(rows.map(({ Step, Bend, Turn }) => [Step, Bend, Turn])).toEqual([
    [1, 2, expect.stringMatching(/^first bend/)],
    [2, 1, expect.stringContaining("turn 180°")],
  ]);
  // Bends start 41 and 41 + 2π + 32 from the datum end; the far end's arrow stands past the arc.
  const starts = [73 + ARC, 41];
  rows.forEach((row, place) => {
    const start = starts[place]!;
    expect(row["Mark"]).toBeCloseTo(row["Hook"] === "datum" ? start - LEAD : start + ARC + LEAD, 9);
    expect(row["Verdict"]).toMatch(/^another order than the schedule's/);
  });
});

test("where no order works, the usual one comes back with what is in the way", () => {
  const rows = rowsOf(["up 45, east 40, up 50"]);
  expect(rows.map(({ Bend }) => Bend)).toEqual([1, 2]);
  // The stub's end swings round the shoe's center, 36 behind and 49 below it: 60.8 when level with it.
  for (const { Verdict } of rows) expect(Verdict).toMatch(/^no order of bends works on this bench/);
  expect(rows[1]!["Verdict"]).toBe(
    "no order of bends works on this bench; meets the floor: reaches 45.4 in. below the conduit, the floor is 36 in. below; " +
      "support the hooked end, 61 in. out",
  );
});

test("long ends want a support, on the side on which they are long", () => {
  // Straights 66 and 36; 16 and 76: the free end lies 2π + 76 ahead before the stroke.
  expect(rowsOf(["east 70, up 40"])[0]!["Verdict"]).toBe("support the hooked end, 66 in. out");
  expect(rowsOf(["up 20, east 80"])[0]!["Verdict"]).toBe("support the free end, 82 in. out");
  expect(rowsOf(["up 20, east 80"], { supportBeyond: 83 })[0]!["Verdict"]).toBe("clear");
  expect(rowsOf(["east 64, up 25"], { supportBeyond: 20 })[0]!["Verdict"]).toBe(
    "support the hooked end, 60 in. out; support the free end, 27 in. out",
  );
});

test("rolls between bends are the planes' differences, brought to half a turn at most", () => {
  const rows = rowsOf(["up 12, east 20, north 20, west 20"], { height: 600 });
  expect(rows.map(({ Bend }) => Bend)).toEqual([1, 2, 3]);
  // up, east, north turns its second plane +90 (clockwise), so the conduit is rolled counterclockwise; east, north, west
  // stays in its plane, and as a 90 back to back with the one before it takes the star, from the far end.
  expect(rows.map(({ Turn }) => Turn)).toEqual([
    "first bend",
    "turn 90° counterclockwise, seen from the datum end",
    "swap the conduit end for end, last bend pointing as before",
  ]);
});

test("what cannot be read or built is told in its own line and hides no other", () => {
  const rows = rowsOf(["up 20, sideways 5", "up 3, east 2", "up 40, east 40"]);
  expect(rows.map(({ Run }) => Run)).toEqual(["A-1", "A-2", "A-3"]);
  expect(rows[0]!["Verdict"]).toMatch(/^not built: step 2: got "sideways 5"/);
  expect(rows[1]!["Verdict"]).toMatch(/^not built: step 2: the leg before the bend is 3 in\. long/);
  expect(rows[1]).toMatchObject({ Piece: "", Step: "", Mark: "" });
  expect(rows[2]!["Verdict"]).toBe("clear");
  const unread = setupTable(buildJob({ runs: [["Run", "Raceway", "Size", "Route"], ["A-9", "copper", "1/2", "up 9"]] }), USUAL_BENCH); // prettier-ignore
  expect(unread[1]![0]).toBe("A-9");
  expect(unread[1]!.at(-1)).toMatch(/^not built: .*got "copper"/);
});

test("straight pieces are not set up, and every bent piece of a run is", () => {
  expect(rowsOf(["east 200"])).toEqual([]);
  const rows = rowsOf(["up 40, east 200, down 30"], { height: 600 });
  expect(rows.map(({ Piece, Step }) => [Piece, Step])).toEqual([
    [1, 1],
    [rows.at(-1)!["Piece"], 1],
  ]);
  expect(rows.at(-1)!["Piece"]).toBeGreaterThan(1);
});

describe("the search", () => {
  const pieceOf = (route: string) => buildRun(runOf(route), HALF_EMT).pulls[0]!.pieces[0]!;

  test("a piece of more than ten bends is worked from one end to the other, the end that must come first", () => {
    // Bent last, the 90 at the far end would hang the datum end's stub under the bench.
    const piece = pieceOf("up 42, sweep 8 in 10, east 32, up 12");
    expect(piece.bends).toHaveLength(11);
    const { order, steps } = findSetup(piece, HALF_EMT, USUAL_BENCH);
    expect(order).toBe("searched");
    expect(steps.map(({ index }) => index)).toEqual([10, 9, 8, 7, 6, 5, 4, 3, 2, 1, 0]);
  });

  test("the ends are swapped no oftener than the bench asks for", () => {
    for (const route of ["up 45, east 40, up 12", "up 45, east 20, north 20, up 14"]) {
      const { order, steps } = findSetup(pieceOf(route), HALF_EMT, USUAL_BENCH);
      expect(order).toBe("searched");
      expect(new Set(steps.map(({ hook }) => hook)).size).toBe(1);
    }
  });

  test("every way that the search finds can be made, and where it finds none even trying all by hand finds none", () => {
    const routes = [
      "up 45, east 20, north 20, up 14",
      "up 45, east 40, up 50",
      "up 12, east 30, up 40, south 25",
      "up 41, offset 6 east at 30, ahead 12, north 20, up 15",
    ];
    for (const route of routes) {
      const piece = pieceOf(route);
      for (const height of [20, 36]) {
        const bench = { ...USUAL_BENCH, height };
        const { possible, steps } = findSetup(piece, HALF_EMT, bench);
        expect({ route, height, possible }).toEqual({ route, height, possible: anyOrderWorks(piece, bench) });
        expect(steps.every(({ room }) => room.blocked.length === 0)).toBe(possible);
        expect(steps.map(({ index }) => index).sort()).toEqual(piece.bends.map((_, place) => place));
      }
    }
  });
});
