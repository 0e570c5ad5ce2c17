import { readTable, type Column } from "../../src/table/headerTable";
import { CellFault } from "../../src/units/cellFault";
import { InputError } from "../../src/units/errors";

const COLUMNS: readonly Column[] = [
  { name: "Run", required: true },
  { name: "Size", required: true, also: ["Trade size"] },
  { name: "Quantity", zero: true },
];

describe("readTable", () => {
  test("reads columns in any order, whatever the case, spaces and punctuation, and ignores extra ones", () => {
    const table = readTable(
      [
        ["Remarks", "trade  SIZE", "run:"],
        ["x", 0.75, "A-1"],
      ],
      "runs",
      COLUMNS,
    );
    expect(table.rows.map((row) => [row.rowNumber, row.get("Run"), row.get("Size"), row.get("Quantity")])).toEqual([
      [2, "A-1", 0.75, null],
    ]);
    expect([table.has("Size"), table.has("Quantity")]).toEqual([true, false]);
  });

  test("passes over empty rows above, between and below, and keeps the place of the others", () => {
    const table = readTable(
      [
        ["", null],
        ["Run", "Size"],
        ["  ", ""],
        ["B-2", "1"],
        [null, undefined],
      ],
      "runs",
      COLUMNS,
    );
    expect(table.rows.map((row) => row.rowNumber)).toEqual([4]);
  });

  test("a cell of 0 is empty, as some versions of Excel have it, but in a column that takes 0; FALSE never is", () => {
    const table = readTable(
      [
        [0, 0, 0, 0],
        ["Run", "Size", "Quantity", 0],
        [0, false, 0, 0],
        [0, 0, 0, 0],
        ["0", null, 0, 0],
      ],
      "runs",
      COLUMNS,
    );
    expect(table.rows.map((row) => [row.rowNumber, row.get("Run"), row.get("Size"), row.get("Quantity")])).toEqual([
      [3, null, false, 0],
      [5, "0", null, 0],
    ]);
  });

  test("a cell that holds an error says so under the name of its column, and is not empty", () => {
    const [row] = readTable([["Run", "Size"], [new CellFault("#N/A"), null]], "runs", COLUMNS).rows; // prettier-ignore
    expect(() => row!.get("Run")).toThrow(new InputError("Run holds the error #N/A."));
    expect(row!.get("Size")).toBeNull();
  });

  test.each([
    ["text for a range", "Runs!A1", 'runs must be a range with a header row; got "Runs!A1".'],
    ["an empty range", [[""]], "runs must have a header row; the range is empty."],
    [
      "one header missing",
      [["Run", "Route"]],
      'runs must have the column "Size"; the header row reads "Run", "Route".',
    ],
    ["two headers missing", [["X"]], 'runs must have the columns "Run", "Size"; the header row reads "X".'],
    ["a header twice", [["Run", "Size", "Trade size"]], 'runs must have one column "Size"; the header row has 2.'],
  ])("refuses %s", (_, range, message) => {
    expect(() => readTable(range, "runs", COLUMNS)).toThrow(new InputError(message));
  });
});
