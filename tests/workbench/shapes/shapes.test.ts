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

interface Entity {
  type: string;
  [code: number]: number;
}

/** Lines and arcs with their numbers by group code: 10 and 20 start or center, 11 and 21 end, 40 radius, 50 and 51 angles. */
function linesAndArcs(dxf: string): Entity[] {
  const entities: Entity[] = [];
  let open: Entity | undefined;
  for (const [code, value] of pairs(dxf)) {
    if (code === 0) {
      open = value === "LINE" || value === "ARC" ? { type: value } : undefined;
      if (open) entities.push(open);
    } else if (open) open[code] = Number(value);
  }
  return entities;
}

const lengthOf = (entity: Entity): number =>
  entity.type === "LINE"
    ? Math.hypot(entity[11]! - entity[10]!, entity[21]! - entity[20]!)
    : (entity[40]! * (entity[51]! - entity[50]!) * Math.PI) / 180;

/** Both ends of a line or an arc. */
function endsOf(entity: Entity): [number, number][] {
  if (entity.type === "LINE")
    return [
      [entity[10]!, entity[20]!],
      [entity[11]!, entity[21]!],
    ];
  return [entity[50]!, entity[51]!].map((angle) => {
    const turned = (angle * Math.PI) / 180;
    return [entity[10]! + entity[40]! * Math.cos(turned), entity[20]! + entity[40]! * Math.sin(turned)];
  });
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
  expect(linesAndArcs(pieceDxf(piece))).toMatchObject([
    { type: "LINE", 10: 0, 20: 0, 11: expect.closeTo(10 - radius, 9), 21: 0 },
    { type: "ARC", 10: expect.closeTo(10 - radius, 9), 20: radius, 40: radius, 50: -90, 51: expect.closeTo(0, 9) },
    {
      type: "LINE",
      10: expect.closeTo(10, 9),
      20: expect.closeTo(radius, 9),
      11: expect.closeTo(10, 9),
      21: expect.closeTo(96, 9),
    },
  ]);
});

test("every flat piece is as long in DXF as it is cut", () => {
  const flat = pieces.filter(({ piece }) => piece.bends.length > 0 && isFlat(piece));
  expect(flat.length).toBeGreaterThan(20);
  for (const { piece } of flat) {
    const parts = linesAndArcs(pieceDxf(piece));
    const length = parts.reduce((sum, part) => sum + lengthOf(part), 0);
    expect(Math.abs(length - piece.cutLength)).toBeLessThan(WRITTEN);
    // Each part begins where the one before it ends.
    parts.slice(1).forEach((part, index) => {
      const gaps = endsOf(part).flatMap(([x, y]) => endsOf(parts[index]!).map(([u, v]) => Math.hypot(x - u, y - v)));
      expect(Math.min(...gaps)).toBeLessThan(WRITTEN);
    });
  }
});

