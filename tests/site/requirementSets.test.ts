import { readFileSync } from "node:fs";
import { join } from "node:path";
import { codeSets, compareVersions, manifestSets, uncovered } from "../../tools/site/requirementSets";

jest.setTimeout(120_000);

const root = join(__dirname, "../..");
const sets = manifestSets(readFileSync(join(root, "manifest.xml"), "utf8"));
const { apis: all, asked } = codeSets(root);
const apis = all.filter(({ shapeOnly }) => !shapeOnly);
const shapes = all.filter(({ shapeOnly }) => shapeOnly);

test("the manifest asks for what the code calls", () => {
  expect(uncovered(apis, sets)).toEqual([]);
});

test("the code is really read: known members are found with the sets Microsoft documents for them", () => {
  const setOf = (api: string) => apis.filter((used) => used.api === api).map(({ set, version }) => `${set} ${version}`);
  // Microsoft, Excel JavaScript API reference: Worksheet.getRange, Range.dataValidation, Workbook.onSelectionChanged.
  expect(setOf("Worksheet.getRange")).toEqual(["ExcelApi 1.1"]);
  expect(setOf("Range.dataValidation")).toEqual(["ExcelApi 1.8"]);
  expect(setOf("CustomFunctions.ErrorCode")).toEqual(["CustomFunctionsRuntime 1.3"]);
  expect(apis.length).toBeGreaterThan(25);
});

test("cards are the only thing beyond the manifest: shapes of values, made where Excel says that it has their sets", () => {
  expect(Object.fromEntries(asked)).toEqual({ ExcelApi: "1.16", CustomFunctionsRuntime: "1.4" });
  expect(uncovered(shapes, new Map([...sets, ...asked]))).toEqual([]);
  const beyond = uncovered(shapes, sets).map((words) => words.replace(/ \(.*/, ""));
  expect(beyond.sort()).toEqual(["CellValue", "EntityCellValue"]);
});

test("a lower manifest is told, member by member", () => {
  const lower = new Map([...sets, ["ExcelApi", "1.7"]]);
  expect(uncovered(apis, lower).join("\n")).toMatch(
    /Range\.dataValidation \(taskpane\/excel\/[\w/]+\.ts:\d+\) needs ExcelApi 1\.8; the manifest asks for 1\.7\./,
  );
  expect(uncovered(apis, new Map())).toHaveLength(apis.length);
});

test("1.12 is newer than 1.9", () => {
  expect(compareVersions("1.12", "1.9")).toBeGreaterThan(0);
  expect(compareVersions("1.9", "1.12")).toBeLessThan(0);
  expect(compareVersions("1.3", "1.3")).toBe(0);
});
