/** The page under faults: each ends in words, with the work kept. */
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { withBench } from "./atPage";
import type { Bench } from "./bench";

jest.setTimeout(300000);

let bench: Bench;

withBench((opened) => (bench = opened), "new");

test("a full store is said in words, and no longer once there is room again; nothing is lost", async () => {
  await bench.saved();
  await bench.page.evaluate(() => {
    const { put: real } = IDBObjectStore.prototype;
    Object.assign(window, { room: () => (IDBObjectStore.prototype.put = real) });
    IDBObjectStore.prototype.put = () => {
      throw new DOMException("", "QuotaExceededError");
    };
  });
  await bench.type("Runs!A2", "A-1");
  await bench.page.locator('#save-state[data-kind="failed"]').waitFor();
  expect(await bench.text("#notice")).toMatch(
    /could not store your changes: there is no room left.*Save the workbook as a file/,
  );
  await bench.page.evaluate(() => (window as unknown as { room(): void }).room());
  await bench.type("Runs!A3", "A-2");
  await bench.saved();
  expect(await bench.page.locator("#notice").isHidden()).toBe(true);
  await bench.reload();
  expect(await bench.values("Runs!A2:A3")).toEqual([["A-1"], ["A-2"]]);
});

test("a second tab with changes asks before it goes", async () => {
  await bench.saved();
  const tab = await bench.anotherTab();
  await tab.locator('#save-state[data-kind="off"]').waitFor();
  await tab.waitForFunction(() => window.ledgerBook !== undefined);
  await tab.mouse.click(300, 400);
  await tab.keyboard.type("x");
  await tab.keyboard.press("Enter");
  await tab.waitForTimeout(500);
  const asked = new Promise<string>((resolve) => {
    tab.on("dialog", (dialog) => {
      resolve(dialog.type());
      void dialog.accept();
    });
  });
  await tab.close({ runBeforeUnload: true });
  expect(await asked).toBe("beforeunload");
});

test("stored work that is broken inside opens with what is sound, says what is left out, and is kept whole", async () => {
  await bench.type("Runs!A2", "A-1");
  await bench.saved();
  await bench.page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open("raceway-ledger");
        opening.onsuccess = () => {
          const store = opening.result.transaction("workbooks", "readwrite").objectStore("workbooks");
          const reading = store.get("current");
          reading.onsuccess = () => {
            const saved = reading.result as {
              data: { sheetOrder: string[]; sheets: Record<string, { cellData: unknown }> };
            };
            const [id] = saved.data.sheetOrder;
            (saved.data.sheets[id!]!.cellData as Record<number, unknown>)[7] = "broken";
            store.put(saved, "current").onsuccess = () => resolve();
          };
        };
      }),
  );
  await bench.reload();
  expect(await bench.text("#notice")).toMatch(/1 cell of Runs.*kept under Earlier copies/);
  expect(await bench.values("Runs!A2")).toEqual([["A-1"]]);
});

test("a picture from elsewhere, asked for by a formula, is not fetched", async () => {
  let asked = 0;
  const elsewhere = createServer((_, response) => {
    asked += 1;
    response.end();
  });
  await new Promise<void>((resolve) => elsewhere.listen(0, "127.0.0.1", resolve));
  try {
    const { port } = elsewhere.address() as AddressInfo;
    await bench.type("Runs!Z40", `=IMAGE("http://127.0.0.1:${port}/a.png")`);
    await bench.page.waitForTimeout(1500);
    expect(asked).toBe(0);
    // The door is open: who asks is heard.
    await fetch(`http://127.0.0.1:${port}/`);
    expect(asked).toBe(1);
  } finally {
    elsewhere.close();
  }
});

test("the page's policy allows its own files and nothing more", async () => {
  const answer = await bench.page.request.get(`${bench.origin}/workbench/`);
  const policy = answer.headers()["content-security-policy"]!;
  for (const rule of ["base-uri 'self'", "form-action 'none'", "object-src 'none'", "frame-ancestors 'none'"]) {
    expect(policy.split("; ")).toContain(rule);
  }
  // Nothing but its own files, and the scripts that stand in the page itself.
  expect(policy).toMatch(/; script-src 'self'( 'sha256-[\w+/=]+')*;/);
  await bench.page.getByRole("button", { name: "Ledger pane" }).click();
  await bench.page.frameLocator("iframe").getByText("This workbook is set up").waitFor();
});
