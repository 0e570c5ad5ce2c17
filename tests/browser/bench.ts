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

  static async open(browser: Browser, address: string): Promise<Bench> {
    const context = await browser.newContext({ viewport: { width: 1200, height: 750 } });
    context.setDefaultTimeout(60000);
    const bench = new Bench(context, await context.newPage(), address);
    context.on("request", (request) => bench.requested.push(request.url()));
    bench.page.on("pageerror", (error) => bench.complaints.push(error.message));
    await bench.page.goto(address);
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
    await this.page.keyboard.type(text, { delay: 5 });
    await this.page.keyboard.press("Enter");
    const holds = ([at, typed]: [string, string]) => {
      const { formulas, values } = window.ledgerBook!.range(at);
      return formulas[0]![0] === typed || String(values[0]![0]) === typed;
    };
    await this.page.waitForFunction(holds, [address, text] as [string, string]);
    await this.settled();
  }

  /** Selects a cell and waits until the grid shows it selected, ready for the keyboard. */
  async goTo(address: string): Promise<void> {
    await this.page.evaluate((at) => window.ledgerBook!.range(at).select(), address);
    const cell = address.replace(/^.*!/, "");
    await this.page.waitForFunction((at) => document.getElementById("strip")!.textContent.startsWith(at), cell);
    await this.page.waitForTimeout(300);
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
