/** DXF by hand: group codes of the AutoCAD DXF reference, coordinates chosen so that swapped axes fail. */
import { readDxf } from "../../src/drawn/file/readDxf";
import { notReadWords } from "../../src/drawn/notReadWords";
import { dxfOf, line, polyline, rowsOf } from "./support";

const points = (entities: (string | number)[], before: (string | number)[] = []) =>
  readDxf(dxfOf(entities, before)).lines.map((own) => own.points);
const near = (point: readonly number[]) => point.map((value) => expect.closeTo(value, 9));

test("lines and polylines in space", () => {
  expect(points([...line("A", [1, 2, 3], [4, 5, 6]), ...polyline("A", [0, 0, 0], [1, 0, 2], [1, 3, 2])])).toEqual([
    [
      [1, 2, 3],
      [4, 5, 6],
    ],
    [
      [0, 0, 0],
      [1, 0, 2],
      [1, 3, 2],
    ],
  ]);
});

test("a bulge of 1 is half a circle, counterclockwise from the first point to the second", () => {
  const [half] = points([0, "LWPOLYLINE", 8, "A", 38, 7, 90, 2, 70, 0, 10, 0, 20, 0, 42, 1, 10, 10, 20, 0]);
  expect(half![0]).toEqual([0, 0, 7]);
  expect(half!.at(-1)).toEqual([10, 0, 7]);
  // From east to west of its center at 5 0 by the south: the middle is 5 south of it.
  expect(half![half!.length >> 1]).toEqual(near([5, -5, 7]));
});

test("an arc runs counterclockwise from its first angle, mirrored where it is extruded downward", () => {
  const arc = [0, "ARC", 8, "A", 10, 1, 20, 2, 30, 3, 40, 4, 50, 0, 51, 90];
  const [up] = points(arc);
  expect([up![0], up!.at(-1)]).toEqual([near([5, 2, 3]), near([1, 6, 3])]);
  const [down] = points([...arc, 210, 0, 220, 0, 230, -1]);
  expect([down![0], down!.at(-1)]).toEqual([near([-5, 2, -3]), near([-1, 6, -3])]);
});

test("a spline of degree 1 is its control polygon; one of degree 2 a parabola through its ends", () => {
  const of = (degree: number, knots: number[], control: number[][]) => [
    0,
    "SPLINE",
    8,
    "A",
    70,
    8,
    71,
    degree,
    ...knots.flatMap((knot) => [40, knot]),
    ...control.flatMap(([x, y, z]) => [10, x!, 20, y!, 30, z!]),
  ];
  const control = [
    [0, 0, 0],
    [4, 8, 2],
    [12, 0, 4],
  ];
  const [straight] = points(of(1, [0, 0, 1, 2, 2], control));
  expect(straight!.map(([, y]) => y)).toEqual(expect.arrayContaining([0, 8]));
  const [bent] = points(of(2, [0, 0, 0, 1, 1, 1], control));
  // Bézier of three points at the half: (P0 + 2 P1 + P2) / 4.
  expect(bent![bent!.length >> 1]).toEqual(near([5, 4, 2]));
  expect([bent![0], bent!.at(-1)]).toEqual([near([0, 0, 0]), near([12, 0, 4])]);
});

test("a block is placed, scaled, turned and takes the layer of its insert; a block in a block too", () => {
  const block = (name: string, ...content: (string | number)[]) => [
    0,
    "BLOCK",
    2,
    name,
    10,
    1,
    20,
    0,
    30,
    0,
    ...content,
    0,
    "ENDBLK",
  ];
  const before = [
    0,
    "SECTION",
    2,
    "BLOCKS",
    ...block("inner", ...line("0", [1, 0, 0], [11, 0, 0])),
    ...block("outer", 0, "INSERT", 8, "0", 2, "inner", 10, 1, 20, 0, 30, 5),
    0,
    "ENDSEC",
  ];
  const { lines } = readDxf(
    dxfOf([0, "INSERT", 8, "EMT 1/2", 2, "OUTER", 10, 100, 20, 200, 30, 0, 41, 2, 42, 2, 43, 2, 50, 90], before),
  );
  expect(lines).toEqual([{ layer: "EMT 1/2", handle: "", points: [near([100, 200, 10]), near([100, 220, 10])] }]);
});

