import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { build } from "../../../workbench/shapes/command";
import { pieceDxf, runsDxf } from "../../../workbench/shapes/dxf";
import { differentNames, plainName } from "../../../workbench/shapes/names";
import { runsObj } from "../../../workbench/shapes/obj";
import { flatShape, isFlat, pieceCurve } from "../../../workbench/shapes/pieceShape";

const { runs, problems } = build(demoRuns as unknown[][]);
const pieces = runs.flatMap(({ run, pulls }) =>
  pulls.flatMap(({ pieces }) => pieces.map((piece) => ({ name: run.name, piece }))),
);

/** DXF is lines in pairs: a group code, then its value (AutoCAD DXF reference). */
function pairs(dxf: string): [code: number, value: string][] {
  const lines = dxf.split(/\r?\n/);
  return Array.from({ length: Math.floor(lines.length / 2) }, (_, at) => [
    Number(lines[2 * at]),
    lines[2 * at + 1]!.trim(),
  ]);
}

/** Vertices of the first LWPOLYLINE: x, y and bulge. */
function flatVertices(dxf: string): [x: number, y: number, bulge: number][] {
  const all = pairs(dxf);
  const from = all.findIndex(([code, value]) => code === 0 && value === "LWPOLYLINE");
  const to = all.findIndex(([code], at) => at > from && code === 0);
  const vertices: [number, number, number][] = [];
  for (const [code, value] of all.slice(from, to)) {
    if (code === 10) vertices.push([Number(value), 0, 0]);
    if (code === 20) vertices[vertices.length - 1]![1] = Number(value);
    if (code === 42) vertices[vertices.length - 1]![2] = Number(value);
  }
  return vertices;
}

/** Length along straights and arcs; an arc's angle is four times the arc tangent of its bulge. */
function flatLength(vertices: [x: number, y: number, bulge: number][]): number {
  return vertices.slice(1).reduce((sum, [x, y], index) => {
    const [fromX, fromY, bulge] = vertices[index]!;
    const chord = Math.hypot(x - fromX, y - fromY);
    const angle = 4 * Math.atan(Math.abs(bulge));
    return sum + (angle === 0 ? chord : (chord / (2 * Math.sin(angle / 2))) * angle);
  }, 0);
}

/** The writer keeps this much of a coordinate [in]. */
const WRITTEN = 1e-6;

test("a 90 from up 10, east 96: straights and a true arc, by hand", () => {
  const { runs } = build([
    ["Run", "Raceway", "Size", "Route"],
    ["A", "EMT", "1/2", "up 10, east 96"],
  ]);
  const piece = runs[0]!.pulls[0]!.pieces[0]!;
  const radius = piece.bends[0]!.radius;
  expect(flatVertices(pieceDxf(piece))).toEqual([
    [0, 0, 0],
    // tan 22.5° turns left by 90.
    [expect.closeTo(10 - radius, 9), 0, expect.closeTo(Math.SQRT2 - 1, 9)],
    [expect.closeTo(10, 9), expect.closeTo(radius, 9), 0],
    [expect.closeTo(10, 9), expect.closeTo(96, 9), 0],
  ]);
});

test("every flat piece is as long in DXF as it is cut", () => {
  const flat = pieces.filter(({ piece }) => piece.bends.length > 0 && isFlat(piece));
  expect(flat.length).toBeGreaterThan(20);
  for (const { piece } of flat)
    expect(Math.abs(flatLength(flatVertices(pieceDxf(piece))) - piece.cutLength)).toBeLessThan(WRITTEN);
});

test("an offset comes back parallel: the second bend turns the other way", () => {
  const { runs } = build([
    ["Run", "Raceway", "Size", "Route"],
    ["A", "EMT", "1/2", "east 40, offset 6 up at 30, ahead 48"],
  ]);
  const points = flatShape(runs[0]!.pulls[0]!.pieces[0]!);
  expect(points.filter(({ bulge }) => bulge !== 0).map(({ bulge }) => Math.sign(bulge))).toEqual([1, -1]);
  expect(points[points.length - 1]!.y).toBeCloseTo(6, 9);
});