test("an offset comes back parallel: the second bend turns the other way", () => {
  const { runs } = build([
    ["Run", "Raceway", "Size", "Route"],
    ["A", "EMT", "1/2", "east 40, offset 6 up at 30, ahead 48"],
  ]);
  const parts = flatShape(runs[0]!.pulls[0]!.pieces[0]!);
  const [first, last] = [parts[0]!, parts[parts.length - 1]!];
  if (!("from" in first) || !("from" in last)) throw new Error("The piece must begin and end straight.");
  expect([first.to[1], last.from[1], last.to[1]]).toEqual([0, expect.closeTo(6, 9), expect.closeTo(6, 9)]);
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

test("runs.dxf has a 3-D polyline for each pull and a point for each box, in inches, in the run's own layer", () => {
  const all = pairs(runsDxf(runs));
  const count = (code: number, value: string) => all.filter((pair) => pair[0] === code && pair[1] === value).length;
  const pulls = runs.flatMap((built) => built.pulls);
  expect(count(0, "POLYLINE")).toBe(pulls.length);
  const boxes = demoRuns.flatMap((row) => String(row[5]).split(", ")).filter((step) => step === "box");
  expect([count(0, "POINT"), boxes.length]).toEqual([1, 1]);
  const unit = all.findIndex(([code, value]) => code === 9 && value === "$INSUNITS");
  expect(all[unit + 1]).toEqual([70, "1"]);
  const layers = all.filter(
    ([code, value], at) => code === 2 && all.slice(at - 6, at).some((pair) => pair[1] === "LAYER") && value !== "LAYER",
  );
  expect(layers.map(([, name]) => name)).toEqual(expect.arrayContaining(["TH-01_EMT_1-2", "DL-01_PVC-coated_RMC_3-4"]));
});

test("a reader that goes by the flags takes the curves for 3-D: 8 on the polyline, 32 on its vertices", () => {
  let type = "";
  const flags: Record<string, Set<string>> = { POLYLINE: new Set(), VERTEX: new Set() };
  for (const [code, value] of pairs(runsDxf(runs))) {
    if (code === 0) type = value;
    if (code === 70) flags[type]?.add(value);
  }
  expect(flags).toEqual({ POLYLINE: new Set(["8"]), VERTEX: new Set(["32"]) });
});

test("a run is drawn from its Start", () => {
  const { runs } = build([
    ["Run", "Raceway", "Size", "Route", "Start"],
    ["A", "EMT", "1/2", "east 96", "100 20 3"],
  ]);
  const all = pairs(runsDxf(runs));
  const first = all.findIndex(([code, value]) => code === 0 && value === "VERTEX");
  const vertex = all.slice(first, first + 12).filter(([code]) => [10, 20, 30].includes(code));
  expect(vertex.map(([, value]) => Number(value))).toEqual([100, 20, 3]);
  const [, x, y, z] = /^v (\S+) (\S+) (\S+)$/m.exec(runsObj(runs))!;
  expect(Math.hypot(Number(y) - 20, Number(z) - 3)).toBeCloseTo(runs[0]!.shoe.outsideDiameter / 2, 9);
  expect(Number(x)).toBe(100);
});

test("a run with factory elbows is drawn whole; none of its pieces is bent", () => {
  const pvc = build([
    ["Run", "Raceway", "Size", "Route"],
    ["P", "PVC 40", "2", "up 24, east 60, up 24"],
  ]);
  expect(pvc.problems).toEqual([]);
  const [run] = pvc.runs;
  expect(run!.pulls[0]!.pieces.map(({ bends }) => bends.length)).toEqual([0, 0, 0]);
  expect(pairs(runsDxf(pvc.runs)).filter(([code, value]) => code === 0 && value === "POLYLINE")).toHaveLength(1);
  // Rings go round the centerline: their centers reach from the datum to the far end, 60 east and 48 up.
  const vertices = [...runsObj(pvc.runs).matchAll(/^v (\S+) \S+ (\S+)$/gm)].map(([, x, z]) => [Number(x), Number(z)]);
  const last = vertices.slice(-16);
  const mean = (axis: number) => last.reduce((sum, vertex) => sum + vertex[axis]!, 0) / 16;
  expect([mean(0), mean(1)]).toEqual([expect.closeTo(60, 6), expect.closeTo(48, 6)]);
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
    const { shoe, run } = runs[0]!;
    const [east, north, up] = run.start!;
    // The first run goes up first: its first ring lies level, round its start.
    for (const [x, y, z] of vertices.slice(0, 16)) {
      expect(Math.hypot(x! - east, y! - north)).toBeCloseTo(shoe.outsideDiameter / 2, 9);
      expect(z).toBeCloseTo(up, 9);
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
  // Every row but the header and PR-09, and two conduits more for the rack of three.
  expect(runs).toHaveLength(demoRuns.length - 2 + 2);
});

test("names hold nothing that leads out of a folder or into another line, and differ in any case", () => {
  expect(plainName("../../etc/x\ng y")).toBe("__.._etc_x_g_y");
  const name = differentNames();
  expect([name("TH-01"), name("th-01"), name("TH 01"), name("")]).toEqual(["TH-01", "th-01_2", "TH_01", "_"]);
});