test("what is not read is told with its layer, once for each kind, and where lines meet three by three", () => {
  const layers = [0, "SECTION", 2, "TABLES", 0, "LAYER", 2, "OFF", 62, -7, 0, "LAYER", 2, "ICE", 70, 1, 0, "ENDSEC"];
  const { notRead, rows } = rowsOf(
    dxfOf(
      [
        ...line("OFF", [0, 0, 0], [1, 0, 0]),
        ...line("ICE", [0, 0, 0], [1, 0, 0]),
        0,
        "TEXT",
        8,
        "A",
        0,
        "TEXT",
        8,
        "A",
        0,
        "LWPOLYLINE",
        5,
        "2F",
        8,
        "A",
        70,
        1,
        10,
        0,
        20,
        0,
        10,
        9,
        20,
        0,
        ...line("Y", [0, 0, 0], [60, 0, 0]),
        ...line("Y", [60, 0, 0], [60, 80, 0]),
        ...line("Y", [60, 0, 0], [60, 0, 70]),
      ],
      layers,
    ),
  );
  expect(notRead.map(notReadWords)).toEqual([
    "OFF: LINE: its layer is off",
    "ICE: LINE: its layer is frozen",
    "A: TEXT, 2 times: it is no line",
    "A: LWPOLYLINE 2F: it is closed: a conduit has two ends",
    "Y: lines at 60 0 0: 3 lines meet: say where the box is",
  ]);
  // Nothing is joined there, and nothing is lost.
  expect(rows.map(({ route }) => route).sort()).toEqual(["east 60", "north 80", "up 70"]);
});

test("lines that touch are one run, in whatever order and direction; a point makes the place a box", () => {
  const drawn = [
    ...line("A", [60, 0, 0], [60, 80, 0]),
    ...line("A", [60, 0, 0], [0, 0, 0]),
    ...line("A", [60, 80, 50], [60, 80, 0]),
  ];
  expect(rowsOf(dxfOf(drawn)).rows.map(({ route }) => route)).toEqual(["east 60, north 80, up 50"]);
  const boxed = rowsOf(dxfOf([...drawn, 0, "POINT", 8, "A", 10, 60, 20, 0, 30, 0])).rows;
  expect(boxed.map(({ route }) => route)).toEqual(["east 60, box, north 80, up 50"]);
});

test.each([
  ["AutoCAD Binary DXF\r\n", /^this is a binary DXF; save the drawing as an ASCII DXF\.$/],
  ["AC1032\0\0", /^this is a DWG; save the drawing as an ASCII DXF\.$/],
  ["hello\nthere\n", /^line 1 must be a group code of a DXF; it reads "hello"\.$/],
  ["0\nSECTION\n2\nHEADER\n0\nENDSEC\n0\nEOF\n", /^this is no DXF, or a broken one: it has no section ENTITIES\.$/],
])("%p is refused in words", (text, words) => {
  expect(() => readDxf(text)).toThrow(words);
});

test("blocks that hold each other end, and are told", () => {
  const before = [
    0,
    "SECTION",
    2,
    "BLOCKS",
    0,
    "BLOCK",
    2,
    "B",
    10,
    0,
    20,
    0,
    30,
    0,
    0,
    "INSERT",
    8,
    "0",
    2,
    "B",
    10,
    1,
    20,
    0,
    30,
    0,
    0,
    "ENDBLK",
    0,
    "ENDSEC",
  ];
  const { notRead } = readDxf(dxfOf([0, "INSERT", 8, "A", 2, "B", 10, 0, 20, 0, 30, 0], before));
  expect(notRead.map(notReadWords)).toEqual(["A: INSERT: its blocks hold each other"]);
});

// AutoCAD DXF reference, header, $INSUNITS.
test.each([
  [1, 1],
  [2, 12],
  [4, 1 / 25.4],
  [5, 1 / 2.54],
  [6, 1 / 0.0254],
  [0, null],
])("a drawing whose $INSUNITS is %d has a unit of %d in.", (code, inches) => {
  const text = dxfOf(polyline("A EMT 1/2", [0, 0, 0], [80, 0, 0])).replace(
    "$INSUNITS\n70\n1\n",
    `$INSUNITS\n70\n${code}\n`,
  );
  expect(readDxf(text).unit).toBe(inches);
});
