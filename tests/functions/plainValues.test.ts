/** Arguments as Excel hands them over. Shapes of cell values: Microsoft, Excel JavaScript API reference (ExcelApi 1.16). */
import { bendArc } from "../../functions/bend/bends";
import { jobSchedule } from "../../functions/job/jobs";
import { lengthText } from "../../functions/bend/lengths";
import { plainArgument } from "../../functions/cell/plainValues";
import { runLengthOf } from "../../functions/job/runs";
import { CellFault } from "../../src/units/cellFault";
import { quoteValue } from "../../src/units/errors";
import { cellError } from "../support/cellError";

const notAvailable: Excel.NotAvailableErrorCellValue = {
  type: "Error",
  errorType: "NotAvailable",
  basicType: "Error",
  basicValue: "#N/A",
};
const card: Excel.EntityCellValue = {
  type: "Entity",
  text: "96 in.",
  basicType: "Error",
  basicValue: "#VALUE!",
  properties: { Value: { type: "Double", basicType: "Double", basicValue: 96 } },
};

const single: [what: string, value: unknown, plain: unknown][] = [
  ["a number", 30, 30],
  ["a text", "EMT", "EMT"],
  ["an omitted argument", null, null],
  ["a Double", { type: "Double", basicType: "Double", basicValue: 30 } satisfies Excel.DoubleCellValue, 30],
  [
    "a formatted number",
    { type: "FormattedNumber", basicType: "Double", basicValue: 0.5, numberFormat: "# ?/?" } satisfies Excel.CellValue,
    0.5,
  ],
  ["a String", { type: "String", basicType: "String", basicValue: "EMT" } satisfies Excel.StringCellValue, "EMT"],
  ["a Boolean", { type: "Boolean", basicType: "Boolean", basicValue: true } satisfies Excel.BooleanCellValue, true],
  ["an Empty", { type: "Empty", basicType: "Empty", basicValue: "" } satisfies Excel.EmptyCellValue, null],
  ["an error", notAvailable, new CellFault("#N/A")],
  ["the runtime's own error", new CustomFunctions.Error(CustomFunctions.ErrorCode.divisionByZero), new CellFault("#DIV/0!")], // prettier-ignore
  ["a card of this add-in", card, 96],
  ["another entity", { ...card, properties: {} }, "96 in."],
  ["an entity that shows nothing", { type: "Entity", basicType: "Error", basicValue: "#VALUE!" }, new CellFault("#VALUE!")], // prettier-ignore
  [
    "a picture in a cell",
    { type: "WebImage", address: "https://example.com/a.png", basicType: "Error", basicValue: "#VALUE!" },
    new CellFault("#VALUE!"),
  ],
  ["an object that is no cell value", { rise: 6 }, new CellFault("#VALUE!")],
];

test.each(single)("%s", (_, value, plain) => {
  expect(plainArgument(value)).toEqual(plain);
  expect(plainArgument([[1, value]])).toEqual([[1, plain]]);
});

test("an array in one cell is its rows for an argument, its first element in a range", () => {
  const array: Excel.ArrayCellValue = {
    type: "Array",
    elements: [
      [
        { type: "Double", basicValue: 5 },
        { type: "String", basicValue: "arrow" },
      ],
    ],
  };
  expect(plainArgument(array)).toEqual([[5, "arrow"]]);
  expect(plainArgument([[array, 2]])).toEqual([[5, 2]]);
});

test("a range of plain cells is not copied; the rows of any other are new, the range given stays as it was", () => {
  const plain = [["Run", null], [1, ""]]; // prettier-ignore
  expect(plainArgument(plain)).toBe(plain);
  const given = [["Run"], [notAvailable]];
  plainArgument(given);
  expect(given[1]![0]).toBe(notAvailable);
});

test("a range of one empty cell is as good as left out", () => {
  const run = ["up 36, east 60", "EMT", "1/2"] as const;
  const empty = { type: "Empty", basicType: "Empty", basicValue: "" };
  for (const blank of [null, "", empty]) {
    expect(plainArgument([[blank]])).toBeNull();
    expect(runLengthOf(...run, [[blank]])).toBe(runLengthOf(...run));
  }
  expect(plainArgument([[0]])).toEqual([[0]]);
  expect(plainArgument([[null, null]])).toEqual([[null, null]]);
});

const double = (basicValue: number) => ({ type: "Double", basicType: "Double", basicValue });
const text = (basicValue: string) => ({ type: "String", basicType: "String", basicValue });

test("functions take objects for numbers and texts, and a card for its value", () => {
  expect(bendArc(double(90), double(4))).toBe(bendArc(90, 4));
  expect(runLengthOf(text("up 36, east 60"), text("EMT"), text("1/2"), null as never)).toBe(
    runLengthOf("up 36, east 60", "EMT", "1/2"),
  );
  expect(lengthText(card)).toBe(`8' 0"`);
});

test("an argument that is an error is refused as one", () => {
  const reference = { type: "Error", errorType: "Ref", basicType: "Error", basicValue: "#REF!" };
  expect(cellError(() => bendArc(90, reference))).toBe("#VALUE! argument 2 holds the error #REF!.");
  expect(cellError(() => bendArc(notAvailable, 4))).toBe("#N/A argument 1 holds the error #N/A.");
});

test("an error cell costs its own row, which says which error it holds and where", () => {
  const headers = ["Run", "Raceway", "Size", "Route", "Quantity"].map(text);
  const good = ["A-1", "EMT", "1/2", "up 36, east 60"].map(text);
  const table = jobSchedule([
    headers,
    [...good, double(2)],
    [notAvailable, ...good.slice(1), double(1)],
    [...good.slice(0, 3), notAvailable, double(1)],
    ...[2, 3].map(() => headers.map(() => ({ type: "Empty", basicType: "Empty", basicValue: "" }))),
  ]);
  const [run, kind, note, quantity] = ["Run", "Kind", "Note", "Quantity"].map((name) => table[0]!.indexOf(name));
  expect(table.slice(1).map((row) => [row[run!], row[kind!], row[quantity!]])).toEqual([
    ["A-1", "stub-up", 2],
    ["row 3", "not built", ""],
    ["A-1", "not built", ""],
  ]);
  expect(table.slice(2).map((row) => row[note!])).toEqual(["Run holds the error #N/A.", "Route holds the error #N/A."]);
});

test("no message prints an object", () => {
  const quoted = [new CellFault("#N/A"), { rise: 6 }, [[1]], null].map(quoteValue);
  expect(quoted).toEqual(["#N/A", "a value that is no number or text", "a range of cells", "an empty cell"]);
});
