import { saddleCompare } from "../../../functions/bend/saddles";
import { buildRun } from "../../../src/shop/run/buildRun";
import { scheduleRun } from "../../../src/shop/schedule/schedule";
import { misfit } from "../../simulator/alignRigid";
import { bendAgain } from "../../simulator/bendAgain";
import type { Row } from "../../simulator/readRows";
import { HALF_EMT, onBench, runOf } from "../../support/demoShoe";

/** How near the predicted crest the simulated one must come, and exact marks the wanted crest [in]. */
const PREDICTED = 1e-6;

const HEIGHT = 4;
/** Published: NAVEDTRA 14026, table 5-4: for 45° and a depth of 4, outer marks 10 in. each way of the center mark. */
const OUTER = 10;
const CENTER = 40;

const bend = (number: number, mark: number, lineUp: string, hook: string, angle: number, plane: number): Row => ({
  Run: "S-1",
  Piece: 1,
  "Cut length": 90,
  Bend: number,
  Mark: mark,
  "Line up": lineUp,
  Hook: hook,
  Angle: angle,
  Plane: plane,
});

/** Height of the center bend's arc over the line of the first leg, by the simulated corner points. */
function crestOf(rows: readonly Row[]): number {
  const [start, first, top] = bendAgain(rows, onBench(HALF_EMT))[0]!.points;
  const along = first!.map((value, axis) => value - start![axis]!);
  const toTop = top!.map((value, axis) => value - start![axis]!);
  const length = Math.hypot(...along);
  const run = along.reduce((sum, value, axis) => sum + (value / length) * toTop[axis]!, 0);
  const cornerHeight = Math.sqrt(Math.hypot(...toTop) ** 2 - run ** 2);
  return cornerHeight - HALF_EMT.radius * (1 / Math.cos(Math.PI / 8) - 1);
}

/** What the sheet predicts: crest heights, from the rows of SADDLE.COMPARE. */
function predicted(words: RegExp): number {
  const [header, ...rows] = saddleCompare(HEIGHT, 45, HALF_EMT.radius, 0.647);
  const row = rows.find(([name]) => words.test(String(name)));
  if (!row) throw new Error(`no row ${words} in ${JSON.stringify(rows)}`);
  return row[header!.indexOf("Handbook")] as number;
}

describe("a three-bend saddle at height 4, 45°, R 4", () => {
  test("by handbook marks with the outer bends hooked toward the center, misses the height as the sheet predicts", () => {
    const rows = [
      bend(1, CENTER - OUTER, "arrow", "far", 22.5, 0),
      bend(2, CENTER, "notch", "far", 45, 180),
      bend(3, CENTER + OUTER, "arrow", "datum", 22.5, 180),
    ];
    const crest = crestOf(rows);
    expect(Math.abs(crest - predicted(/crest.*toward/i))).toBeLessThan(PREDICTED);
    expect(Math.abs(crest - HEIGHT)).toBeGreaterThan(0.05);
  });

  test("by handbook marks hooked away from the center, misses it by far more, as the sheet predicts too", () => {
    const rows = [
      bend(1, CENTER - OUTER, "arrow", "datum", 22.5, 0),
      bend(2, CENTER, "notch", "datum", 45, 180),
      bend(3, CENTER + OUTER, "arrow", "far", 22.5, 180),
    ];
    const crest = crestOf(rows);
    expect(Math.abs(crest - predicted(/crest.*away/i))).toBeLessThan(PREDICTED);
    expect(Math.abs(crest - HEIGHT)).toBeGreaterThan(0.5);
  });

  test("by the schedule's exact marks, clears the height and lands on the run's corner points", () => {
    const built = buildRun(runOf("east 40, saddle 4 up at 45, ahead 40"), HALF_EMT);
    const rows = scheduleRun(built);
    expect(Math.abs(crestOf(rows) - HEIGHT)).toBeLessThan(PREDICTED);
    expect(misfit(bendAgain(rows, onBench(HALF_EMT))[0]!.points, built.pulls[0]!.pull.points)).toBeLessThan(PREDICTED);
  });
});
