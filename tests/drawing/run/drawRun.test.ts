import { drawRun } from "../../../src/drawing/run/drawRun";
import type { RunDrawing } from "../../../src/drawing/run/runDrawing";
import { readRoute } from "../../../src/route/text/readRoute";
import { resolveRoute } from "../../../src/route/resolveRoute";
import { apart, inches, labelFaults, readBack, type XY } from "../measure";

const run = (route: string, more: Partial<RunDrawing["pulls"][number]> = {}): RunDrawing => ({
  name: "A-1",
  outsideDiameter: 0.706,
  pulls: resolveRoute(readRoute(route), 4).pulls.map(({ points, corners }) => {
    return { path: { points, radii: corners.map(({ radius }) => radius) }, ...more };
  }),
});

const BOXED = run("up 48, east 150, north 60", { couplings: [100], straps: [30, 130] });

/** The long straights, leg by leg, as drawn. */
const legs = (scene: ReturnType<typeof drawRun>): XY[][] =>
  readBack(scene)
    .lines("conduit-thin")
    .filter((line) => line.length === 2);

test("plan: legs lie to scale, east right and north up; the riser is a ring", () => {
  const scene = drawRun(BOXED, { view: "plan", width: 450, show: inches });
  const lines = legs(scene);
  // Derived: 150 less two setbacks of 4, and 60 less one.
  const east = lines.find(([a, b]) => Math.abs(a![1] - b![1]) < 0.01)!;
  const north = lines.find(([a, b]) => Math.abs(a![0] - b![0]) < 0.01)!;
  expect(apart(east[0]!, east[1]!) / apart(north[0]!, north[1]!)).toBeCloseTo(142 / 56, 3);
  expect(east[1]![0]).toBeGreaterThan(east[0]![0]);
  expect(north[1]![1]).toBeLessThan(north[0]![1]);
  expect(readBack(scene).circles("shape").length).toBeGreaterThan(2);
});

test("the scale bar is as long as it says", () => {
  const scene = drawRun(BOXED, { view: "plan", width: 450, show: inches });
  const drawn = readBack(scene);
  const bar = drawn.lines("dimension").find((line) => line.length === 4)!;
  const east = legs(scene).find(([a, b]) => Math.abs(a![1] - b![1]) < 0.01)!;
  const scale = apart(east[0]!, east[1]!) / 142;
  const length = Number(
    /^(\d+) in\.$/.exec(drawn.texts.find(({ at }) => at[0] > bar[3]![0] && Math.abs(at[1] - bar[1]![1]) < 5)!.text)![1],
  );
  expect(apart(bar[1]!, bar[2]!) / scale).toBeCloseTo(length, 1);
});

test("couplings, straps and boxes stand where they are along the conduit, and the key names them", () => {
  const straight = run("east 200", { couplings: [50], straps: [20, 170] });
  const drawn = readBack(drawRun(straight, { view: "plan", show: inches }));
  const [line] = drawn.lines("conduit-thin");
  const share = (x: number): number => ((x - line![0]![0]) / (line![1]![0] - line![0]![0])) * 200;
  const coupling = drawn.lines("mark")[0]!;
  expect(share(coupling[0]![0])).toBeCloseTo(50, 1);
  const straps = drawn
    .lines("extension")
    .filter((each) => Math.abs(each[0]![0] - each[1]![0]) < 0.01)
    .slice(0, 2);
  expect(straps.map((each) => share(each[0]![0]))).toEqual([expect.closeTo(20, 1), expect.closeTo(170, 1)]);
  expect(drawn.lines("shape")).toHaveLength(3);
  expect(drawn.texts.map(({ text }) => text)).toEqual(
    expect.arrayContaining(["box", "coupling", "strap", "datum end"]),
  );
});

test("a piece on its own shows no boxes", () => {
  const drawn = readBack(
    drawRun(run("east 50, north 40", { start: "open", end: "coupling" }), { view: "plan", show: inches }),
  );
  expect(drawn.lines("shape")).toHaveLength(0);
  expect(drawn.lines("mark").length).toBeGreaterThan(0);
  expect(drawn.texts.map(({ text }) => text)).not.toContain("box");
});

test("where one conduit passes over another, the nearer is drawn later, with a gap before it", () => {
  // The first leg lies on the floor; the last crosses over it, 40 up. Seen from above the last is nearer.
  const crossing = run("east 100, north 50, up 40, west 50, south 100");
  const order = legs(drawRun(crossing, { view: "plan", show: inches }));
  const isFloor = ([a, b]: XY[]): boolean => Math.abs(a![1] - b![1]) < 0.01 && b![0] > a![0];
  const isOver = ([a, b]: XY[]): boolean => Math.abs(a![0] - b![0]) < 0.01 && b![1] > a![1];
  expect(order.findIndex(isOver)).toBeGreaterThan(order.findIndex(isFloor));
  const below = legs(drawRun(crossing, { view: { azimuth: 0, elevation: -90 }, show: inches }));
  const up = ([a, b]: XY[]): boolean => Math.abs(a![0] - b![0]) < 0.01 && b![1] < a![1];
  expect(below.findIndex(up)).toBeLessThan(below.findIndex(isFloor));
});

test("a leg whose length finds no room is told under the drawing, none is lost", () => {
  const texts = readBack(drawRun(BOXED, { view: "plan", show: inches }))
    .texts.map(({ text }) => text)
    .join(" ");
  expect(texts).toContain("datum end to bend 1 48 in.");
  for (const leg of ["150 in.", "60 in."]) expect(texts).toContain(leg);
});

test("bends are numbered through all pulls, and those to be pointed out are ringed", () => {
  const two = run("up 40, east 90, box, east 60, north 50");
  const drawn = readBack(drawRun(two, { view: "isometric", show: inches, highlight: [2] }));
  expect(drawn.texts.map(({ text }) => text)).toEqual(expect.arrayContaining(["1", "2"]));
  expect(drawn.circles("highlight")).toHaveLength(1);
});

test("the description tells every leg and bend in order", () => {
  const scene = drawRun(run("up 48, east 150"), { view: "plan", show: inches });
  expect(scene.title).toBe("A-1: plan, seen from above");
  // Derived: 48 + 150 − 0.42920 · 4 = 196.283, to the sixteenth 196.3125.
  expect(scene.description).toBe("leg 48 in., bend 90°, leg 150 in.; 196.3125 in. of conduit.");
});

test("a factory elbow is called one, in whichever pull it is", () => {
  const whole = run("up 48, east 100, box, up 30, bend 30 east, ahead 30, bend 60 up, ahead 30");
  const [first, second] = whole.pulls;
  const scene = drawRun({ ...whole, pulls: [first!, { ...second!, elbows: [1] }] }, { view: "plan", show: inches });
  expect(scene.description.match(/(bend|elbow) \d+°/g)).toEqual(["bend 90°", "bend 30°", "elbow 60°"]);
});

const RUNS = [
  "up 48, east 150, offset 6 up at 30, east 80, north 60, down 30",
  "east 100, north 80, up 60",
  "up 4', north 10', saddle 4 up at 45, north 8', west 40, box, west 60, up 30, north 50, east 160",
  "up 60",
  "east 20, offset 8 up 12 north at 45, east 20",
];
const VIEWS = ["plan", "elevation", "isometric", { azimuth: 60, elevation: 25 }] as const;

test.each(RUNS.flatMap((route) => VIEWS.map((view) => [route, view] as const)))(
  "%s, %j: labels clear",
  (route, view) => {
    for (const width of [320, 450]) {
      expect(labelFaults(drawRun(run(route), { view, width, show: inches }))).toEqual([]);
    }
  },
);
