// The local page in a browser, for what looks at it: pictures and first paint.
import { createRequire } from "node:module";
import { serve } from "./start.mjs";

const require = createRequire(import.meta.url);
require("./typescript.cjs");
const { launchBrowser } = require("../tests/browser/launch.ts");

/** Serves dist/ and starts a browser for `work`, which may ask how many bytes were sent; ends both after it. */
export async function withBrowser(work) {
  const { server, address } = await serve(0);
  const sockets = new Set();
  server.on("connection", (socket) => sockets.add(socket));
  const bytesSent = () => [...sockets].reduce((sum, { bytesWritten }) => sum + bytesWritten, 0);
  const browser = await launchBrowser();
  try {
    return await work(browser, address, bytesSent);
  } finally {
    await browser.close();
    server.close();
    server.closeAllConnections();
  }
}

/** Opens the local page with the demo job in a tab and waits for every formula to show its result. */
export async function openBook(page, address) {
  await page.goto(`${address}workbench/?job=demo`);
  await page.waitForFunction(() => window.ledgerBook !== undefined);
  await page.evaluate(() => window.ledgerBook.settled());
}
