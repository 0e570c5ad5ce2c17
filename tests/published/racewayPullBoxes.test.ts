/**
 * Pull boxes by NEC 314.28(A).
 * EC&M, code quiz 15 (J. Stallcup), ecmweb.com/print/content/quizzes-code-15: questions 1 and 2 with their answers;
 * questions 3 and 5, whose answers are computed from its rule.
 * eHow 7589496, "How to Size Pull Boxes": 3 in. straight, 3 and 2 in. in an angle pull.
 */
import { distanceToCover, pullBoxDimension, pullBoxRule } from "../../src/raceway/code/pullBox";

test.each([
  ["EC&M 1", "straight", [["2"]], 16],
  ["EC&M 2", "straight", [["2-1/2", "2", "1-1/2"]], 20],
  ["EC&M 3 (computed)", "angle", [["2"]], 12],
  ["EC&M 5 (computed), U pull", "angle", [["2", "2"]], 14],
  ["eHow, straight", "straight", [["3"]], 24],
  ["eHow, angle", "angle", [["3", "2"]], 20],
  ["eHow, between entries", "between", [["3", "2"]], 18],
] as const)("%s: %s pull", (_, kind, rows, inches) => {
  expect(pullBoxDimension(rows, kind)).toBe(inches);
});

// By hand: row 1 is 6 × 2 + 2 + 2 = 16, row 2 is 6 × 2-1/2 = 15; together they would be 6 × 2-1/2 + 6 = 21.
test("each row of entries is reckoned alone, and the largest stands", () => {
  expect(pullBoxDimension([["2", "2", "2"], ["2-1/2"]], "angle")).toBe(16);
});

test("the rule names its section in both editions", () => {
  expect(pullBoxRule("straight", 2020)).toMatchObject({ section: "314.28(A)(1)", edition: 2020 });
  expect(pullBoxRule("angle", 2023)).toMatchObject({ section: "314.28(A)(2)", edition: 2023 });
  expect(pullBoxRule("between", 2023).section).toBe("314.28(A)(2)");
});

// NEC 2023, table 312.6(A), one wire to a terminal, as read: by 314.28(A)(2), exception, to a removable cover opposite the entries.
test.each([
  ["4", 2],
  ["2", 2.5],
  ["1", 3],
  ["1/0", 3.5],
  ["4/0", 4],
  ["250", 4.5],
  ["350", 5],
  ["500", 6],
  ["700", 8],
  ["900", 8],
  ["1000", 10],
])("to a cover opposite entries of conductors of %s: %f in.", (size, inches) => {
  expect(distanceToCover(size)).toBe(inches);
});

test("conductors below 4 AWG measure no box", () => {
  expect(() => distanceToCover("6")).toThrow("No distance to a cover is listed for 6; sizes are 4 AWG to 1250 kcmil.");
});