test("a piece in space ends where the run's own points say, seen from its datum end", () => {
  const { runs } = build([
    ["Run", "Raceway", "Size", "Route"],
    ["A", "EMT", "1/2", "up 30, east 40, south 36"],
  ]);
  const piece = runs[0]!.pulls[0]!.pieces[0]!;
  expect(isFlat(piece)).toBe(false);
  const curve = pieceCurve(piece);
  const end = curve[curve.length - 1]!;
  // Legs 30, 40 and 36 square to each other: the same distance however the piece is turned.
  expect(Math.hypot(...end)).toBeCloseTo(Math.hypot(30, 40, 36), 9);
  expect(pieceDxf(piece)).toContain("POLYLINE");
});

test("runs.dxf has a curve for each pull, in inches, in a layer by size", () => {
  const all = pairs(runsDxf(runs));
  const count = (code: number, value: string) => all.filter((pair) => pair[0] === code && pair[1] === value).length;
  expect(count(0, "POLYLINE")).toBe(runs.reduce((sum, { pulls }) => sum + pulls.length, 0));
  const unit = all.findIndex(([code, value]) => code === 9 && value === "$INSUNITS");
  expect(all[unit + 1]).toEqual([70, "1"]);
  expect(count(8, "PVC-coated_RMC_3-4")).toBeGreaterThan(0);
});

describe("runs.obj", () => {
  const obj = runsObj(runs.slice(0, 3));
  const vertices = [...obj.matchAll(/^v (\S+) (\S+) (\S+)$/gm)].map(([, ...xyz]) => xyz.map(Number));
  const faces = [...obj.matchAll(/^f (.*)$/gm)].map(([, corners]) => corners!.split(" ").map(Number));

  test("has a group for each run and faces between points that are there", () => {
    expect([...obj.matchAll(/^g (.*)$/gm)].map(([, name]) => name)).toEqual(["TH-01", "TH-02", "TH-03"]);
    const used = new Set(faces.flat());
    expect([Math.min(...used), Math.max(...used)]).toEqual([1, vertices.length]);
    expect(used.size).toBe(vertices.length);
  });

  test("is a tube: every point as far from the centerline as the conduit is thick", () => {
    const { shoe } = runs[0]!;
    // The first run goes up first: its first ring lies level, round the datum.
    for (const [x, y, z] of vertices.slice(0, 16)) {
      expect(Math.hypot(x!, y!)).toBeCloseTo(shoe.outsideDiameter / 2, 9);
      expect(z).toBeCloseTo(0, 9);
    }
    expect(vertices.flat().every(Number.isFinite)).toBe(true);
  });

  test("faces look outward", () => {
    const [a, b, , d] = faces[0]!.map((corner) => vertices[corner - 1]!);
    const [u, v] = [b!.map((value, at) => value - a![at]!), d!.map((value, at) => value - a![at]!)];
    const normal = [u[1]! * v[2]! - u[2]! * v[1]!, u[2]! * v[0]! - u[0]! * v[2]!];
    expect(normal[0]! * a![0]! + normal[1]! * a![1]!).toBeGreaterThan(0);
  });
});

test("a run that cannot be built is named, and hides no other", () => {
  expect(problems).toHaveLength(1);
  expect(problems[0]).toMatch(/^PR-09: /);
  expect(runs).toHaveLength(demoRuns.length - 2);
});

test("names hold nothing that leads out of a folder or into another line, and differ in any case", () => {
  expect(plainName("../../etc/x\ng y")).toBe("__.._etc_x_g_y");
  const name = differentNames();
  expect([name("TH-01"), name("th-01"), name("TH 01"), name("")]).toEqual(["TH-01", "th-01_2", "TH_01", "_"]);
});
