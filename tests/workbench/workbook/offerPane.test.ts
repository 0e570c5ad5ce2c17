/** A workbook that names the add-in: its parts, read back as ISO/IEC 29500-2 says a package is read. */
import { JSDOM } from "jsdom";
import { readFileSync } from "node:fs";
import { join, posix } from "node:path";
import { unzipSync } from "fflate";
import { openHeadless } from "../../../workbench/engine/headless";
import { makeWorkbook, openXlsx, runsFromCsv } from "../../../workbench/workbook";
import { offerPane } from "../../../workbench/workbook/file/besides/offerPane";
import { builtFunctions } from "./demoFile";
import { partOf, readWithExcelJs, shownValues } from "./otherReader";

jest.setTimeout(120_000);

const ADD_IN = { id: "11111111-2222-4333-8444-555555555555", version: "7.8.9" };
const functions = builtFunctions();
const RUNS = runsFromCsv("Run,Raceway,Size,Route\nA-1,EMT,1/2,up 40\n", "runs.csv");
const MICROSOFT = "http://schemas.microsoft.com/office/2011/relationships";

const write = async (offersPaneOf?: typeof ADD_IN) =>
  (await makeWorkbook(RUNS, functions, { title: "Job", offersPaneOf })).bytes;

const parsed = (bytes: Uint8Array, path: string) =>
  new new JSDOM("").window.DOMParser().parseFromString(partOf(bytes, path), "application/xml");

/** The part that a relationship of one type leads to, from a part, or from the package where none is named. */
function follow(bytes: Uint8Array, type: string, from = ""): string {
  const rels = posix
    .join(posix.dirname(from), "_rels", `${posix.basename(from)}.rels`)
    .replace("_rels/..rels", "_rels/.rels");
  const found = [...parsed(bytes, rels).getElementsByTagName("Relationship")].filter(
    (each) => each.getAttribute("Type") === type,
  );
  expect(found).toHaveLength(1);
  return posix.join(posix.dirname(from), found[0]!.getAttribute("Target")!);
}

/** What the package says a part is: by its own name, else by its ending. */
function contentType(bytes: Uint8Array, path: string): string | null | undefined {
  const types = parsed(bytes, "[Content_Types].xml");
  const own = [...types.getElementsByTagName("Override")].find((each) => each.getAttribute("PartName") === `/${path}`);
  const byEnding = [...types.getElementsByTagName("Default")].find(
    (each) => each.getAttribute("Extension") === path.split(".").pop(),
  );
  return (own ?? byEnding)?.getAttribute("ContentType");
}

test("the package leads to the task pane, that to the add-in, each of its content type", async () => {
  const bytes = await write(ADD_IN);
  const panes = follow(bytes, `${MICROSOFT}/webextensiontaskpanes`);
  expect(contentType(bytes, panes)).toBe("application/vnd.ms-office.webextensiontaskpanes+xml");
  const [pane] = parsed(bytes, panes).getElementsByTagName("wetp:taskpane");
  expect([pane!.getAttribute("visibility"), pane!.getAttribute("dockstate")]).toEqual(["1", "right"]);
  const extension = follow(bytes, `${MICROSOFT}/webextension`, panes);
  expect(contentType(bytes, extension)).toBe("application/vnd.ms-office.webextension+xml");
  const rels = parsed(bytes, posix.join(posix.dirname(panes), "_rels/taskpanes.xml.rels"));
  const [id] = pane!.getElementsByTagName("wetp:webextensionref");
  expect(id!.getAttribute("r:id")).toBe(rels.getElementsByTagName("Relationship")[0]!.getAttribute("Id"));
  const [reference] = parsed(bytes, extension).getElementsByTagName("we:reference");
  const told = ["id", "version", "store", "storeType"].map((name) => reference!.getAttribute(name));
  expect(told).toEqual([ADD_IN.id, "7.8.9.0", "EXCatalog", "EXCatalog"]);
  // [MS-OWEXML]: the property by which the pane is shown, and the manifest's pane of the same name.
  const [property] = parsed(bytes, extension).getElementsByTagName("we:property");
  const name = property!.getAttribute("name");
  expect([name, property!.getAttribute("value")]).toEqual(["Office.AutoShowTaskpaneWithDocument", "true"]);
  const manifest = readFileSync(join(__dirname, "../../../manifest.xml"), "utf8");
  expect(manifest).toContain(`<TaskpaneId>${name}</TaskpaneId>`);
});

test("every part of the package has a content type, and no part is there twice", async () => {
  const bytes = await write(ADD_IN);
  for (const path of Object.keys(unzipSync(bytes)).filter(
    (name) => name !== "[Content_Types].xml" && !name.endsWith("/"),
  ))
    expect([path, typeof contentType(bytes, path)]).toEqual([path, "string"]);
  const named = [...parsed(bytes, "[Content_Types].xml").getElementsByTagName("Override")].map((each) =>
    each.getAttribute("PartName"),
  );
  expect(new Set(named).size).toBe(named.length);
});

test("the rest of the workbook is as without it: read by another library, worked out by the engine", async () => {
  const [with_, without] = [await write(ADD_IN), await write()];
  const [one, other] = [await readWithExcelJs(with_), await readWithExcelJs(without)];
  expect(one.worksheets.map(({ name }) => name)).toEqual(other.worksheets.map(({ name }) => name));
  expect(shownValues(one, "Schedule")).toEqual(shownValues(other, "Schedule"));
  const { book, close } = openHeadless(functions, await openXlsx(with_, functions));
  await book.settled();
  expect(book.sheet("Schedule").range("A2").values).toEqual([["A-1"]]);
  close();
});

test("nothing of it is in a workbook that was not asked to offer the pane", async () => {
  const parts = Object.keys(unzipSync(await write()));
  expect(parts.filter((name) => /webextension/.test(name))).toEqual([]);
});

test.each([
  [{ ...ADD_IN, id: "my add-in" }, /the add-in's id is no GUID; got my add-in\./],
  [{ ...ADD_IN, version: "7.8" }, /the add-in's version is no three numbers; got 7\.8\./],
])("%j is refused", async (addIn, message) => {
  const bytes = await write();
  expect(() => offerPane(bytes, addIn)).toThrow(message);
});
