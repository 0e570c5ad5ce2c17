/** Never plausible and wrong: what is written is measured against what is drawn, by hand here. */
import { compare } from "../../src/drawn/check/compare";
import { buildJob, builtRows } from "../../src/shop/job/job";
import { readDrawing } from "../../src/drawn/file/readDrawing";
import { dxfOf, polyline, rowsOf } from "./support";

const built = (route: string) =>
  builtRows(
    buildJob({
      runs: [
        ["Run", "Raceway", "Size", "Route"],
        ["A", "EMT", "1/2", route],
      ],
    }),
  )[0]!.built;
const same = (point: readonly [number, number, number]) => point;

test("a route that ends an inch short, or long, is an inch off at the end", () => {
  const drawn = [
    [
      [0, 0, 0],
      [0, 0, 40],
      [96, 0, 40],
    ],
  ] as [number, number, number][][];
  expect(compare(built("up 40, east 96"), drawn, [[0]], same).off).toBeLessThan(1e-5);
  expect(compare(built("up 40, east 95"), drawn, [[0]], same)).toEqual({
    off: expect.closeTo(1, 9),
    along: expect.closeTo(136, 9),
  });
  expect(compare(built("up 40, east 97"), drawn, [[0]], same)).toEqual({
    off: expect.closeTo(1, 9),
    along: expect.closeTo(136, 9),
  });
  expect(compare(built("up 40, west 96"), drawn, [[0]], same).off).toBeCloseTo(96, 9);
});

test("sharp corners are bends, and the row says at what radius they are made", () => {
  const [row] = rowsOf(dxfOf(polyline("A EMT 1/2", [0, 0, 0], [0, 0, 40], [96, 0, 40]))).rows;
  expect(row).toMatchObject({
    run: "A",
    route: "up 40, east 96",
    words: "as drawn",
    note: `1 of 1 bends drawn sharp, made at 4": up to 1-11/16" beside the drawn ones`,
  });
});

const wide = (radius: number) => {
  const arc = Array.from({ length: 31 }, (_, at) => {
    const turn = (at * 3 * Math.PI) / 180;
    return [radius - radius * Math.cos(turn), 0, 40 - radius + radius * Math.sin(turn)] as const;
  });
  return rowsOf(dxfOf(polyline("A EMT 1/2", [0, 0, 0], ...arc, [120, 0, 40]))).rows[0];
};

test("a bend much wider than the shoe's is an elbow of whole inches, or a sweep, for the shoe would not put it where it is drawn", () => {
  expect(wide(24)).toMatchObject({ route: "up 40, elbow 24, east 120", words: "as drawn", note: "" });
  expect(wide(23.3)).toMatchObject({ route: "up 40, sweep 23.3, east 120", taken: true, note: "" });
});

test("a bend a little wider than the shoe's is made on the shoe, and the row says how far off that is", () => {
  // The corner stands off the arc by R(√2 − 1): 2.4853 in. for 6 in., 1.6569 for the shoe's 4.
  expect(wide(6)).toMatchObject({ route: "up 40, east 120", words: "as drawn", bendsOff: expect.closeTo(0.8284, 3) });
  expect(wide(6)!.note).toBe(`1 of 1 bends drawn at 6", made at 4": up to 13/16" beside the drawn ones`);
});

test("what cannot be built is not taken, and says why", () => {
  const [row] = rowsOf(dxfOf(polyline("A EMT 1/2", [0, 0, 0], [0, 0, 40], [5, 0, 40], [5, 60, 40]))).rows;
  expect(row).toMatchObject({
    taken: false,
    route: "",
    words: expect.stringMatching(/^not taken: steps 2 and 3: the leg from the bend to the bend is 5 in\. long/),
  });
});

test("a bend that only looks like two of our directions is told by points", () => {
  const [row] = rowsOf(dxfOf(polyline("A EMT 1/2", [0, 0, 0], [80, 0, 0], [120, 30, 50], [120, 90, 50]))).rows;
  expect(row).toMatchObject({ taken: true, words: "as drawn", route: "east 80, to 120 30 50, north 60" });
});

test("four bends of 45° that bring the run back to its line are a saddle; 90s that do are a Z", () => {
  const [row] = rowsOf(dxfOf(polyline("A EMT 1/2", [0, 0, 0], [60, 0, 0], [60, 40, 0], [120, 40, 0]))).rows;
  expect(row).toMatchObject({ route: "east 60, north 40, east 60", words: "as drawn" });
});

describe("a list of points", () => {
  const text = `Run,Raceway,Size,X,Y,Z\nA,EMT,3/4,0,0,0\nA,,,0,0,40 in\nA,,,"8' 0""",0,40 in\nB,EMT,1/2,5 in,5 in,5 in\nC,EMT,1/2,x,0,0\n`;

  test("comes in by the same road; a bad row and a lonely point are told", () => {
    const { rows, notRead } = rowsOf(text, 1, "points.csv");
    expect(rows).toMatchObject([
      { run: "A", raceway: "EMT", size: "3/4", route: "up 40, east 96", words: "as drawn", start: "0 0 0" },
    ]);
    expect(notRead.map(({ layer, what }) => [layer, what])).toEqual([
      ["C", "row 6"],
      ["B", "run"],
    ]);
  });

  test("in feet, and with a column missing", () => {
    expect(rowsOf("Run;East;North;Up\nA;0;0;0\nA;0;0;4\nA;10;0;4", 12, "p.csv").rows).toMatchObject([
      { route: "up 48, east 120", raceway: "EMT" },
    ]);
    expect(() => readDrawing("Run,East,North\nA,1,2", "p.csv")).toThrow(
      'p.csv must have the column "Up"; the header row reads "Run", "East", "North".',
    );
  });
});

test("a list of points in feet and inches is one of inches; a number without a unit in it is not guessed", () => {
  const list = (third: string) =>
    `Run,East,North,Up,Raceway,Size\nA,0,0,0,EMT,1/2\nA,0,0,"4'",,\nA,"10'",0,${third},,\n`;
  // 4 ft up and 10 ft east.
  expect(rowsOf(list(`"4'"`), undefined, "a.csv").rows).toMatchObject([{ route: "up 48, east 120" }]);
  expect(() => rowsOf(list(`"4'"`), 12, "a.csv")).toThrow("the lengths of this list say their units themselves");
  const { rows, notRead } = rowsOf(list("4"), undefined, "a.csv");
  expect(rows).toEqual([]);
  expect(notRead.map(({ what, why }) => `${what}: ${why}`)).toEqual([
    "row 4: Up is 4 without a unit, and other rows have one",
    "run: a row of it cannot be read",
  ]);
});

test("a run of which a point cannot be read is left out, not drawn past it; the others come", () => {
  const text = "Run,East,North,Up,Raceway,Size\nA,0,0,0,EMT,1/2\nA,0,0,\nA,120,0,48\nB,0,0,0,EMT,1/2\nB,90,0,0\n";
  const { rows, notRead } = rowsOf(text, 1, "a.csv");
  expect(rows.map(({ run }) => run)).toEqual(["B"]);
  expect(notRead.map(({ layer, why }) => `${layer}: ${why}`)).toEqual([
    "A: Up is empty",
    "A: a row of it cannot be read",
  ]);
});
