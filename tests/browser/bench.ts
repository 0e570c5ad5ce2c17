import type { Browser, BrowserContext, Page } from "playwright-core";
import type { Book, CellErrorInfo, CellValue } from "../../workbench/engine";

declare global {
  interface Window {
    ledgerBook?: Book;
  }
}

/** The page in a browser of its own, driven by the keyboard and read through the open workbook. */
export class Bench {
  /** Every address the page asked for. */
  readonly requested: string[] = [];
  /** What the page complained about. */
  readonly complaints: string[] = [];

  private constructor(
    private readonly context: BrowserContext,
    readonly page: Page,
    private readonly address: string,
  ) {}

  /** @param job what the address asks for: the demo, or a set-up job of one's own */
  static async open(browser: Browser, address: string, job = "demo"): Promise<Bench> {
    const context = await browser.newContext({ viewport: { width: 1200, height: 750 } });
    context.setDefaultTimeout(60000);
    const bench = new Bench(context, await context.newPage(), address);
    context.on("request", (request) => bench.requested.push(request.url()));
    bench.page.on("pageerror", (error) => bench.complaints.push(error.message));
    await bench.page.goto(`${address}workbench/?job=${job}`);
    await bench.settled();
    return bench;
  }

  get origin(): string {
    return new URL(this.address).origin;
  }

  close(): Promise<void> {
    return this.context.close();
  }

  /** The same page in another tab of the same browser. */
  async anotherTab(): Promise<Page> {
    const tab = await this.context.newPage();
    await tab.goto(this.address);
    return tab;
  }

  /** Waits for every formula to show its result. */
  async settled(): Promise<void> {
    await this.page.waitForFunction(() => window.ledgerBook !== undefined);
    await this.page.evaluate(() => window.ledgerBook!.settled());
  }

  /** Reloads the page and waits for it. */
  async reload(): Promise<void> {
    await this.page.reload();
    await this.settled();
  }

  /** Goes to a cell and types into it, ending with Enter; waits until the cell holds it and all is computed. */
  async type(address: string, text: string): Promise<void> {
    await this.goTo(address);
    await this.page.keyboard.type(text, { delay: 20 });
    // Enter takes a suggestion while the list of names is still open; a person sees it, a test must give it time.
    await this.idle();
    await this.page.keyboard.press("Enter");
    const held = () => this.page.evaluate(contentOf, address);
    for (let left = 60; !(await held()).includes(text); left -= 1) {
      if (left === 0) throw new Error(`${address} should hold ${text}; it holds ${(await held()).join(" | ")}`);
      await this.page.waitForTimeout(500);
    }
    await this.settled();
  }

  /** Waits until the page has nothing to do for a moment. */
  async idle(): Promise<void> {
    for (let turn = 0; turn < 3; turn += 1) {
      await this.page.evaluate(() => new Promise<void>((resolve) => requestIdleCallback(() => resolve())));
      await this.page.waitForTimeout(150);
    }
  }

  /** Selects a cell and waits until the grid shows it selected, ready for the keyboard. */
  async goTo(address: string): Promise<void> {
    await this.page.evaluate((at) => window.ledgerBook!.range(at).select(), address);
    const cell = address.replace(/^.*!/, "");
    await this.page.waitForFunction((at) => document.getElementById("strip")!.textContent.startsWith(at), cell);
    await this.idle();
  }

  values(address: string): Promise<CellValue[][]> {
    return this.page.evaluate((at) => window.ledgerBook!.range(at).values, address);
  }

  error(address: string): Promise<CellErrorInfo | null> {
    return this.page.evaluate((at) => window.ledgerBook!.range(at).errors[0]![0]!, address);
  }

  /** Everything on a sheet, spilled cells too. */
  sheet(name: string): Promise<CellValue[][]> {
    return this.page.evaluate((at) => window.ledgerBook!.sheet(at).used()?.values ?? [], name);
  }

  text(selector: string): Promise<string> {
    return this.page.locator(selector).innerText();
  }

  /** Waits until the page says that everything is saved. */
  async saved(): Promise<void> {
    await this.page.locator('#save-state[data-kind="saved"]').waitFor();
  }
}

/** A cell's formula and value as text, read inside the page. */
function contentOf(address: string): string[] {
  const { formulas, values } = window.ledgerBook!.range(address);
  return [formulas[0]![0]!, String(values[0]![0])];
}
