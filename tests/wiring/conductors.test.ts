import { InputError, NotListedError } from "../../src/units/errors";
import { CONDUCTOR_SIZES, conductorArea } from "../../src/wiring/conductors";
import { readConductors } from "../../src/wiring/readConductors";

const brief = (value: unknown): string[] =>
  readConductors(value).map(({ count, size, insulation }) => `${count} ${size} ${insulation}`);

test.each([
  ["3 #10 THHN", ["3 10 THHN"]],
  ["3 #10 THHN + 1 #12 THHN", ["3 10 THHN", "1 12 THHN"]],
  ["3 #8 XHHW, 1 #10 THHN", ["3 8 XHHW", "1 10 THHN"]],
  ["3 #8 XHHW-2 and 1 #10 THWN-2; 2 #14 thhn/thwn-2", ["3 8 XHHW", "1 10 THHN", "2 14 THHN"]],
  ["4 x 1/0 AWG XHHW", ["4 1/0 XHHW"]],
  ["(3) 500 kcmil THHN", ["3 500 THHN"]],
  ["2-250MCM THWN", ["2 250 THHN"]],
  ["3#12 THHN", ["3 12 THHN"]],
  ["3 No. 6 THHN", ["3 6 THHN"]],
  ["12 12 THHN", ["12 12 THHN"]],
  ["3 #10 THHN\n1 #12 THHN", ["3 10 THHN", "1 12 THHN"]],
])("%p is read", (text, kinds) => {
  expect(brief(text)).toEqual(kinds);
});

test("a range is read row by row, whether size and insulation share a cell or not", () => {
  expect(brief([["3 #10 THHN + 1 #12 THHN"]])).toEqual(["3 10 THHN", "1 12 THHN"]);
  expect(brief([[3, "#10 THHN"]])).toEqual(["3 10 THHN"]);
  expect(
    brief([
      ["Count", "Conductor"],
      [3, "#10 THHN"],
      ["", ""],
      [1, "#12 THHN"],
    ]),
  ).toEqual(["3 10 THHN", "1 12 THHN"]);
  expect(
    brief([
      [3, 10, "THHN"],
      [null, null, null],
      [1, "1/0", "XHHW"],
    ]),
  ).toEqual(["3 10 THHN", "1 1/0 XHHW"]);
});

test("the range is left as it was", () => {
  const range = [
    ["Count", "Conductor"],
    [3, "#10 THHN"],
  ];
  readConductors(range);
  expect(range).toEqual([
    ["Count", "Conductor"],
    [3, "#10 THHN"],
  ]);
});

test("every listed size has an area for both insulations, and a thicker conductor a larger one", () => {
  for (const insulation of ["THHN", "XHHW"] as const) {
    const areas = CONDUCTOR_SIZES.map((size) => conductorArea(size, insulation));
    expect(areas).toEqual([...areas].sort((a, b) => a - b));
  }
});

const SHAPE = "count, size and insulation, like 3 #10 THHN + 1 #12 THHN";

test.each([
  ["three wires", `conductors must be ${SHAPE}; got "three wires".`],
  ["#10 THHN", `conductors must be ${SHAPE}; got "#10 THHN".`],
  ["310 THHN", `conductors must be ${SHAPE}; got "310 THHN".`],
  ["", `conductors must be ${SHAPE}; got an empty cell.`],
  [null, `conductors must be ${SHAPE}; got an empty cell.`],
  [3, `conductors must be ${SHAPE}; got 3.`],
  [[[""]], `conductors must be ${SHAPE}; got an empty cell.`],
  ["3 #10", 'conductors: "3 #10" must name its insulation, like 3 #10 THHN.'],
  ["0 #10 THHN", 'conductors: the count must be at least 1; got "0 #10 THHN".'],
  [
    [
      [3, "#10 THHN"],
      [1, "#12"],
    ],
    'conductors row 2: "1 #12" must name its insulation, like 1 #12 THHN.',
  ],
])("%j is refused", (value, message) => {
  expect(() => readConductors(value)).toThrow(new InputError(message));
});

test.each([
  [
    "3 #10 TW",
    'conductors: no area is listed for "TW"; the insulations listed are THHN, THWN, THWN-2, XHHW, XHHW-2 and bare.',
  ],
  [
    "3 #18 THHN",
    'conductors: no area is listed for THHN "18"; sizes are 14, 12, 10, 8, 6, 4, 3, 2, 1, 1/0, 2/0, 3/0, 4/0, 250, 300, ' +
      "350, 400, 500, 600, 700, 750, 800, 900 or 1000.",
  ],
  [
    "3 #10 constructor",
    'conductors: no area is listed for "constructor"; the insulations listed are THHN, THWN, THWN-2, XHHW, XHHW-2 and bare.',
  ],
])("%s is not listed", (text, message) => {
  expect(() => readConductors(text)).toThrow(new NotListedError(message));
});

test("metal, compact strands and what a conductor is for stand beside its type, in any order", () => {
  expect(
    readConductors("3 500 kcmil XHHW-2 compact aluminum, 1 #1/0 Al compact THWN-2 ground, 1 #2 bare"),
  ).toMatchObject([
    { count: 3, size: "500", type: "XHHW-2", metal: "aluminum", compact: true, role: "circuit", area: 0.6082 },
    { count: 1, size: "1/0", type: "THWN-2", metal: "aluminum", compact: true, role: "ground", area: 0.159 },
    { count: 1, size: "2", type: "bare", metal: "copper", compact: false, role: "ground", area: 0.067 },
  ]);
  expect(readConductors("1 #12 THHN N, 1 #12 THHN G").map(({ role }) => role)).toEqual(["neutral", "ground"]);
  expect(() => readConductors("3 #6 bare neutral")).toThrow(
    new InputError('conductors: a bare conductor is a ground; got "3 #6 bare neutral".'),
  );
  expect(() => readConductors("3 #3 THHN compact")).toThrow(
    new NotListedError(
      'conductors: no area is listed for compact THHN "3"; sizes are 6, 4, 2, 1, 1/0, 2/0, 3/0, 4/0, 250, 300, 350, 400, ' +
        "500, 600, 700, 750, 900 or 1000.",
    ),
  );
});
