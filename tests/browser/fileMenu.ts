/** The File menu by keyboard, and what comes and goes through it. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Bench } from "./bench";
import { focused, tabTo, toBar } from "./keyboard";

/** Goes to an entry of the File menu with the arrow and presses Enter. */
export async function chooseEntry({ page }: Bench, entry: RegExp): Promise<void> {
  await toBar(page);
  await tabTo(page, "File", "Shift+Tab");
  await page.keyboard.press("Enter");
  await page.locator("#file-menu").waitFor();
  for (let step = 0; step < 12 && !entry.test((await focused(page)).name); step++)
    await page.keyboard.press("ArrowDown");
  expect(await focused(page)).toMatchObject({ name: expect.stringMatching(entry), role: "menuitem" });
  await page.keyboard.press("Enter");
}

/** The file that something downloads, under its own name in a folder. */
export async function download({ page }: Bench, folder: string, work: () => Promise<void>): Promise<string> {
  const coming = page.waitForEvent("download");
  await work();
  const made = await coming;
  const path = join(folder, made.suggestedFilename());
  await made.saveAs(path);
  return path;
}

/** Chooses an entry that asks for a file, and gives it one. */
export async function giveFile(bench: Bench, entry: RegExp, path: string): Promise<void> {
  const coming = bench.page.waitForEvent("filechooser");
  await chooseEntry(bench, entry);
  await (await coming).setFiles(path);
}

/** A folder for what the tests of a file save, taken away when they are done. */
export function withFolder(use: (folder: string) => void): void {
  let folder: string;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "ledger-"));
    use(folder);
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));
}
