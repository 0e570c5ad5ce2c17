// What the pane weighs and how soon it shows: part of `npm run bench`.
import fs from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { openBook, withBrowser } from "../localPage.mjs";

/** Most the pane's first load may weigh [KB, gzip]. */
const LIMIT = 200;

const kilobytes = (bytes) => (bytes / 1000).toFixed(1);

/** Rows of a table: what is loaded when, its size. Throws when the first load is too heavy. */
export function paneSizes(dist) {
  const sizeOf = (names) =>
    names.reduce((sum, name) => sum + gzipSync(fs.readFileSync(path.join(dist, name))).length, 0);
  const later = fs.readdirSync(dist).filter((name) => /^pane-.*\.js$/.test(name));
  const solver = later.filter((name) => name === "pane-cuts.js");
  const views = later.filter((name) => name !== "pane-cuts.js");
  if (solver.length !== 1 || views.length === 0)
    throw new Error(`dist holds other parts of the pane: ${later.join(", ")}`);
  const first = ["taskpane.html", "taskpane.js", "taskpane.css"];
  const load = sizeOf(first);
  if (load > LIMIT * 1000) throw new Error(`the pane's first load weighs ${kilobytes(load)} KB, over ${LIMIT} KB`);
  return [
    ["part of the pane", "KB gzip"],
    ["first load", kilobytes(load)],
    [`with every view (${views.join(", ")})`, kilobytes(sizeOf([...first, ...views]))],
    ["solver, loaded when cuts are planned", kilobytes(sizeOf(solver))],
  ];
}

/** Rows of a table: first paint of the pane's frame against a frame with one heading, in the same page. */
export const panePaint = () =>
  withBrowser(async (browser, address) => {
    const page = await browser.newPage({ viewport: { width: 1200, height: 750 } });
    const pane = [];
    const plain = [];
    for (let turn = 0; turn < 3; turn++) {
      await openBook(page, address);
      plain.push(await page.evaluate(firstPaint, { html: "<h1>Here</h1>" }));
      pane.push(await page.evaluate(firstPaint, { button: "Ledger pane" }));
    }
    const [least, leastPlain] = [Math.min(...pane), Math.min(...plain)];
    return [
      ["first paint", "time", "ratio"],
      ["a frame with one heading", `${leastPlain.toFixed(0)} ms`, "1"],
      ["the pane, from the click that opens it", `${least.toFixed(0)} ms`, (least / leastPlain).toFixed(1)],
    ];
  });

/** Runs inside the page: opens a frame and says after how long it has painted something [ms]. */
async function firstPaint({ html, button }) {
  const start = performance.timeOrigin + performance.now();
  const before = new Set(document.querySelectorAll("iframe"));
  if (html) {
    const frame = document.createElement("iframe");
    frame.style.cssText = "position: fixed; inset: 0 0 auto auto; z-index: 9";
    frame.srcdoc = html;
    document.body.append(frame);
  } else {
    [...document.querySelectorAll("button")].find(({ textContent }) => textContent.trim() === button)?.click();
  }
  for (;;) {
    const frame = [...document.querySelectorAll("iframe")].find((each) => !before.has(each));
    const inside = frame?.contentWindow?.performance;
    const paint = inside?.getEntriesByName("first-contentful-paint")[0];
    if (paint) {
      if (html) frame?.remove();
      return inside.timeOrigin + paint.startTime - start;
    }
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}
