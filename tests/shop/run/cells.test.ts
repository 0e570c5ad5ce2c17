/** Cells as they are read from the tables and written into the schedule. [in], [°] */
import { readBench, USUAL_BENCH } from "../../../src/shop/bench/bench";
import { buildRun } from "../../../src/shop/run/buildRun";
import type { BuiltRun, PieceBend } from "../../../src/shop/run/builtRun";
import { readRuns } from "../../../src/shop/run/runsTable";
import { scheduleRun, scheduleTable } from "../../../src/shop/schedule/schedule";
import { readShoes } from "../../../src/shop/shoe/shoeBook";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const EXACT = 9;

describe("reading", () => {
  test.each(["Run", "Raceway", "Size", "Route"])("runs without the column %s are refused", (missing) => {
    const headers = ["Run", "Raceway", "Size", "Route"].filter((header) => header !== missing);
    expect(() => readRuns([headers, ["x", "y", "z"]])).toThrow(`runs must have the column "${missing}"`);
  });

  test.each(["Raceway", "Size"])("shoes without the column %s are refused", (missing) => {
    const headers = ["Raceway", "Size", "Radius"].filter((header) => header !== missing);
    expect(() => readShoes([headers, ["x", 4]])).toThrow(`shoes must have the column "${missing}"`);
  });

  test("what a shoe was made for is read whole: what stands after the size is not passed over", () => {
    const madeFor = (words: string) =>
      readShoes([
        ["Raceway", "Size", "Made for"],
        ["EMT", "1/2", words],
      ]);
    expect(madeFor("RMC 1").problems).toEqual([]);
    for (const [words, got] of [
      ["RMC 1 long", "RMC 1 long"],
      ["RMC 1x", "RMC 1x"],
      ["RMC 9", "9"],
    ] as const) {
      const [problem] = madeFor(words).problems;
      expect(problem!.message).toMatch(/^shoes row 2: Made for must be /);
      expect(problem!.message).toContain(`got "${got}"`);
    }
  });

  test("the usual bench: a hooked end that swings up, 36 in. over the floor, with room all around and no table", () => {
    // Common practice, no source.
    expect(USUAL_BENCH).toEqual({
      ...{ plane: "vertical", curls: "up", swings: "hooked end", height: 36 },
      ...{ roomAbove: Infinity, roomBeside: Infinity, tableDrop: 4, tableLength: 0, tableWidth: 0, supportBeyond: 60 },
    });
  });

  test("a value without its setting is told with its row", () => {
    const range = [
      ["Setting", "Value"],
      [null, 5],
    ];
    expect(() => readBench(range)).toThrow(/^bench row 2: Setting must be one of .*; got an empty cell\.$/);
  });
});

describe("writing", () => {
  const built = (route: string): BuiltRun => buildRun(runOf(route), HALF_EMT);
  /** The run with its first piece's bends changed. */
  const changed = (run: BuiltRun, change: (bend: PieceBend) => Partial<PieceBend>): BuiltRun => {
    const [pull] = run.pulls;
    const [piece] = pull!.pieces;
    const bends = piece!.bends.map((bend) => ({ ...bend, ...change(bend) }));
    return { ...run, pulls: [{ ...pull!, pieces: [{ ...piece!, bends }] }] };
  };

  test("a line of the schedule, cell by cell, under its headers", () => {
    // By hand: the 90 starts at 16, the arrow 0.647 before it; the legs less the gain 8 − 2π are 58.283.
    const cut = expect.closeTo(60 - (8 - 2 * Math.PI), EXACT) as number;
    const [headers, line] = scheduleTable(scheduleRun(built("up 20, east 40")));
    expect(headers!.map((header, at) => [header, line![at]])).toEqual([
      ...[
        ["Run", "A-1"],
        ["Piece", 1],
        ["Cut length", cut],
        ["Bend", 1],
        ["Kind", "stub-up"],
      ],
      ...[
        ["Mark", expect.closeTo(15.353, EXACT) as number],
        ["Line up", "arrow"],
        ["Hook", "datum"],
        ["Angle", 90],
      ],
      ...[
        ["Dial", 90],
        ["Turn", "first bend"],
        ["Plane", 0],
        ["Note", ""],
        ["Quantity", 1],
        ["Pull", 1],
      ],
      ...[
        ["Cut 1/16", `4' 10-5/16"`],
        ["Mark 1/16", `1' 3-3/8"`],
        ["Handbook off", ""],
        ["Job", "Ferry terminal"],
      ],
      ...[
        ["Area", "Pump room"],
        ["Raceway", "EMT"],
        ["Size", "1/2"],
        ["Step", 1],
      ],
    ]);
  });

  test("a plane of almost nothing is 0, not -0, and an angle is without its last digits", () => {
    const run = changed(built("up 30, east 40, down 30"), () => ({ plane: -1e-12, angle: 90.0000000000004 }));
    expect(scheduleRun(run).map((row) => [row.Plane, row.Angle])).toEqual([
      [0, 90],
      [0, 90],
    ]);
  });

  test("an end too short to hold is the one on the hook's side", () => {
    const notes = (run: BuiltRun) => scheduleRun(run).map(({ Note }) => Note);
    // The datum end has 1 in., the far end 1.5: neither has the 2 that the shoe needs, so the usual end is hooked.
    expect(notes(built("up 5, east 5.5"))).toEqual([
      "the datum end has 1 in. to hold; the shoe needs 2 in.: bend it long and cut",
    ]);
    const started = (start: number) => notes(changed(built("up 6, east 5.5"), () => ({ start })));
    expect(started(2)).toEqual([""]);
    expect(started(1.99)[0]).toMatch(/^the datum end has 1\.99 in\. to hold/);
  });
});
