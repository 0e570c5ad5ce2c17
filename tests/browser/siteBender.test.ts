/** The page at the bender as a static host serves it, in a folder of its own: under its policy, and without a network. */
import http from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";
import type { Browser } from "playwright-core";
import { siteFiles } from "../../tools/site/assemble";
import { launchBrowser } from "./launch";

jest.setTimeout(120_000);

const facts = { id: "11111111-2222-4333-8444-555555555555", version: "1.0.0" };
const files = siteFiles(join(__dirname, "../.."), { address: "https://tools.example.com/raceway/", ...facts });
const types: Record<string, string> = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css" };
const asked: string[] = [];

const server = http.createServer(({ url = "" }, response) => {
  asked.push(url);
  const name = url.replace(/^\/raceway\//, "").replace(/\/$/, "/index.html");
  const body = files.get(name);
  if (body === undefined) return response.writeHead(404).end();
  response.writeHead(200, { "Content-Type": types[extname(name)] ?? "application/octet-stream" }).end(body);
});
let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
  await new Promise<void>((resolve) => server.listen(0, "localhost", resolve));
});
afterAll(async () => {
  await browser?.close();
  server.closeAllConnections();
  server.close();
});

test("it starts under its policy, asks for its own files alone, and opens again without the host", async () => {
  const page = await browser.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  await page.goto(`http://localhost:${(server.address() as AddressInfo).port}/raceway/bender/`);
  await page.getByLabel("Paste the job here").waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  expect(new Set(asked)).toEqual(
    new Set(["", "bender.js", "bender.css", "sw.js"].map((name) => `/raceway/bender/${name}`)),
  );
  expect(complaints).toEqual([]);
  await page.context().setOffline(true);
  server.closeAllConnections();
  server.close();
  await page.reload();
  await page.getByLabel("Paste the job here").waitFor();
  await page.close();
});
