import { buildJob } from "../../../src/shop/job/job";
import { buildRun } from "../../../src/shop/run/buildRun";
import { readRuns } from "../../../src/shop/run/runsTable";
import {
  scheduleRun,
  scheduleJob,
  scheduleTable,
  SCHEDULE_HEADERS,
  type ScheduleRow,
} from "../../../src/shop/schedule/schedule";
import type { Shoe } from "../../../src/shop/shoe/shoe";
import { HALF_EMT, runOf } from "../../support/demoShoe";

/** Digits after the point to which the exact paths are held [in]. */
const EXACT = 9;

const rowsOf = (route: string, shoe: Partial<Shoe> = {}): readonly ScheduleRow[] =>
  scheduleRun(buildRun(runOf(route), { ...HALF_EMT, ...shoe }));

describe("the schedule of one run", () => {
  // Published: Modern Residential Wiring (2021), p. 144: a 10 in. stub with a deduct of 5 is marked at 5.
  test.each([
    [5, 5],
    [6, 4],
  ])("a 10 in. stub with deduct %d is marked at %d", (deduct, mark) => {
    const [row] = rowsOf("stub 10 up, east 60", { deduct });
    expect(row!.Mark).toBeCloseTo(mark, EXACT);
    expect(row).toMatchObject({ Kind: "stub-up", "Line up": "arrow", Hook: "datum", Angle: 90, Plane: 0 });
  });

  // Published: the same, p. 145: the second bend of a back-to-back is marked at the outside distance and lined up with the star.
  test("a 20 in. back-to-back marks the star 20 in. from the back of the first bend", () => {
    const rows = rowsOf("stub 10 up, east 20 back to back, down 10");
    const backOfFirst = 10 - (2 * 4.353 - 2 * Math.PI); // 10 in. from the end, less the gain measured outside
    expect(rows[1]).toMatchObject({ Kind: "back-to-back", "Line up": "star", Hook: "far", Plane: 0 });
    expect(rows[1]!.Mark as number).toBeCloseTo(backOfFirst + 20, EXACT);
    expect(rows[1]!.Note).toContain("star 20 in. from the back of the bend before");
  });

  test("a rise-6 offset at 30° has both marks exact and says how far the handbook spacing is off", () => {
    const rows = rowsOf("east 40, offset 6 up at 30, ahead 40");
    // By hand: setback 4·tan 15° = 1.0717968; arrow lead 5 − 4.353 = 0.647; spacing 12 − (2·1.0717968 − 4π/6) = 11.9508015.
    const setback = 4 * Math.tan(Math.PI / 12);
    expect(rows[0]!.Mark as number).toBeCloseTo(40 - setback - 0.647, EXACT);
    const spacing = 12 - (2 * setback - (4 * Math.PI) / 6);
    expect((rows[1]!.Mark as number) - (rows[0]!.Mark as number)).toBeCloseTo(spacing, EXACT);
    expect(spacing).toBeCloseTo(11.9508, 4);
    expect(rows[1]!["Handbook off"] as number).toBeCloseTo(12 - spacing, EXACT);
    expect(rows[1]!.Note).toContain("spacing 11.9508 in.; handbook (2 × rise) 12 in., 0.0492 in. too long");
    expect(rows.map((row) => row.Turn)).toEqual(["first bend", "turn 180°"]);
  });

  test("a three-bend saddle is bent from its center: the notch first, then the outer bends with the arrow", () => {
    const rows = rowsOf("east 40, saddle 4 up at 45, ahead 40");
    expect(rows.map((row) => [row.Step, row.Bend, row["Line up"], row.Angle, row.Hook, row.Turn])).toEqual([
      [1, 2, "notch", 45, "far", "first bend; put the far end on the hook's side"],
      [2, 1, "arrow", 22.5, "far", "turn 180°"],
      [3, 3, "arrow", 22.5, "datum", "swap the conduit end for end, last bend pointing as before"],
    ]);
    expect(rows[0]!.Note).toMatch(/^the center first; bend 2 of 3/);
    // By hand: the crest clears 4, so the corner stands 4 + 4(1/cos 22.5° − 1); the leg to it is that over sin 22.5°; the
    // outer bend starts its setback before the leg, and the conduit to the center is leg, less setbacks, plus arcs.
    const half = Math.PI / 8;
    const leg = (4 + 4 * (1 / Math.cos(half) - 1)) / Math.sin(half);
    const along = leg - 4 * Math.tan(half / 2) - 4 * Math.tan(half) + 4 * half + 4 * half;
    // Both outer bends are hooked toward the center, so their arrows stand past the arc on the center's side.
    const outer = along - 4 * half - 0.647;
    const [center, first, last] = rows.map(({ Mark }) => Mark as number);
    expect(center! - first!).toBeCloseTo(outer, EXACT);
    expect(last! - center!).toBeCloseTo(outer, EXACT);
  });

  test.each<[string, Partial<Shoe>]>([
    // The straights beside the center are some 8.5 in.
    ["the shoe cannot hold the outer bends beside a bent center", { shortestTail: 9 }],
    ["the dial does not reach the center", { dialTo: 44 }],
  ])("a three-bend saddle is bent from the datum end where %s", (_, shoe) => {
    const rows = rowsOf("east 40, saddle 4 up at 45, ahead 40", shoe);
    expect(rows.map((row) => [row.Step, row.Bend])).toEqual([
      [1, 1],
      [2, 2],
      [3, 3],
    ]);
  });

  test("a saddle without a notch is bent from its center, too, with one swap of the ends", () => {
    const rows = rowsOf("up 30, east 40, saddle 4 up at 50, ahead 40");
    expect(rows.map((row) => [row.Step, row.Bend, row.Hook])).toEqual([
      [1, 1, "datum"],
      [2, 3, "datum"],
      [3, 4, "datum"],
      [4, 2, "far"],
    ]);
  });

  test("a springback of 5° dials 95 for a 90 from zero, or 90 from −5", () => {
    expect(rowsOf("up 20, east 40", { springback: 5 })[0]!.Dial).toBe(95);
    expect(rowsOf("up 20, east 40", { springback: 5, dialStart: -5 })[0]!.Dial).toBe(90);
    expect(rowsOf("up 20, bend 104 east, ahead 40", { springback: 5 })[0]!.Dial).toBe("past 105°");
  });

  test("turns are told as the conduit is rolled: against the rotation of the plane", () => {
    expect(rowsOf("up 30, east 30, north 30").map((row) => [row.Plane, row.Turn])).toEqual([
      [0, "first bend"],
      [90, "turn 90° counterclockwise, seen from the datum end"],
    ]);
    expect(rowsOf("up 30, east 30, south 30")[1]).toMatchObject({
      Plane: -90,
      Turn: "turn 90° clockwise, seen from the datum end",
    });
  });

  test("a run longer than a stick is cut on straight conduit and its cut lengths add up", () => {
    const rows = rowsOf("up 30, east 200");
    expect(rows.map((row) => [row.Piece, row.Kind, row.Note])).toEqual([
      [1, "stub-up", "coupling on the far end"],
      [2, "straight", "coupling on the datum end"],
    ]);
    const cut = rows.reduce((sum, row) => sum + (row["Cut length"] as number), 0);
    expect(cut).toBeCloseTo(230 - (8 - 2 * Math.PI), EXACT);
    expect(rows[0]!["Cut length"]).toBe(120);
  });

  test("a box starts a new pull: its pieces are counted on, its first bend starts a plane of its own", () => {
    const rows = rowsOf("up 30, east 40, box, south 30, up 30");
    expect(rows.map((row) => [row.Pull, row.Piece, row.Plane, row.Turn])).toEqual([
      [1, 1, 0, "first bend"],
      [2, 2, 0, "first bend"],
    ]);
  });
});

