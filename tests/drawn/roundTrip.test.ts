/** Own drawings out and in, and random ones drawn by the test itself: laws, nothing recorded. */
import { samplePath } from "../../src/geometry/span";
import type { Vec3 } from "../../src/geometry/vector";
import { buildJob, builtRows } from "../../src/shop/job/job";
import { placedPulls } from "../../src/shop/run/placed";
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { runsDxf } from "../../workbench/shapes";
import { drawingOf, randomRuns, UNITS, type RandomRun } from "./randomDrawings";
import { rowsOf } from "./support";

const builtOf = (rows: unknown[][]) => builtRows(buildJob({ runs: rows })).map(({ built }) => built);
const HEADERS = ["Run", "Raceway", "Size", "Route", "Start"];

test("every run of the demo comes back from its own DXF as drawn, in the same kinds of bends", () => {
  const demo = builtOf(demoRuns as unknown as unknown[][]);
  const { rows, notRead, turned } = rowsOf(runsDxf(demo));
  expect([notRead, turned]).toEqual([[], 0]);
  expect(rows.map(({ run }) => run).sort()).toEqual(demo.map(({ run }) => run.name).sort());
  for (const { run, raceway, size, route, start, words, note, farthest } of rows) {
    const own = demo.find((built) => built.run.name === run)!;
    expect([run, words, raceway, size]).toEqual([run, "as drawn", own.run.raceway, own.run.size]);
    expect(farthest!.off).toBeLessThan(0.001);
    const [again] = builtOf([HEADERS, [run, raceway, size, route, start]]);
    // A conduit body is drawn as the sharp corner that it is; whether one stands there or a bend, the lines do not say.
    const bodies = own.pulls.filter(({ pull }) => !["box", "whip", "open"].includes(pull.end)).length;
    expect([run, note]).toEqual([run, bodies === 0 ? "" : expect.stringMatching(/^1 of 2 bends drawn sharp, made at/)]);
    if (bodies > 0) continue;
    expect(again!.pulls).toHaveLength(own.pulls.length);
    own.pulls.forEach(({ pull }, index) => {
      const found = again!.pulls[index]!.pull;
      expect([run, found.corners.map(({ kind }) => kind)]).toEqual([run, pull.corners.map(({ kind }) => kind)]);
      found.points.forEach((point, at) => expect(apart(point, pull.points[at]!)).toBeLessThan(0.001));
    });
  }
});

test("a drawing comes back to its Start, and a turned one is turned to north and says so", () => {
  const runs = builtOf([
    HEADERS,
    ["A", "EMT", "3/4", "up 40, east 120, offset 6 north at 30, ahead 60", "100 -20.5 3"],
  ]);
  expect(rowsOf(runsDxf(runs)).rows[0]).toMatchObject({ start: "100 -20.5 3", words: "as drawn" });
  const angle = (17 * Math.PI) / 180;
  const turned = runsDxf(runs).replace(/^ ?10\n(\S+)\n ?20\n(\S+)$/gm, (_, x: string, y: string) => {
    const [a, b] = [Number(x), Number(y)];
    return `10\n${a * Math.cos(angle) - b * Math.sin(angle)}\n20\n${a * Math.sin(angle) + b * Math.cos(angle)}`;
  });
  const found = rowsOf(turned);
  expect(found.turned).toBeCloseTo(17, 6);
  expect(found.rows[0]).toMatchObject({ route: "up 40, east 120, offset 6 north at 30, ahead 60", words: "as drawn" });
});

const apart = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** How far a point stands off a chain of straight lines. */
function offChain(point: Vec3, chain: readonly Vec3[]): number {
  const offs = chain.slice(1).map((to, at) => {
    const from = chain[at]!;
    const [way, away] = [to.map((value, axis) => value - from[axis]!), point.map((value, axis) => value - from[axis]!)];
    const square = way.reduce((sum, value) => sum + value * value, 0);
    const share = Math.min(1, Math.max(0, way.reduce((sum, value, axis) => sum + value * away[axis]!, 0) / square));
    return Math.hypot(...way.map((value, axis) => value * share - away[axis]!));
  });
  return Math.min(...offs);
}

/** How far a run that was written is from the one that was drawn, both bent on the shop's shoe; arcs in chords of 3°. */
function farthest(own: RandomRun, row: { run: string; raceway: string; size: string; route: string }): number {
  const [again] = builtOf([HEADERS, [row.run, row.raceway, row.size, row.route, ""]]);
  return Math.max(
    ...own.pulls.map(({ points, corners }, index) => {
      const drawn = samplePath({ points, radii: corners.map(({ radius }) => radius) }, 3);
      const written = samplePath(placedPulls(again!)[index]!, 3);
      const every = (chain: readonly Vec3[]) => chain.filter((_, at) => at % 3 === 0 || at === chain.length - 1);
      return Math.max(
        ...every(drawn).map((point) => offChain(point, written)),
        ...every(written).map((point) => offChain(point, drawn)),
      );
    }),
  );
}

/** A quarter of an inch is the limit of what is taken, besides what the row says of its bends; a chord of 22.5° hides as much again of a bend of 10 in. [in] */
const WRONG = 0.25 + 10 * (1 - Math.cos((11.25 * Math.PI) / 180));

/**
 * 500 runs: seven of the kinds of joints each at most, sweeps in shots among them. A fifth of the millimeters are not taken,
 * because a tenth of a millimeter hides the short straights of their sweeps; each of those says so.
 */
test.each([
  ["inches, 4 decimals", 170, 11, 0.98, 0.98],
  ["feet, 5 decimals", 170, 12, 0.98, 0.98],
  ["millimeters, 1 decimal", 160, 13, 0.92, 0.84],
] as const)(
  "random runs drawn in %s with chords of 3 to 22.5°: nothing taken is wrong, nearly all are taken",
  (unit, count, seed, taken, asDrawn) => {
    const runs = randomRuns(count, seed);
    const { rows, notRead } = rowsOf(drawingOf(runs, UNITS[unit], (at) => 3 + (19.5 * (at % 27)) / 26));
    expect(notRead).toEqual([]);
    expect(rows).toHaveLength(count);
    const good = rows.filter((row) => row.taken);
    expect(good.length / count).toBeGreaterThanOrEqual(taken);
    expect(good.filter(({ words }) => words === "as drawn").length / count).toBeGreaterThanOrEqual(asDrawn);
    let worst = 0;
    for (const row of good) {
      const own = runs.find(({ name }) => name === row.run)!;
      worst = Math.max(worst, farthest(own, row) - row.bendsOff);
      expect([row.run, worst < WRONG]).toEqual([row.run, true]);
    }
    for (const row of rows.filter((row) => !row.taken))
      expect(row).toMatchObject({ route: "", words: expect.stringMatching(/^not taken: .{20}/) });
  },
);

test("meters with 3 decimals hide arcs: what its words would put more than 1/4 in. off is not taken, with where and how far", () => {
  const runs = randomRuns(40, 7);
  const { rows } = rowsOf(drawingOf(runs, UNITS["meters, 3 decimals"], (at) => 3 + (19.5 * (at % 27)) / 26));
  const off = rows.filter(({ words }) =>
    /^not taken: what its route would build is off by \S+" at .* along\.$/.test(words),
  );
  expect(off.length).toBeGreaterThan(0);
  expect(off.every(({ taken, route }) => !taken && route === "")).toBe(true);
  for (const row of rows.filter((row) => row.taken)) expect(row.farthest!.off).toBeLessThanOrEqual(0.25);
});
