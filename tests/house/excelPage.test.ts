/** docs/excel.md says of each line how it is known: that is held against the page, the tests and the trial's parts. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const root = join(__dirname, "../..");
const page = readFileSync(join(root, "docs/excel.md"), "utf8");
const parts = readdirSync(join(root, "taskpane/trial/parts"))
  .map((name) => readFileSync(join(root, "taskpane/trial/parts", name), "utf8"))
  .flatMap((text) => [...text.matchAll(/\bid: ["`](\w+)/g)].map(([, id]) => id!));

interface Row {
  name: string;
  marks: string[];
  by: string;
}

/** The rows of the table, and what is wrong with them. */
function readRows(text: string): Row[] {
  const section = /\n## What rests on what\n([\s\S]*?)\n## /.exec(text)![1]!;
  const [, , ...lines] = section.split("\n").filter((line) => line.startsWith("|"));
  return lines.map((line) => {
    const [, name = "", marks = "", by = ""] = line.split(/(?<!\\)\|/).map((cell) => cell.trim());
    return { name, marks: marks.split(", "), by };
  });
}

function faults(rows: readonly Row[]): string[] {
  return rows.flatMap(({ name, marks, by }) => {
    const tests = [...by.matchAll(/`(tests\/[^`]+)`/g)].map(([, file]) => file!);
    const waits = [...by.matchAll(/_trial: (\w+)_/g)].map(([, part]) => part!);
    const unknown = marks.filter((mark) => !["documented", "reproduced", "waits"].includes(mark));
    return [
      ...unknown.map((mark) => `${name}: no such mark, ${mark}`),
      ...(marks.includes("documented") && !/\]\(https:\/\//.test(by) ? [`${name}: documented without a source`] : []),
      ...(marks.includes("reproduced") && tests.length === 0 ? [`${name}: reproduced by no test`] : []),
      ...(marks.includes("waits") !== waits.length > 0 ? [`${name}: waits and the trial's parts do not agree`] : []),
      ...tests.filter((file) => !existsSync(join(root, file))).map((file) => `${name}: ${file} is not there`),
      ...waits.filter((part) => !parts.includes(part)).map((part) => `${name}: the trial has no part ${part}`),
    ];
  });
}

test("every line bears its marks, with a source that is linked, tests that exist and parts that the trial has", () => {
  const rows = readRows(page);
  expect(rows.length).toBeGreaterThan(30);
  expect(faults(rows)).toEqual([]);
});

test("every line that the page tells about Excel stands in the table", () => {
  const told = /\n## While you type\n[\s\S]*?\n## Cells as Excel/.exec(page)![0];
  const lines = [...told.matchAll(/^- \*\*(.+?)\.?\*\*/gm)].map(([, name]) => name!);
  expect(lines.length).toBeGreaterThan(15);
  const names = readRows(page).map(({ name }) => name);
  expect(lines.filter((line) => !names.includes(line))).toEqual([]);
  // So do the page's headings, as far as they tell of Excel.
  const headings = ["Where it works", "Installing", "Known differences", "Workbooks as files", "On paper", "Cards"];
  expect(headings.filter((heading) => !names.includes(heading) || !page.includes(`# ${heading}\n`))).toEqual([]);
});

test.each([
  [{ name: "x", marks: ["sure"], by: "" }, /no such mark/],
  [{ name: "x", marks: ["documented"], by: "Microsoft says so" }, /without a source/],
  [{ name: "x", marks: ["reproduced"], by: "somewhere" }, /by no test/],
  [{ name: "x", marks: ["reproduced"], by: "`tests/excel/gone.test.ts`" }, /gone\.test\.ts is not there/],
  [{ name: "x", marks: ["waits"], by: "" }, /do not agree/],
  [{ name: "x", marks: ["waits"], by: "_trial: nothing_" }, /no part nothing/],
])("%j is found", (row, fault) => {
  expect(faults([row]).join()).toMatch(fault);
});
