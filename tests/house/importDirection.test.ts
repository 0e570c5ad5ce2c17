import { spawnSync } from "node:child_process";
import { join } from "node:path";

const root = join(__dirname, "../..");

const REFUSED: readonly [file: string, code: string][] = [
  ["src/geometry/x.ts", `export { a } from "../shop/shoe";`],
  ["src/units/x.ts", `export { a } from "../geometry/path";`],
  ["src/cutting/x.ts", `export { a } from "../takeoff/quantities";`],
  ["src/shop/x.ts", `export { a } from "../../taskpane/strings";`],
  ["src/shop/y.ts", `export { a } from "../../functions/answer";`],
  ["functions/x.ts", `export { a } from "../taskpane/strings";`],
  ["taskpane/x.ts", `export { a } from "../workbench/engine/index";`],
  ["taskpane/views/x.tsx", `export { a } from "../../functions/answer";`],
];

const ALLOWED: readonly [file: string, code: string][] = [
  ["src/shop/z.ts", `export { a } from "../geometry/path";`],
  ["functions/z.ts", `export { a } from "../src/shop/shoe";`],
  ["taskpane/z.ts", `export { a } from "../src/shop/shoe";`],
  ["workbench/z.ts", `export { a } from "../src/shop/shoe"; export { b } from "../taskpane/strings";`],
];

const CLOCK: [file: string, code: string] = ["src/shop/clock.ts", "export const now = Date.now();"];

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
    expect(broken.get(file)).toEqual(["no-restricted-imports"]);
  });

  test.each(ALLOWED)("%s may hold: %s", (file) => {
    expect(broken.get(file)).toEqual([]);
  });

  test("the trade code cannot reach for the clock", () => {
    expect(broken.get(CLOCK[0])).toEqual(["no-restricted-globals"]);
  });
});
