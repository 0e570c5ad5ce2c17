import { spawnSync } from "node:child_process";
import { join } from "node:path";

const root = join(__dirname, "../..");

/** Lints a made-up file and returns the rules it breaks. */
function rulesBroken(file: string, code: string): string[] {
  const run = spawnSync(
    process.execPath,
    [join(root, "node_modules/eslint/bin/eslint.js"), "--stdin", "--stdin-filename", file, "--format", "json"],
    { cwd: root, input: code, encoding: "utf8" },
  );
  const [result] = JSON.parse(run.stdout) as { messages: { ruleId: string }[] }[];
  return result!.messages.map((message) => message.ruleId);
}

describe("the direction of imports is enforced", () => {
  test.each([
    ["src/geometry/x.ts", `export { a } from "../shop/shoe";`],
    ["src/units/x.ts", `export { a } from "../geometry/path";`],
    ["src/cutting/x.ts", `export { a } from "../takeoff/quantities";`],
    ["src/shop/x.ts", `export { a } from "../../taskpane/strings";`],
    ["src/shop/x.ts", `export { a } from "../../functions/answer";`],
    ["functions/x.ts", `export { a } from "../taskpane/strings";`],
    ["taskpane/x.ts", `export { a } from "../workbench/engine/index";`],
    ["taskpane/views/x.tsx", `export { a } from "../../functions/answer";`],
  ])("%s may not hold: %s", (file, code) => {
    expect(rulesBroken(file, code)).toEqual(["no-restricted-imports"]);
  });

  test.each([
    ["src/shop/x.ts", `export { a } from "../geometry/path";`],
    ["functions/x.ts", `export { a } from "../src/shop/shoe";`],
    ["taskpane/x.ts", `export { a } from "../src/shop/shoe";`],
    ["workbench/x.ts", `export { a } from "../src/shop/shoe"; export { b } from "../taskpane/strings";`],
  ])("%s may hold: %s", (file, code) => {
    expect(rulesBroken(file, code)).toEqual([]);
  });

  test("the trade code cannot reach for the clock or the page", () => {
    expect(rulesBroken("src/shop/x.ts", "export const now = Date.now();")).toEqual(["no-restricted-globals"]);
  });
});
