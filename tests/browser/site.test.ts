import { existsSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import type { Browser, Page, Route } from "playwright-core";
import { siteFiles } from "../../tools/site/assemble";
import { launchBrowser } from "./launch";

jest.setTimeout(180000);

const root = join(__dirname, "../..");
const address = "https://tools.example.com/raceway/";
const officeJs = "https://appsforoffice.microsoft.com/lib/1/hosted/";
const types: Record<string, string> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
};

const files = siteFiles(root, { address, id: "11111111-2222-4333-8444-555555555555", version: "1.0.0" });
let browser: Browser;
let page: Page;
let complaints: string[];
let elsewhere: string[];

/** Answers for the site's host and, from the package, for Microsoft's; nothing else exists. */
async function answer(route: Route): Promise<void> {
  const url = route
    .request()
    .url()
    .replace(/[?#].*$/, "");
  const own = url.startsWith(address) ? files.get(url.slice(address.length)) : undefined;
  const office = join(root, "node_modules/@microsoft/office-js/dist", url.slice(officeJs.length));
  const body = own ?? (url.startsWith(officeJs) && existsSync(office) ? readFileSync(office) : undefined);
  if (body === undefined) {
    elsewhere.push(url);
    return route.abort();
  }
  await route.fulfill({ body, contentType: types[extname(url)] ?? "application/octet-stream" });
}

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(async () => {
  await browser?.close();
});

beforeEach(async () => {
  [complaints, elsewhere] = [[], []];
  page = await browser.newPage();
  await page.route("**/*", answer);
  await page.exposeFunction("refused", (what: string) => complaints.push(what));
  await page.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) => {
      (window as unknown as { refused(what: string): void }).refused(`${violatedDirective} ${blockedURI}`);
    });
  });
});

afterEach(async () => {
  await page.close();
});

test("the built pane starts under its policy, asks nobody else for anything, and shows its tabs", async () => {
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(error.message));
  await page.goto(`${address}taskpane.html`);
  await page.getByRole("tab").first().waitFor();
  expect({ complaints, elsewhere, errors }).toEqual({ complaints: [], elsewhere: [], errors: [] });
});

test("every part of the pane loads under the policy", async () => {
  await page.goto(`${address}taskpane.html`);
  await page.getByRole("tab").first().waitFor();
  for (const tab of await page.getByRole("tab").all()) {
    await tab.click();
    await page.waitForLoadState("networkidle");
  }
  expect({ complaints, elsewhere }).toEqual({ complaints: [], elsewhere: [] });
});

test("text is never run as a script, and scripts from elsewhere are not loaded", async () => {
  await page.goto(`${address}taskpane.html`);
  await page.getByRole("tab").first().waitFor();
  const outcome = await page.evaluate(async () => {
    const script = document.createElement("script");
    script.src = "https://elsewhere.example/x.js";
    const loaded = new Promise((resolve) => {
      script.onload = () => resolve("loaded");
      script.onerror = () => resolve("refused");
    });
    document.head.append(script);
    const inline = document.createElement("script");
    inline.textContent = "window.ran = true";
    document.head.append(inline);
    const sent = await fetch("https://elsewhere.example/collect").then(
      () => "sent",
      () => "refused",
    );
    return { script: await loaded, inline: "ran" in window ? "ran" : "refused", sent };
  });
  expect(outcome).toEqual({ script: "refused", inline: "refused", sent: "refused" });
  // Refused by the page itself: nothing reached the network.
  expect(elsewhere).toEqual([]);
  expect(complaints.length).toBeGreaterThanOrEqual(3);
});
