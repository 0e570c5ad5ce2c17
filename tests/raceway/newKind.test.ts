/** What the compiler says to somebody who adds a kind of raceway and forgets something. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

const root = join(__dirname, "../..");
const KINDS = join(root, "src/raceway/kinds/index.ts");
const ROOTS = [
  "src/rules/endRules.ts",
  "src/takeoff/sticks/stickLots.ts",
  "src/takeoff/cuts/cutLots.ts",
  "src/rules/stickRules.ts",
];

/** Compiles the files that count by kind, with other words in one file. */
function errorsWith(file: string, change: (text: string) => string): string[] {
  const { config } = ts.readConfigFile(join(root, "tsconfig.json"), (path) => readFileSync(path, "utf8")) as {
    config: { compilerOptions: Record<string, unknown> };
  };
  const { options } = ts.convertCompilerOptionsFromJson({ ...config.compilerOptions, types: [] }, root);
  const host = ts.createCompilerHost(options);
  const read = host.getSourceFile.bind(host);
  host.getSourceFile = (path, target) =>
    path === file ? ts.createSourceFile(path, change(readFileSync(path, "utf8")), target) : read(path, target);
  const program = ts.createProgram({ rootNames: ROOTS.map((path) => join(root, path)), options, host });
  return ts.getPreEmitDiagnostics(program).map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, " "));
}

/** A polyethylene conduit as a record, cut from sticks. */
const other = (less: string) =>
  `const other = {
    words: ["hdpe"], article: "353", sizes: {}, stick: { value: 1200, source: "common stick" }, threaded: false,
    elbows: "metal", ground: "never", supports: { rule: "supports", spacing: 4.5, fromEnd: 3 }, styles: ["set-screw"], shoes: { deducts: {} },
  } as const satisfies RacewayRecord;`.replace(less, "");
const withOther = (text: string, less = "") =>
  `import type { RacewayRecord } from "./record";\n${other(less)}\n${text.replace('"PVC 80": pvc80,', '"PVC 80": pvc80, HDPE: other,')}`;

test("the house as it is has none", () => {
  expect(errorsWith(KINDS, (text) => text)).toEqual([]);
});

test("a kind whose rules nobody wrote does not compile: its ends, its sticks, its cuts are named", () => {
  const errors = errorsWith(KINDS, (text) => withOther(text)).join("\n");
  for (const rule of ["per end, HDPE set-screw", "Couplings with each stick, HDPE", "Cut allowance per piece, HDPE"]) {
    expect(errors).toContain(rule);
  }
});

test.each(["threaded: false,", 'elbows: "metal",', 'article: "353",', 'ground: "never",', 'styles: ["set-screw"],'])(
  "nor one without its %s",
  (less) => {
    const errors = errorsWith(KINDS, (text) => withOther(text, less)).join("\n");
    expect(errors).toContain(`Property '${less.split(":")[0]}' is missing`);
  },
);

test("a rule whose name is misspelled does not compile", () => {
  const file = join(root, "src/takeoff/cuts/cutLots.ts");
  const errors = errorsWith(file, (text) => text.replace("Cut allowance per piece", "Cut allowence per piece"));
  expect(errors.join("\n")).toContain("Cut allowence per piece");
});
