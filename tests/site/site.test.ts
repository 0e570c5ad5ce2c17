import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readAddress } from "../../tools/site/address";
import { siteFiles } from "../../tools/site/assemble";
import { OFFICE_JS } from "../../tools/site/policy";
import { productionManifest } from "../../tools/site/productionManifest";

const root = join(__dirname, "../..");
const address = "https://tools.example.com/raceway/";
const facts = { address, id: "11111111-2222-4333-8444-555555555555", version: "7.8.9" };
const development = readFileSync(join(root, "manifest.xml"), "utf8");

describe("the base address", () => {
  test("ends in a slash, given or not", () => {
    expect(readAddress("https://tools.example.com/raceway")).toBe(address);
    expect(readAddress(" https://tools.example.com/raceway/ ")).toBe(address);
  });
  test.each([
    undefined,
    "",
    "tools.example.com",
    "http://tools.example.com/",
    "https://a.example/?x=1",
    "https://u@a.example/",
  ])("%p is refused, with what is wanted", (given) =>
    expect(() => readAddress(given)).toThrow(/^ADDIN_URL must be the https address .*(not set|got )/),
  );
});

describe("the production manifest", () => {
  const manifest = productionManifest(development, facts);
  const ids = (xml: string) => [...xml.matchAll(/<Id>(.*?)<\/Id>/g)].map(([, id]) => id);

  test("has its own id and the version of the package", () => {
    expect(ids(manifest)).toEqual([facts.id]);
    expect(ids(development)).not.toContain(JSON.parse(readFileSync(join(root, "package.json"), "utf8")).config.addinId);
    expect(manifest).toContain("<Version>7.8.9.0</Version>");
  });

  test("names no address but the base address and Microsoft's schemas", () => {
    const addresses = [...manifest.matchAll(/https?:\/\/[^"<\s]+/g)].map(([found]) => found);
    const others = addresses.filter(
      (found) => !found.startsWith(address) && !/^http:\/\/(schemas\.microsoft\.com|www\.w3\.org)\//.test(found),
    );
    expect(others).toEqual(["https://tools.example.com"]); // the origin, as AppDomain
    expect(addresses.filter((found) => found.startsWith(address)).length).toBeGreaterThan(8);
  });

  test("refuses a manifest that still names this machine", () => {
    expect(() => productionManifest(development + "<!-- https://localhost:4000/ -->", facts)).toThrow(
      "development address",
    );
  });
});

describe("the site", () => {
  const files = siteFiles(root, facts);
  const text = (name: string) => String(files.get(name));

  test("has every file that its manifest and its page name", () => {
    const inManifest = [...text("manifest.xml").matchAll(new RegExp(`${address}([^"<]*)`, "g"))].map(
      ([, name]) => name!,
    );
    const needed = new Set(inManifest.filter((name) => name !== "" && !name.endsWith("/")));
    const inPage = [...text("taskpane.html").matchAll(/(?:src|href)="([^":]+)"/g)].map(([, name]) => name!);
    expect([...needed, ...inPage].filter((name) => !files.has(name))).toEqual([]);
    expect(inPage.length).toBeGreaterThanOrEqual(3);
  });

  test("loads Office.js from Microsoft and the functions before the pane", () => {
    const scripts = [...text("taskpane.html").matchAll(/<script[^>]*src="([^"]+)"/g)].map(([, src]) => src!);
    expect(scripts[0]).toBe(OFFICE_JS);
    expect(scripts.slice(1).map((src) => src.replace(/^app\.[0-9a-f]{12}\//, ""))).toEqual([
      "functions.js",
      "taskpane.js",
    ]);
  });

  test("carries a policy without inline scripts or text run as script, before anything is loaded", () => {
    const html = text("taskpane.html");
    const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)![1]!;
    expect(html.indexOf(policy)).toBeLessThan(html.indexOf("<script"));
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toContain("unsafe-eval");
    expect(/script-src ([^;]*)/.exec(policy)![1]).toBe("'self' https://appsforoffice.microsoft.com");
    expect(html).not.toMatch(/<script(?![^>]*src=)/);
  });

  test("has the page at the bender with every file that it names, under a policy of its own files alone", () => {
    const html = text("bender/index.html");
    const named = [...html.matchAll(/(?:src|href)="([^":]+)"/g)].map(([, name]) => name!);
    expect(named.sort()).toEqual(["bender.css", "bender.js"]);
    for (const name of [...named, "sw.js"]) expect(files.get(`bender/${name}`)!.length).toBeGreaterThan(100);
    const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)![1]!;
    expect(html.indexOf(policy)).toBeLessThan(html.indexOf("<script"));
    expect(policy).toMatch(/default-src 'none'; script-src 'self';/);
    expect(policy).not.toMatch(/https?:|unsafe-eval/);
    expect(text("_headers")).toContain(`/bender/*\n  Content-Security-Policy: ${policy}`);
  });

  test("keeps nothing of this machine in what Excel reads", () => {
    expect(text("functions.json")).not.toContain("raceway-ledger.example");
    expect(JSON.parse(text("functions.json")).functions[0].helpUrl).toMatch(new RegExp(`^${address}help/`));
  });

  test("puts parts that may be kept forever in a folder named by their content", () => {
    const folder = [...files.keys()].find((name) => /^app\.[0-9a-f]{12}\/taskpane\.js$/.test(name))!.split("/")[0]!;
    expect(siteFiles(root, { ...facts, version: "9.9.9" }).has(`${folder}/taskpane.js`)).toBe(true);
    const headers = text("_headers");
    expect(headers).toMatch(new RegExp(`/${folder}/\\*[^/]*immutable`));
    expect(headers).toMatch(/^\/\*\n(?: {2}.*\n)* {2}Cache-Control: no-cache/m);
    expect(headers).toMatch(/\/functions\.js\*\n {2}Access-Control-Allow-Origin: \*/);
  });

  test("lets icons be kept, without which the ribbon on Windows shows none", () => {
    const headers = text("_headers");
    expect(headers).toMatch(/\/icons\/\*\n {2}! Cache-Control\n {2}Cache-Control: public, max-age=\d+\n/);
    const icons = [...text("manifest.xml").matchAll(/DefaultValue="([^"]*\.png)"/g)].map(([, icon]) => icon!);
    expect(icons.length).toBeGreaterThan(3);
    expect(icons.filter((icon) => !icon.startsWith(`${address}icons/`))).toEqual([]);
  });

  test("describes each function in one sentence on one line, as the function dialog has room for", () => {
    type Described = { functions: { id: string; description: string }[] };
    const { functions } = JSON.parse(text("functions.json")) as Described;
    const built = JSON.parse(readFileSync(join(root, "dist/functions.json"), "utf8")) as Described;
    const bare = (each: Described["functions"][number]) => ({ ...each, description: "", helpUrl: "" });
    expect(functions.map(bare)).toEqual(built.functions.map(bare));
    functions.forEach(({ description }, at) => {
      expect(description).toMatch(/^[A-Z][^\n]{15,180}[.!?]$/);
      expect(built.functions[at]!.description.replace(/\s+/g, " ").startsWith(description)).toBe(true);
    });
  });

  test("has help for every function, once the help is written", () => {
    if (!existsSync(join(root, "docs/help"))) throw new Error("docs/help is not there; run npm run guide.");
    const functions: { helpUrl: string; id: string }[] = JSON.parse(text("functions.json")).functions;
    expect(functions.map(({ helpUrl }) => helpUrl.slice(address.length)).filter((name) => !files.has(name))).toEqual(
      [],
    );
  });
});
