/** The zip that a company serves: unpacked on a server that sends what the rules say, everything the manifest names is there. */
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { siteFiles } from "../../tools/site/assemble";
import { checkHost } from "../../tools/site/checkHost";
import { headersFor, hostRules, type HostRule } from "../../tools/site/hostFiles";
import { releaseZip } from "../../tools/site/release";

const root = join(__dirname, "../..");
const address = "https://tools.example.com/raceway/";
const facts = { address, id: "11111111-2222-4333-8444-555555555555", version: "7.8.9" };
const zip = unzipSync(releaseZip(siteFiles(root, facts), address));
const text = (name: string) => strFromU8(zip[name]!);

/** Rules as a host reads them from `_headers` (Netlify, Cloudflare Pages): later ones win, `!` takes a header away. */
function readHeaders(file: string): HostRule[] {
  const rules: { path: string; headers: Record<string, string> }[] = [];
  for (const line of file.split("\n")) {
    const [, name, value] = /^ {2}([\w-]+): (.*)$/.exec(line) ?? [];
    if (name) rules.at(-1)!.headers[name] = value!;
    else if (line.startsWith("/")) rules.push({ path: line, headers: {} });
  }
  return rules;
}

let server: Server | undefined;
let base = "";
let rules = readHeaders(text("site/_headers"));
const missing = new Set<string>();

beforeAll(async () => {
  server = createServer((request, response) => {
    const path = request.url!.replace(/^\/raceway/, "");
    const file = zip[`site${path}`];
    if (!file || missing.has(path)) return void response.writeHead(404).end();
    response.writeHead(200, headersFor(path, rules)).end(file);
  });
  await new Promise<void>((resolve) => server!.listen(0, "localhost", resolve));
  base = `http://localhost:${(server.address() as AddressInfo).port}`;
});
afterAll(() => void server?.close());
beforeEach(() => {
  rules = readHeaders(text("site/_headers"));
  missing.clear();
});

const check = () =>
  checkHost(text("site/manifest.xml"), async (wanted) => {
    const response = await fetch(wanted.replace("https://tools.example.com", base));
    return { status: response.status, header: (name) => response.headers.get(name), text: () => response.text() };
  });

test("every address of the manifest opens, with the headers that Excel needs", async () => {
  expect(await check()).toEqual([]);
});

test.each([
  ["functions.json that is not there", () => missing.add("/functions.json"), /functions\.json: status 404/],
  ["a script of the pane's page", () => missing.add("/functions.js"), /functions\.js: status 404/],
  ["support.html", () => missing.add("/support.html"), /support\.html: status 404/],
  [
    "icons that may not be kept",
    () => (rules = rules.filter(({ path }) => path !== "/icons/*")),
    /icon-32\.png: no-cache; the ribbon/,
  ],
  [
    "no leave to read the metadata",
    () => (rules = rules.filter(({ path }) => path !== "/functions.js*")),
    /functions\.json: Access-Control-Allow-Origin is not sent/,
  ],
] as const)("%s is told", async (_, spoil, fault) => {
  spoil();
  expect((await check()).join("\n")).toMatch(fault);
});

test("nginx and _headers say the same of every file", () => {
  const nginx = text("nginx.conf");
  const locations = [...nginx.matchAll(/location (= )?(\S+) \{\n([^}]*)\}/g)].map(([, exact, path, body]) => ({
    ...{ exact: exact !== undefined, path: path! },
    headers: Object.fromEntries(
      [...body!.matchAll(/add_header (\S+) (".*") always;/g)].map(([, name, value]) => [
        name!,
        JSON.parse(value!) as string,
      ]),
    ),
  }));
  expect(locations.length).toBe(hostRules("app.x").length);
  /** nginx: an exact location first, else the longest prefix (nginx.org, ngx_http_core_module, location). */
  const byNginx = (path: string) =>
    locations
      .filter((each) => (each.exact ? each.path === path : path.startsWith(each.path)))
      .sort((a, b) => Number(b.exact) - Number(a.exact) || b.path.length - a.path.length)[0]!.headers;
  const paths = Object.keys(zip).filter((name) => name.startsWith("site/")).map((name) => name.slice(4)); // prettier-ignore
  expect(paths.length).toBeGreaterThan(90);
  for (const path of paths) expect({ path, ...byNginx(path) }).toEqual({ path, ...headersFor(path, rules) });
});

test("the container serves that site with those settings, and what to do stands beside it", () => {
  expect(text("Dockerfile")).toMatch(/COPY nginx\.conf .*\nCOPY site \/usr\/share\/nginx\/html\n/);
  expect(text("nginx.conf")).toMatch(/^ {2}root \/usr\/share\/nginx\/html;$/m);
  expect(text("README.txt")).toContain(address);
});

test("pages for people have no script, link nothing that is missing, and say what leaves the machine: nothing", () => {
  for (const page of ["index", "support", "privacy"]) {
    const html = text(`site/${page}.html`);
    expect(html).toContain("default-src 'none'");
    expect(html).not.toMatch(/<script|src=/);
    const links = [...html.matchAll(/href="([^":]+)"/g)].map(([, link]) =>
      link!.endsWith("/") ? `${link}index.html` : link!,
    );
    expect(links.length).toBeGreaterThan(0);
    expect(links.filter((link) => !zip[`site/${link}`])).toEqual([]);
  }
  expect(text("site/privacy.html")).toContain("sends nothing anywhere");
});

test("the keys that open the pane name the action that the pane answers to", () => {
  const keys = JSON.parse(text("site/shortcuts.json")) as {
    actions: { id: string }[];
    shortcuts: { action: string; key: { default: string } }[];
  };
  const [action] = keys.actions;
  expect(keys.shortcuts).toEqual([{ action: action!.id, key: { default: expect.stringMatching(/^Ctrl\+Alt\+\w$/) } }]);
  expect(readFileSync(join(root, "taskpane/excel/startup.ts"), "utf8")).toContain(`associate("${action!.id}"`);
  expect(text("site/manifest.xml")).toContain(`<ExtendedOverrides Url="${address}shortcuts.json" />`);
});

test("the workflow for GitHub Pages builds with scripts there are", () => {
  const workflow = readFileSync(join(root, ".github/workflows/pages.yml"), "utf8");
  const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
    scripts: Record<string, string>;
  };
  const used = [...workflow.matchAll(/npm run ([\w:]+)/g)].map(([, name]) => name!);
  expect(used.length).toBe(2);
  expect(used.filter((name) => !scripts[name])).toEqual([]);
});
