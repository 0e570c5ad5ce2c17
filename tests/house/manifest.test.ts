/** @jest-environment jsdom */
import { readFileSync } from "node:fs";
import { join } from "node:path";

const root = join(__dirname, "../..");
const text = readFileSync(join(root, "manifest.xml"), "utf8");
const document = new DOMParser().parseFromString(text, "application/xml");

const all = (name: string): Element[] => [...document.getElementsByTagName("*")].filter((e) => e.localName === name);
const one = (name: string): Element => {
  const found = all(name);
  if (found.length === 0) throw new Error(`manifest.xml has no <${name}>`);
  return found[0]!;
};
const value = (element: Element): string => element.getAttribute("DefaultValue") ?? element.textContent ?? "";
const resources = new Map(
  ["Image", "Url", "String"]
    .flatMap(all)
    .filter((element) => element.hasAttribute("id"))
    .map((element) => [element.getAttribute("id") ?? "", value(element)]),
);
const resid = (element: Element): string => element.getAttribute("resid") ?? "";

/** Width and height in a PNG's header chunk (PNG specification, 11.2.2 IHDR). */
function pngSize(file: string): [number, number] {
  const bytes = readFileSync(file);
  expect(bytes.subarray(1, 4).toString("latin1")).toBe("PNG");
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

/** Limits and rules: Microsoft's documentation of the add-in only manifest (from memory). */
describe("manifest.xml", () => {
  test("is well formed XML for a task pane add-in in workbooks", () => {
    expect(document.getElementsByTagName("parsererror")).toHaveLength(0);
    expect(document.documentElement.getAttribute("xsi:type")).toBe("TaskPaneApp");
    expect(one("Host").getAttribute("Name")).toBe("Workbook");
  });

  test("has an id that is a UUID and the version of package.json", () => {
    const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
    expect(one("Id").textContent).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-[1-5][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(one("Version").textContent).toBe(`${version}.0`);
  });

  test("every resource id that is used is defined, and every one defined is used", () => {
    const used = [...document.getElementsByTagName("*")].map(resid).filter((id) => id !== "");
    expect(used.length).toBeGreaterThan(10);
    expect([...new Set(used)].sort()).toEqual([...resources.keys()].sort());
  });

  test("the shared runtime, the functions' page and the function file are the same page", () => {
    const page = one("Page").getElementsByTagName("*")[0]!;
    expect(one("Runtime").getAttribute("lifetime")).toBe("long");
    expect([resid(one("Runtime")), resid(page)]).toEqual([resid(one("FunctionFile")), resid(one("FunctionFile"))]);
    expect(value(one("DefaultSettings").getElementsByTagName("*")[0]!)).toBe(resources.get(resid(one("Runtime"))));
  });

  test("asks for the shared runtime, custom functions with error messages, and tables with dynamic arrays", () => {
    const sets = all("Set").map((set) => [set.getAttribute("Name"), set.getAttribute("MinVersion")]);
    expect(sets).toEqual([
      ["SharedRuntime", "1.1"],
      ["CustomFunctionsRuntime", "1.3"],
      ["ExcelApi", "1.13"],
    ]);
  });

  test("functions live in the namespace CONDUIT", () => {
    expect(resources.get(resid(one("Namespace")))).toBe("CONDUIT");
  });

  test("all addresses are https", () => {
    const addresses = ["IconUrl", "HighResolutionIconUrl", "SupportUrl", "SourceLocation", "Image", "Url"]
      .flatMap(all)
      .map(value)
      .filter((address) => address !== "");
    expect(addresses.length).toBeGreaterThan(8);
    expect(addresses.filter((address) => !address.startsWith("https://"))).toEqual([]);
  });

  test("names and descriptions keep within their limits", () => {
    expect(value(one("DisplayName")).length).toBeLessThanOrEqual(125);
    expect(value(one("Description")).length).toBeLessThanOrEqual(250);
    const strings = (parent: string): string[] => [...one(parent).children].map(value);
    expect(Math.max(...strings("ShortStrings").map((string) => string.length))).toBeLessThanOrEqual(125);
    expect(Math.max(...strings("LongStrings").map((string) => string.length))).toBeLessThanOrEqual(250);
  });

  test("icons exist and have the sizes they are used at", () => {
    const icons = ["IconUrl", "HighResolutionIconUrl", "Image"].flatMap(all).map(value);
    for (const address of icons.filter((icon) => icon !== "")) {
      const name = /icon-(\d+)\.png$/.exec(address);
      expect(name).not.toBeNull();
      expect(pngSize(join(root, "taskpane/icons", name![0]))).toEqual([Number(name![1]), Number(name![1])]);
    }
    for (const image of [...all("Image")].filter((element) => element.getAttribute("size"))) {
      expect(resources.get(resid(image))).toContain(`icon-${image.getAttribute("size")}.png`);
    }
  });
});
