/** Starting: what somebody sees who comes for the first time, and what the page's address may ask for. */
import type { Page } from "playwright-core";
import "./bench";
import { serverAndBrowser } from "./atPage";

jest.setTimeout(300000);

const at = serverAndBrowser();
let page: Page;

beforeEach(async () => {
  page = await (await at().browser.newContext({ viewport: { width: 1200, height: 750 } })).newPage();
  page.setDefaultTimeout(60000);
});

afterEach(() => page.context().close());

async function open(query = ""): Promise<void> {
  await page.goto(`${at().address}workbench/${query}`);
}

async function settled(): Promise<void> {
  await page.waitForFunction(() => window.ledgerBook !== undefined);
  await page.evaluate(() => window.ledgerBook!.settled());
}

const runs = () => page.evaluate(() => window.ledgerBook!.sheet("Runs").used()!.values);

test("one's own job is offered first: its name, Enter, and the cursor stands in the example run, the pane open", async () => {
  await open();
  await page.getByRole("heading", { name: "Start your own job" }).waitFor();
  await page.keyboard.type("Harbor office");
  await page.getByLabel("Lengths in").selectOption("millimeters");
  await page.getByLabel("RMC", { exact: true }).uncheck();
  await page.getByLabel("Name of the job").press("Enter");
  await settled();
  const [headers, example] = await runs();
  expect(example![headers!.indexOf("Route")]).toBe("up 1200 mm, east 3000 mm");
  expect(await page.evaluate(() => window.ledgerBook!.selection()!.address)).toMatch(/Runs'?!A2$/);
  const shoes = await page.evaluate(() =>
    window
      .ledgerBook!.sheet("Shoes")
      .used()!
      .values.map(([raceway]) => raceway),
  );
  expect(shoes).toContain("EMT");
  expect(shoes).not.toContain("RMC");
  await page.frameLocator("iframe").getByText("This workbook is set up").waitFor();
  expect(await page.frameLocator("iframe").getByRole("radio", { name: "mm" }).isChecked()).toBe(true);

  await page.keyboard.type("B-7");
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => window.ledgerBook!.range("Runs!A2").values[0]![0] === "B-7");
});

test("the name stands at the top, can be changed there, and stays", async () => {
  await open("?job=new");
  await settled();
  await page.locator("#book-name").fill("Ward B");
  await page.locator("#book-name").press("Enter");
  await page.locator('#save-state[data-kind="saved"]').waitFor();
  await page.reload();
  await settled();
  expect(await page.locator("#book-name").inputValue()).toBe("Ward B");
});

test("?job=demo opens the demo, ?job=new a job set up; what was there is kept, and a reload takes nothing away", async () => {
  await open("?job=demo");
  await settled();
  expect((await runs()).length).toBeGreaterThan(20);
  expect(page.url()).not.toContain("job");

  await open("?job=new");
  await settled();
  expect(
    (await runs())
      .slice(1)
      .flat()
      .filter((cell) => cell !== null && cell !== ""),
  ).toEqual([]);
  await page.evaluate(() => window.ledgerBook!.range("Runs!A2").setValues([["mine"]]));
  await page.locator('#save-state[data-kind="saved"]').waitFor();
  await page.reload();
  await settled();
  expect((await runs())[1]![0]).toBe("mine");

  await page.getByRole("button", { name: "Earlier copies" }).click();
  await page.locator("#dialog").getByText("Ferry terminal").waitFor();
});
