import chromiumInPackage from "@sparticuz/chromium";
import { type Browser, chromium } from "playwright-core";

/** A closed, quiet browser: nothing of its own goes over the network. */
const flags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** The browsers tried, in order: the one inside the npm package (Linux), then installed ones. */
const ways: readonly [name: string, start: (args: readonly string[]) => Promise<Browser>][] = [
  [
    "@sparticuz/chromium",
    async (args) => {
      if (process.platform !== "linux") throw new Error("it is built for Linux only");
      return chromium.launch({ executablePath: await chromiumInPackage.executablePath(), args: [...args] });
    },
  ],
  ...["chrome", "msedge", "chromium"].map((channel): [string, (args: readonly string[]) => Promise<Browser>] => [
    channel,
    (args) => chromium.launch({ channel, args: [...args] }),
  ]),
];

/**
 * Starts the first browser that starts; without any, the tests fail and say what was tried.
 *
 * @param more flags besides the usual ones
 */
export async function launchBrowser(more: readonly string[] = []): Promise<Browser> {
  const failures: string[] = [];
  for (const [name, start] of ways) {
    try {
      return await start([...flags, ...more]);
    } catch (error) {
      failures.push(`${name}: ${error instanceof Error ? error.message.split("\n")[0] : String(error)}`);
    }
  }
  throw new Error(`No browser started. Install Chrome, Edge or Chromium.\n${failures.join("\n")}`);
}
