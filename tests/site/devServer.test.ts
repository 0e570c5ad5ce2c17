/** What the development manifest names is served from this machine, help and icons included. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { checkHost } from "../../tools/site/checkHost";
import { startServer, type PageServer } from "../browser/server";

jest.setTimeout(120_000);

let server: PageServer | undefined;
beforeAll(async () => (server = await startServer()));
afterAll(() => server?.stop());

test("every address of manifest.xml opens; icons may be kept", async () => {
  const manifest = readFileSync(join(__dirname, "../../manifest.xml"), "utf8");
  const opened: string[] = [];
  const faults = await checkHost(manifest, async (wanted) => {
    opened.push(wanted);
    const response = await fetch(wanted.replace("https://localhost:3000/", server!.address));
    return { status: response.status, header: (name) => response.headers.get(name), text: () => response.text() };
  });
  // Only `npm run dev-server`, which Excel asks, lets other origins read; this one is for the page.
  expect(faults.filter((fault) => !fault.includes("Access-Control-Allow-Origin"))).toEqual([]);
  expect(opened.filter((address) => /help|support|shortcuts|icon-16/.test(address)).length).toBeGreaterThanOrEqual(4);
});

test("the help of every function opens from this machine, by the address that the served metadata names", async () => {
  const response = await fetch(`${server!.address}functions.json`);
  const { functions } = (await response.json()) as { functions: { id: string; helpUrl: string }[] };
  expect(functions.length).toBeGreaterThan(40);
  const closed: string[] = [];
  for (const { id, helpUrl } of functions) {
    const page = helpUrl.startsWith(server!.address) ? await fetch(helpUrl) : undefined;
    if (page?.status !== 200 || !(await page.text()).includes(`CONDUIT.${id}`)) closed.push(`${id}: ${helpUrl}`);
  }
  expect(closed).toEqual([]);
});

test("nothing outside docs is served by way of the help", async () => {
  for (const path of ["help/..%2f..%2fpackage.json", "help/%2e%2e/%2e%2e/package.json"])
    expect((await fetch(`${server!.address}${path}`)).status).toBe(404);
});