const HEADER = ["Run", "Raceway", "Size", "Route", "Quantity"];
const GOOD = ["good", "EMT", "1/2", "up 20, east 40", 1];

describe("the schedule of a job", () => {
  test.each([
    ["an empty route", ["bad", "EMT", "1/2", "", 1], "Route is empty"],
    ["no size", ["bad", "EMT", "", "up 20, east 40", 1], "Size"],
    ["an unknown raceway", ["bad", "garden hose", "1/2", "up 20, east 40", 1], '"garden hose"'],
    ["an unknown size", ["bad", "EMT", "5/16", "up 20, east 40", 1], '"5/16"'],
    ["a size that became a date", ["bad", "EMT", 46054, "up 20, east 40", 1], "46054"],
    [
      "text for the quantity",
      ["bad", "EMT", "1/2", "up 20, east 40", "many"],
      'Quantity must be a number; got "many".',
    ],
    [
      "half a run",
      ["bad", "EMT", "1/2", "up 20, east 40", 0.5],
      "Quantity must be a whole number at least 1 and at most 100000; got 0.5.",
    ],
    ["a quantity nobody means", ["bad", "EMT", "1/2", "up 20, east 40", 1e9], "at most 100000; got 1000000000."],
    ["a negative length", ["bad", "EMT", "1/2", "up -20, east 40", 1], "step 1"],
    ["a bend of 0°", ["bad", "EMT", "1/2", "up 20, bend 0 east, ahead 9", 1], "step 2"],
    ["a bend of 180°", ["bad", "EMT", "1/2", "up 20, bend 180 east, ahead 9", 1], "step 2"],
    ["a leg shorter than its setbacks", ["bad", "EMT", "1/2", "up 20, east 7, down 20", 1], "1 in. short"],
    ["a word nobody knows", ["bad", "EMT", "1/2", "up 20, sideways 40", 1], "step 2"],
    ["a route of 10,000 characters", ["bad", "EMT", "1/2", "up 1, ".repeat(1667), 1], "at most 4000 characters"],
  ])("%s is told in words and the other rows stay whole", (_, bad, message) => {
    const rows = scheduleJob(buildJob({ runs: [HEADER, GOOD, bad, [...GOOD.slice(0, 3), "up 20, east 44", 3]] }));
    expect(rows).toHaveLength(3);
    expect(rows[1]).toMatchObject({ Run: "bad", Kind: "not built", Mark: "" });
    expect(rows[1]!.Note).toContain(message);
    expect([rows[0]!.Mark, rows[2]!.Mark, rows[2]!.Quantity]).toEqual([
      expect.closeTo(15.353, EXACT),
      expect.closeTo(15.353, EXACT),
      3,
    ]);
  });

  test("a missing header stops the whole range, naming it", () => {
    expect(() =>
      readRuns([
        ["Run", "Raceway", "Size"],
        ["a", "EMT", "1/2"],
      ]),
    ).toThrow('runs must have the column "Route"; the header row reads "Run", "Raceway", "Size".');
  });

  test("straight conduit needs no shoe", () => {
    const rows = scheduleJob(buildJob({ runs: [HEADER, ["long", "RMC", "4", "east 90", 1]] }));
    expect(rows[0]).toMatchObject({ Kind: "straight", "Cut length": 90 });
  });

  test("a table has the fixed columns first, a header row and a cell for each", () => {
    const table = scheduleTable(scheduleJob(buildJob({ runs: [HEADER, GOOD] })));
    expect(table[0]!.slice(0, 13).join(" · ")).toBe(
      "Run · Piece · Cut length · Bend · Kind · Mark · Line up · Hook · Angle · Dial · Turn · Plane · Note",
    );
    expect(table.every((row) => row.length === SCHEDULE_HEADERS.length)).toBe(true);
  });
});
