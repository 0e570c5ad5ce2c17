/** What the compiler says to somebody who adds a kind of raceway and forgets something. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

const root = join(__dirname, "../..");
const KINDS = join(root, "src/raceway/kinds/index.ts");
const ROOTS = ["src/rules/endRules.ts", "src/takeoff/sticks/stickLots.ts", "src/takeoff/cuts/cutLots.ts"];

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

/** Flexible metal conduit as a record: bent by hand, no sticks worth cutting. */
const flexible = (less: string) =>
  `const flexible = {
    words: ["fmc"], article: "348", sizes: {}, stick: { value: 1200, source: "common stick" }, threaded: false,
    elbows: "metal", supports: { rule: "supports", spacing: 4.5 }, styles: ["set-screw"], shoes: { deducts: {} },
  } as const satisfies RacewayRecord;`.replace(less, "");
const withFlexible = (text: string, less = "") =>
  `import type { RacewayRecord } from "./record";\n${flexible(less)}\n${text.replace('"PVC 80": pvc80,', '"PVC 80": pvc80, FMC: flexible,')}`;

test("the house as it is has none", () => {
  expect(errorsWith(KINDS, (text) => text)).toEqual([]);
});

test("a kind whose rules nobody wrote does not compile: its ends, its sticks, its cuts are named", () => {
  const errors = errorsWith(KINDS, (text) => withFlexible(text)).join("\n");
  for (const rule of ["per end, FMC set-screw", "Couplings with each stick, FMC", "Cut allowance per piece, FMC"]) {
    expect(errors).toContain(rule);
  }
});

test.each(["threaded: false,", 'elbows: "metal",', 'article: "348",', 'styles: ["set-screw"],'])(
  "nor one without its %s",
  (less) => {
    const errors = errorsWith(KINDS, (text) => withFlexible(text, less)).join("\n");
    expect(errors).toContain(`Property '${less.split(":")[0]}' is missing`);
  },
);

test("a rule whose name is misspelled does not compile", () => {
  const file = join(root, "src/takeoff/cuts/cutLots.ts");
  const errors = errorsWith(file, (text) => text.replace("Cut allowance per piece", "Cut allowence per piece"));
  expect(errors.join("\n")).toContain("Cut allowence per piece, EMT");
});
