import { bendAgain } from "./bendAgain";
import { piece, SHOE } from "./onePiece";
import { rowsOf } from "./readRows";

describe("rows that cannot be followed", () => {
  test.each([
    ["run A-1 piece 1 bend 1: Mark is not a number", piece(60, [{ mark: Number.NaN }])],
    ["run A-1 piece 1 bend 1: Line up is none of arrow, star, notch", piece(60, [{ mark: 5, lineUp: "rim" }])],
    ["run A-1 piece 1 bend 1: Hook is none of datum, far", piece(60, [{ mark: 5, hook: "" }])],
    ["bend 1 starts at -1.35", piece(60, [{ mark: -2 }])],
    ["past the cut at 11", piece(11, [{ mark: 5 }])],
    ["bend 2 starts at 10.647", piece(60, [{ mark: 5 }, { mark: 10 }])],
    ["Piece is empty", [{ ...piece(60, [])[0], Piece: "" }]],
    ["gives two cut lengths", [...piece(60, [{ mark: 5 }]), { ...piece(61, [{ mark: 9 }])[0], Bend: 2 }]],
    ["is out of order", piece(60, [{ mark: 5 }, { mark: 30 }]).reverse()],
  ])("%s", (message, rows) => {
    expect(() => bendAgain(rows, SHOE)).toThrow(message);
  });
});

test("a table with its header row reads as rows, columns in any order", () => {
  const table = [
    ["Mark", "Run", "Piece", "Bend", "Line up", "Hook", "Angle", "Plane", "Cut length", "Note"],
    [5, "A-1", 1, 1, "arrow", "datum", 90, 0, 60, ""],
  ];
  expect(bendAgain(rowsOf(table), SHOE)).toEqual(bendAgain(piece(60, [{ mark: 5 }]), SHOE));
});

test("pulls of a run are bent apart", () => {
  const rows = [
    ...piece(60, [{ mark: 5 }]).map((row) => ({ ...row, Pull: 1 })),
    ...piece(40, [], 2).map((row) => ({ ...row, Pull: 2 })),
  ];
  expect(bendAgain(rows, SHOE).map(({ pull, length }) => [pull, length])).toEqual([
    ["1", expect.closeTo(60, 9)],
    ["2", 40],
  ]);
});
