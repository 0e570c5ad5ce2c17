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
const ways: readonly [name: string, start: () => Promise<Browser>][] = [
  [
    "@sparticuz/chromium",
    async () => {
      if (process.platform !== "linux") throw new Error("it is built for Linux only");
      return chromium.launch({ executablePath: await chromiumInPackage.executablePath(), args: flags });
    },
  ],
  ...["chrome", "msedge", "chromium"].map((channel): [string, () => Promise<Browser>] => [
    channel,
    () => chromium.launch({ channel, args: flags }),
  ]),
];

/** Starts the first browser that starts; without any, the tests fail and say what was tried. */
export async function launchBrowser(): Promise<Browser> {
  const failures: string[] = [];
  for (const [name, start] of ways) {
    try {
      return await start();
    } catch (error) {
      failures.push(`${name}: ${error instanceof Error ? error.message.split("\n")[0] : String(error)}`);
    }
  }
  throw new Error(`No browser started. Install Chrome, Edge or Chromium.\n${failures.join("\n")}`);
}
