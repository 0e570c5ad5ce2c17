/** The page's server and a browser around the tests of a file. */
import type { Browser } from "playwright-core";
import { Bench } from "./bench";
import { launchBrowser } from "./launch";
import { type PageServer, startServer } from "./server";

/** Where the page is served, and the browser to open it in. */
export interface AtPage {
  readonly address: string;
  readonly browser: Browser;
}

/** Starts both before the tests of a file and stops them after; the function hands them over in a test. */
export function serverAndBrowser(): () => AtPage {
  let server: PageServer | undefined;
  let browser: Browser | undefined;

  beforeAll(async () => {
    server = await startServer();
    browser = await launchBrowser();
  });

  afterAll(async () => {
    await browser?.close();
    server?.stop();
  });

  return () => ({ address: server!.address, browser: browser! });
}

/** The same; the function opens the page in a browser of its own. */
export function atPage(job?: string): () => Promise<Bench> {
  const at = serverAndBrowser();
  return () => Bench.open(at().browser, at().address, job);
}

/** Opens the page anew before each test and hands it over; a page that complained fails its test. */
export function withBench(take: (bench: Bench) => void, job?: string): void {
  const open = atPage(job);
  let bench: Bench;

  beforeEach(async () => {
    bench = await open();
    take(bench);
  });

  afterEach(async () => {
    expect(bench.complaints).toEqual([]);
    await bench.close();
  });
}
