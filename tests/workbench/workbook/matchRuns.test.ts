import { matchRuns, tableToCsv } from "../../../workbench/workbook";

const headers = ["Run", "Job", "Raceway", "Size", "Route", "Quantity", "Foreman", "Length in."];
const target = { headers, worked: headers.map((header) => header === "Length in."), names: ["A-1", "b-2"] };

test("headers in any order, case and known spelling find their columns", () => {
  const text = "route,QTY,Trade size,foreman,RUN,Conduit\nup 4,3,1/2,Pat,C-3,EMT";
  const { rows, matched, leftOut } = matchRuns(text, "runs.csv", target);
  expect(rows).toEqual([["C-3", null, "EMT", "1/2", "up 4", 3, "Pat", null]]);
  expect(matched).toContainEqual({ header: "Trade size", column: "Size" });
  expect(matched).toContainEqual({ header: "QTY", column: "Quantity" });
  expect(matched).toHaveLength(6);
  expect(leftOut).toEqual([]);
});

test("a block copied from a sheet is read as well, inch marks and line breaks in its cells too", () => {
  const text = `Run\tRaceway\tSize\tRoute\nC-3\tEMT\t1/2\tup 4', east 12' 6"\nC-4\tEMT\t3/4\t"up 4\nnorth 2"\n`;
  const { rows } = matchRuns(text, "The block", target);
  expect(rows.map((row) => row[4])).toEqual([`up 4', east 12' 6"`, "up 4\nnorth 2"]);
});

test("columns that are left out are told with why", () => {
  const text = "Run,Raceway,Size,Route,Length in.,Check,Paint,,\nC-3,EMT,1/2,up 4,99,ok,red,stray,\n";
  expect(matchRuns(text, "runs.csv", target).leftOut).toEqual([
    { header: "Length in.", why: "worked out" },
    { header: "Check", why: "worked out" },
    { header: "Paint", why: "no such column" },
    { header: "", why: "no header" },
  ]);
  expect(matchRuns(text, "runs.csv", target).rows[0]).toEqual(["C-3", null, "EMT", "1/2", "up 4", null, null, null]);
});

test("a row with more cells than headers is not taken, and the others are", () => {
  const text = "Run,Raceway,Size,Route\nC-3,EMT,1/2,up 4, east 9\nC-4,EMT,1/2,up 4";
  const { rows, ragged } = matchRuns(text, "runs.csv", target);
  expect(rows.map(([name]) => name)).toEqual(["C-4"]);
  expect(ragged).toEqual([2]);
});

test("names that the table has, and rows that need a look, are told and taken", () => {
  const text = "Run,Raceway,Size,Route\nB-2,EMT,1/2,up 4\nC-5,EMT,13,up 4\nC-6,EMT,1/2,";
  const { rows, repeated, problems } = matchRuns(text, "runs.csv", target);
  expect(rows).toHaveLength(3);
  expect(repeated).toEqual(["B-2"]);
  expect(problems).toHaveLength(2);
  expect(problems[0]).toMatch(/^C-5: Size .*13/);
  expect(problems[1]).toMatch(/^C-6: Route is empty/);
});

test("texts stay as written; numbers only in columns of numbers and in the person's own", () => {
  const text = "Run,Raceway,Size,Route,Quantity,Foreman\n007,EMT,1,up 4,x,12.5\n3-4,EMT,1,up 4,,012";
  const { rows } = matchRuns(text, "runs.csv", target);
  expect(rows.map((row) => [row[0], row[3], row[5], row[6]])).toEqual([
    ["007", "1", "x", 12.5],
    ["3-4", "1", null, "012"],
  ]);
});

test("names that look like formulas come through the page's own CSV as they were", () => {
  const names = ["=1+1", "+1+1", "-1+1", "@SUM(1)"];
  const text = tableToCsv([["Run", "Raceway", "Size", "Route"], ...names.map((name) => [name, "EMT", "1/2", "up 4"])]);
  expect(matchRuns(text, "runs.csv", target).rows.map(([name]) => name)).toEqual(names);
});

describe("a list that cannot be read says why", () => {
  const needed = 'runs.csv must have the columns "Raceway", "Size", "Route"; the header row reads "Run", "Path".';
  test.each([
    ["a missing column", "Run,Path\nA,up 4", needed],
    ["a header twice", "Run,Raceway,Size,Trade size,Route\nA", 'one column "Size"; the header row has 2.'],
    ["only headers", "Run,Raceway,Size,Route\n", "rows under its header row; it has none."],
    ["nothing", " \n", "it is empty."],
    ["an open quote", 'Run,Raceway,Size,Route\nA,EMT,1/2,"up 4', "line 2 opens a quote that is never closed."],
  ])("%s", (_, text, message) => {
    expect(() => matchRuns(text, "runs.csv", target)).toThrow(message);
  });
});
