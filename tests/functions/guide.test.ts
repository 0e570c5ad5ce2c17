import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isAnswer, printCell } from "../../tools/guide/answers";
import { readDocComments, readSource } from "../../tools/guide/docComments";

const root = join(__dirname, "../..");
const help = join(root, "docs", "help");
const docs = readDocComments(join(root, "functions"));
const page = (id: string): string => readFileSync(join(help, `${id.toLowerCase()}.html`), "utf8");

test("docs/ says what the code says", () => {
  const { status, stderr } = spawnSync(process.execPath, [join(root, "tools/guide.mjs"), "--check"], {
    encoding: "utf8",
  });
  expect(stderr).toBe("");
  expect(status).toBe(0);
});

test("every function has its page, and every page its function", () => {
  const pages = readdirSync(help).filter((name) => name.endsWith(".html"));
  expect(pages.sort()).toEqual(["index.html", ...docs.map(({ id }) => `${id.toLowerCase()}.html`)].sort());
});

const plain = (html: string): string =>
  html
    .replace(/<[^>]*>/g, "")
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, "&");

interface Printed {
  readonly formula: string;
  /** Rows of printed cells; a message is one cell. */
  readonly rows: readonly (readonly string[])[];
}

/** Tables are cut short on a page. */
const MOST_ROWS = 21;

/** Every formula of a page with what is printed for it. */
function printedOn(id: string): Printed[] {
  const formula = '<code class="call">(.*?)</code>';
  const line = new RegExp(`<div class="line[^"]*">${formula}(?:<output[^>]*>|<p>)(.*?)</(?:output|p)>`, "gs");
  const sheet = new RegExp(`<div class="sheet">${formula}.*?<table>(.*?)</table>`, "gs");
  const cells = (row: string): string[] =>
    [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)].map(([, cell]) => plain(cell!));
  const rows = (table: string): string[][] => [...table.matchAll(/<tr>(.*?)<\/tr>/gs)].map(([, row]) => cells(row!));
  return [
    ...[...page(id).matchAll(line)].map(([, call, result]) => ({ formula: plain(call!), rows: [[plain(result!)]] })),
    ...[...page(id).matchAll(sheet)].map(([, call, table]) => ({ formula: plain(call!), rows: rows(table!) })),
  ];
}

