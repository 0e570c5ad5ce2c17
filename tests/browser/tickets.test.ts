import { buildJob } from "../../src/shop/job/job";
/** Tickets of the demo job on paper: printed to PDF by the browser, as the pane's Print does it. */
import type { Browser, Page } from "playwright-core";
import { jobTickets } from "../../src/shop/ticket/jobTickets";
import { formatLength } from "../../src/units/formatLength";
import { printDocument } from "../../taskpane/tickets/paper/printDocument";
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { launchBrowser } from "./launch";
import { pdfPages } from "./pdfText";

/** Smallest letters of a mark: legible at arm's length [pt]. */
const LEGIBLE = 14;
const POINTS_PER_PIXEL = 0.75;

const { tickets } = jobTickets(buildJob({ runs: demoRuns }));
const few = tickets.filter(({ bends }) => bends.length < 11);
const HEADERS = ["Run", "Raceway", "Size", "Route", "Quantity", "Conductors", "Stick"];
const ten =
  "up 20, east 20, offset 6 up at 30, ahead 20, offset 5 north at 45, ahead 20, north 24, offset 4 up at 22.5, ahead 20, up 30, west 20";
const made = (route: string) =>
  jobTickets(buildJob({ runs: [HEADERS, ["Z-10", "EMT", "1/2", route, 12, "3 #12 THHN", 240]] })).tickets;
const options = { style: "feet", together: false, printed: "today" } as const;

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await launchBrowser();
  // As from a dark theme: paper stays white.
  page = await browser.newPage({ colorScheme: "dark" });
}, 60_000);

afterAll(() => browser?.close());

test.each(["A4", "Letter"])(
  "a piece of the demo job, none with more than ten bends, prints on one page of %s that has its cut, marks and caution",
  async (format) => {
    await page.setContent(printDocument(few, options));
    const pages = pdfPages(await page.pdf({ format, printBackground: false }));
    expect(few.length).toBeGreaterThan(60);
    expect(pages).toHaveLength(few.length);
    few.forEach(({ run, cutLength, bends }, index) => {
      const printed = pages[index]!;
      const wanted = [run.name, formatLength(cutLength), ...bends.map(({ mark }) => formatLength(mark)), "Disconnect"];
      for (const text of wanted) expect(printed).toContain(text.replace(/\s/g, ""));
    });
  },
  120_000,
);

test.each(["A4", "Letter"])(
  "ten bends that turn every way stand on one page of %s",
  async (format) => {
    const [ticket, ...others] = made(ten);
    expect([ticket!.bends.length, others.length]).toEqual([10, 0]);
    await page.setContent(printDocument([ticket!], options));
    const pages = pdfPages(await page.pdf({ format }));
    expect(pages).toHaveLength(1);
    for (const { mark } of ticket!.bends) expect(pages[0]).toContain(formatLength(mark).replace(/\s/g, ""));
  },
  60_000,
);

test("a longer ticket goes on, its name on each page", async () => {
  const [long] = made("up 60, sweep 40 in 24, east 80");
  expect(long!.bends.length).toBeGreaterThan(20);
  await page.setContent(printDocument([long!], options));
  const pages = pdfPages(await page.pdf({ format: "Letter" }));
  expect(pages.length).toBeGreaterThan(1);
  for (const printed of pages) expect(printed).toContain(`Z-10·piece1`);
}, 60_000);

test("marks are black on white and large enough, from a dark theme too", async () => {
  await page.setContent(printDocument(few.slice(0, 9), options));
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  const seen = await page.evaluate(() => {
    const style = (element: Element) => getComputedStyle(element);
    const marks = [...document.querySelectorAll(".rlt-mark b, .rlt-dial b, .rlt-cut strong")];
    const drawn = [...document.querySelectorAll(".rlt-stick text")];
    return {
      sizes: marks.map((mark) => parseFloat(style(mark).fontSize)),
      colors: [...new Set([...marks, ...drawn].map((mark) => style(mark).color))],
      body: style(document.body).backgroundColor,
    };
  });
  expect(Math.min(...seen.sizes) * POINTS_PER_PIXEL).toBeGreaterThanOrEqual(LEGIBLE);
  expect(seen.colors).toEqual(["rgb(0, 0, 0)"]);
  expect(seen.body).toBe("rgb(255, 255, 255)");
}, 60_000);
