import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type FunctionsMetadata, loadBundle } from "../../workbench/engine";

jest.setTimeout(300000);

const root = join(__dirname, "..", "..");
const read = (name: string) => readFileSync(join(root, "dist", name), "utf8");

beforeAll(() => {
  const script = `import("./tools/build.mjs").then(({ build }) => build(["functions"]))`;
  execFileSync(process.execPath, ["-e", script], { cwd: root, stdio: "ignore" });
});

test("functions.js needs nothing but CustomFunctions", () => {
  // Shadowing every other global a browser or Node could lend it: a use of one of them would throw here.
  const missing = [
    "window",
    "self",
    "document",
    "Office",
    "Excel",
    "OfficeRuntime",
    "process",
    "require",
    "fetch",
    "module",
  ];
  const isolated = `${missing.map((name) => `var ${name};`).join("")}\n${read("functions.js")}`;
  expect(loadBundle(isolated).size).toBeGreaterThan(20);
});

test("every function of functions.json is associated, and nothing else is", () => {
  const { functions } = JSON.parse(read("functions.json")) as FunctionsMetadata;
  expect([...loadBundle(read("functions.js")).keys()].sort()).toEqual(functions.map(({ id }) => id).sort());
});

test("error cells inside a range, and cards, reach the functions; the two settings never stand together", () => {
  // https://github.com/OfficeDev/office-js/issues/4385: allowCustomDataForDataTypeAny covers errors, and with
  // allowErrorForDataTypeAny beside it Excel 2021 with a volume license crashes.
  const { functions, enums, ...settings } = JSON.parse(read("functions.json")) as FunctionsMetadata & { enums: [] };
  expect(enums.length).toBeGreaterThan(0);
  expect(functions.length).toBeGreaterThan(20);
  expect(settings).toEqual({ allowCustomDataForDataTypeAny: true });
});
