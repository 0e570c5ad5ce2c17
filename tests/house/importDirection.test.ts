import { spawnSync } from "node:child_process";
import { join } from "node:path";

const root = join(__dirname, "../..");

/** Made-up files that import real ones: rule by file. */
const REFUSED: readonly [file: string, code: string][] = [
  ["src/geometry/x.ts", `export { tailNeeded } from "../shop/shoe/shoe";`],
  ["src/units/x.ts", `export { pathParts } from "../geometry/path";`],
  ["src/raceway/x.ts", `export { readEdition } from "./code/rules";`],
  ["src/shop/shoe/x.ts", `export { runPieces } from "../run/builtRun";`],
  ["src/shop/run/x.ts", `export { buildJob } from "../job/job";`],
  ["src/cutting/model/x.ts", `export { planCuts } from "../solve";`],
  ["src/takeoff/amounts/x.ts", `export { takeoff } from "../lines/takeoff";`],
  ["src/takeoff/cuts/x.ts", `export { planCuts } from "../../cutting/solve";`],
  ["taskpane/totals/x.ts", `export { planCuts } from "../../src/cutting/solve";`],
  ["src/shop/run/y.ts", `export { strings } from "../../../taskpane/strings";`],
  ["src/shop/run/z.ts", `export { answer } from "../../../functions/cell/answer";`],
  ["functions/x.ts", `export { strings } from "../taskpane/strings";`],
  ["taskpane/x.ts", `export { openHeadless } from "../workbench/engine/index";`],
  ["taskpane/run/x.tsx", `export { answer } from "../../functions/cell/answer";`],
];

const ALLOWED: readonly [file: string, code: string][] = [
  ["src/shop/run/v.ts", `export { pathParts } from "../../geometry/path"; export { tailNeeded } from "../shoe/shoe";`],
  ["src/takeoff/cuts/v.ts", `export { planCuts } from "../../cutting";`],
  ["functions/z.ts", `export { tailNeeded } from "../src/shop/shoe/shoe";`],
  ["taskpane/z.ts", `export { tailNeeded } from "../src/shop/shoe/shoe";`],
  [
    "workbench/z.ts",
    `export { tailNeeded } from "../src/shop/shoe/shoe"; export { strings } from "../taskpane/strings";`,
  ],
];

const CLOCK: [file: string, code: string] = ["src/shop/run/clock.ts", "export const now = Date.now();"];

/** Lints made-up files in one process (the linter is an ES module, which jest cannot load). */
function rulesBroken(files: readonly [file: string, code: string][]): Map<string, string[]> {
  const script = `
    import { ESLint } from "eslint";
    const eslint = new ESLint();
    const found = [];
    for (const [file, code] of ${JSON.stringify(files)}) {
      const [result] = await eslint.lintText(code, { filePath: file });
      found.push([file, result.messages.map((message) => message.ruleId)]);
    }
    console.log(JSON.stringify(found));`;
  const run = spawnSync(process.execPath, ["--input-type=module", "-e", script], { cwd: root, encoding: "utf8" });
  return new Map(JSON.parse(run.stdout) as [string, string[]][]);
}

describe("the direction of imports is enforced", () => {
  const broken = rulesBroken([...REFUSED, ...ALLOWED, CLOCK]);

  test.each(REFUSED)("%s may not hold: %s", (file) => {
    expect(broken.get(file)).toEqual(["import-x/no-restricted-paths"]);
  });

  test.each(ALLOWED)("%s may hold: %s", (file) => {
    expect(broken.get(file)).toEqual([]);
  });

  test("the trade code cannot reach for the clock", () => {
    expect(broken.get(CLOCK[0])).toEqual(["no-restricted-globals"]);
  });
});