const printed = docs.flatMap(({ id }) => printedOn(id));
/** Those that read no cells: they can be evaluated by themselves. */
const alone = printed.filter(({ formula }) => !/\[#All\]|\bA2:/.test(formula));

test("the evaluate command gives every answer, table and message that the pages print", () => {
  const folder = mkdtempSync(join(tmpdir(), "guide-"));
  try {
    const file = join(folder, "formulas.txt");
    writeFileSync(file, alone.map(({ formula }) => `${formula}\n`).join(""));
    const script = 'require(process.argv[1]).main(["--json", "--file", process.argv[2]])';
    const { stdout } = spawnSync(process.execPath, ["-e", script, join(root, "dist/tools/evaluate.cjs"), file], {
      encoding: "utf8",
    });
    const answers = JSON.parse(stdout) as unknown[];
    expect(answers).toHaveLength(alone.length);
    answers.forEach((answer, index) => {
      const { formula, rows } = alone[index]!;
      const table = (Array.isArray(answer) ? answer : [[answer]]) as unknown[][];
      const shown = table.slice(0, MOST_ROWS);
      expect({
        formula,
        rows: shown.map((row, at) => row.map((cell, column) => printedAs(cell, rows[at]?.[column]))),
      }).toEqual({
        formula,
        rows,
      });
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("every function has an example that can be evaluated by itself", () => {
  const shown = docs.filter(({ id }) =>
    alone.some(({ formula, rows }) => formula.startsWith(`=CONDUIT.${id}(`) && !rows[0]![0]!.startsWith("#")),
  );
  expect(shown.map(({ id }) => id)).toEqual(docs.map(({ id }) => id));
});

/** An answer of the command as a page prints it: a number to as many decimals as stand there, four at least. */
function printedAs(answer: unknown, beside = ""): string {
  if (answer === null) return "";
  if (typeof answer === "number") {
    return String(Number(answer.toFixed(Math.max(4, /\.(\d+)$/.exec(beside)?.[1]?.length ?? 0))));
  }
  if (typeof answer === "boolean") return answer ? "TRUE" : "FALSE";
  const { error, message } = answer as { error?: string; message?: string };
  return error === undefined ? String(answer) : `${error} ${message}`;
}

test("each page prints its example with the answer that the comment gives", () => {
  for (const { example, answer } of docs) {
    const rows = printed.find(({ formula }) => formula === example)?.rows ?? [];
    const [first = []] = rows;
    const named = answer.split(", ");
    if (rows.length === 1) expect({ example, answer: first.join() }).toEqual({ example, answer });
    else if (named.at(-1) === "…")
      expect({ example, answer: first.slice(0, named.length - 1) }).toEqual({ example, answer: named.slice(0, -1) });
    else expect({ example, answer: first }).toEqual({ example, answer: named });
  }
});

test("pages load nothing from elsewhere and run nothing", () => {
  for (const { id } of docs) {
    expect(page(id)).not.toMatch(/<script|\son\w+=|src=|url\(|@import/i);
    const links = [...page(id).matchAll(/(?:href|xlink:href)="([^"]*)"/g)].map(([, link]) => link!);
    expect(links.filter((link) => !/^[a-z.]+\.(html|css)$/.test(link))).toEqual([]);
    expect(links.filter((link) => !readdirSync(help).includes(link))).toEqual([]);
  }
});

test("an answer that is off in its last digit, or a table with another header, is not the answer", () => {
  expect(isAnswer("6.2832", [[2 * Math.PI]])).toBe(true);
  expect(isAnswer("6.2831", [[2 * Math.PI]])).toBe(false);
  expect(isAnswer("6.28", [[2 * Math.PI]])).toBe(false);
  expect(isAnswer("0.39375", [[0.39375]])).toBe(true);
  expect(isAnswer("Run, Piece, …", [["Run", "Piece", "Mark"]])).toBe(true);
  expect(isAnswer("Run, Mark, …", [["Run", "Piece", "Mark"]])).toBe(false);
  expect(isAnswer("Run, Piece", [["Run", "Piece", "Mark"]])).toBe(false);
  expect(isAnswer("#N/A none", [[{ code: "#N/A", message: "none" }]])).toBe(false);
});

test("cells print as the guide shows them", () => {
  expect([1 / 3, 12, -0.00001, true, null, 'up 4"'].map((cell) => printCell(cell))).toEqual([
    "0.3333",
    "12",
    "0",
    "TRUE",
    "",
    'up 4"',
  ]);
});

const comment = (lines: string): string =>
  `/**\n${lines
    .split("\n")
    .map((line) => ` * ${line}`)
    .join("\n")}\n */\nexport function half(length: any, part?: any): number { return 0; }`;

const TAGS =
  "@customfunction HALF\n@param {any} length [in] above 0\n@param {any} [part] which half\n@returns {number} half [in]";

test("a doc comment is read in its parts", () => {
  const text = comment(
    `Half of a length.\n\nRounds nothing.\nExample: =CONDUIT.HALF(3) //=> 1.5\nSource: derived.\n${TAGS}`,
  );
  expect(readSource("lengths", text)).toEqual([
    {
      id: "HALF",
      family: "lengths",
      summary: "Half of a length.",
      remarks: "Rounds nothing.",
      example: "=CONDUIT.HALF(3)",
      answer: "1.5",
      source: "derived.",
      arguments: [
        { name: "length", optional: false, unit: "in", text: "above 0" },
        { name: "part", optional: true, unit: "", text: "which half" },
      ],
      returns: "half [in]",
    },
  ]);
});

test.each([
  ["no example", "Half.\n\nSource: derived.", 'HALF: its comment has no line "Example: …".'],
  ["no source", "Half.\n\nExample: =CONDUIT.HALF(3) //=> 1.5", 'HALF: its comment has no line "Source: …".'],
  [
    "an example of another function",
    "Half.\n\nExample: =CONDUIT.THIRD(3) //=> 1\nSource: derived.",
    "HALF: its example must read",
  ],
  [
    "an example without its answer",
    "Half.\n\nExample: =CONDUIT.HALF(3)\nSource: derived.",
    "HALF: its example must read",
  ],
])("a doc comment with %s is refused", (_, lines, message) => {
  expect(() => readSource("lengths", comment(`${lines}\n${TAGS}`))).toThrow(message);
});
