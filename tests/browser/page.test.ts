import { withBench } from "./atPage";
import type { Bench } from "./bench";

jest.setTimeout(300000);

let bench: Bench;

withBench((opened) => (bench = opened));

/** Rows of the schedule for one run: the marks, in order. */
async function marksOf(run: string): Promise<number[]> {
  const [header, ...rows] = await bench.sheet("Schedule");
  const at = header!.indexOf("Mark");
  return rows.filter((row) => row[0] === run).map((row) => Number(row[at]));
}

describe("formulas", () => {
  test("a formula typed with the keyboard is computed by the functions Excel loads", async () => {
    await bench.type("Runs!P2", "=CONDUIT.OFFSET.SPACING(6,30)");
    // The cosecant of 30° is 2 by definition of the sine of 30°.
    expect((await bench.values("Runs!P2"))[0]![0]).toBeCloseTo(12, 9);
  });

  test("names are suggested and arguments explained while typing", async () => {
    await bench.goTo("Runs!P2");
    await bench.page.keyboard.type("=CONDUIT.OFFSET.SP", { delay: 30 });
    await bench.page.getByText("CONDUIT.OFFSET.SPACING", { exact: true }).first().waitFor();
    await bench.page.keyboard.type("ACING(", { delay: 30 });
    await bench.page.getByText("radius", { exact: false }).first().waitFor();
    await bench.page.keyboard.press("Escape");
    await bench.page.keyboard.press("Escape");
  });

  test("a refused argument tells why in the line under the grid", async () => {
    await bench.type("Runs!P2", "=CONDUIT.OFFSET.SPACING(6,190)");
    await bench.goTo("Runs!P2");
    const error = await bench.error("Runs!P2");
    expect(error?.code).toBe("#VALUE!");
    expect(error?.message).toContain("190");
    expect(await bench.text("#strip")).toContain(error!.message);
  });
});

describe("the job follows its inputs", () => {
  test("a changed rise moves the marks of the spilled schedule and nothing else of the run", async () => {
    const before = await marksOf("TH-03");
    await bench.type("Runs!F4", `east 3' 4-1/2", offset 8 up at 30, ahead 4'`);
    const after = await marksOf("TH-03");
    expect(before).toHaveLength(2);
    expect(after).toHaveLength(2);
    expect(after[0]).toBeCloseTo(before[0]!, 9);
    // The leg between the corners is rise / sin 30°: two inches more rise put the second mark four inches on.
    expect(after[1]! - before[1]!).toBeCloseTo(4, 9);
  });

  test("a schedule that gets shorter leaves nothing stale, and formulas that count it follow", async () => {
    await bench.type("Runs!P2", "=COUNTA(Schedule!A:A)");
    const before = await bench.sheet("Schedule");
    expect(await bench.values("Runs!P2")).toEqual([[before.length]]);
    const gone = (await marksOf("TH-02")).length;
    expect(gone).toBe(2);
    await bench.type("Runs!F3", "up 14, east 20");
    const after = await bench.sheet("Schedule");
    expect(after).toHaveLength(before.length - 1);
    expect(await bench.values("Runs!P2")).toEqual([[before.length - 1]]);
    expect(await bench.values(`Schedule!A${before.length}:F${before.length}`)).toEqual([Array(6).fill(null)]);
  });
});

describe("the work is kept", () => {
  test("across a reload, once it is saved", async () => {
    await bench.type("Runs!P3", "kept");
    await bench.saved();
    await bench.reload();
    expect(await bench.values("Runs!P3")).toEqual([["kept"]]);
  });

  test("across a reload in the middle of saving", async () => {
    // At once, so that the pause before saving has not even ended.
    await Promise.all([
      bench.page.waitForEvent("load"),
      bench.page.evaluate(() => {
        window.ledgerBook!.range("Runs!P3").setValues([["just typed"]]);
        location.reload();
      }),
    ]);
    await bench.settled();
    expect(await bench.values("Runs!P3")).toEqual([["just typed"]]);
  });

  test("as a copy when one starts again from the demo, and the copy opens again", async () => {
    await bench.type("Runs!A2", "MINE-1");
    await bench.page.getByRole("button", { name: "New job" }).click();
    await Promise.all([
      bench.page.waitForEvent("load"),
      bench.page.getByRole("button", { name: "Look at the demo job" }).click(),
    ]);
    await bench.settled();
    expect(await bench.values("Runs!A2")).toEqual([["TH-01"]]);

    await bench.page.getByRole("button", { name: "Earlier copies" }).click();
    await Promise.all([
      bench.page.waitForEvent("load"),
      bench.page.getByRole("button", { name: "Open", exact: true }).first().click(),
    ]);
    await bench.settled();
    expect(await bench.values("Runs!A2")).toEqual([["MINE-1"]]);
  });

  test("by one tab only: a second one says that it does not save", async () => {
    await bench.saved();
    const tab = await bench.anotherTab();
    await tab.getByText("open in another tab").waitFor();
    await tab.locator('#save-state[data-kind="off"]').waitFor();
    await tab.evaluate(() => window.ledgerBook!.range("Runs!A2").setValues([["LOST"]]));
    await tab.waitForTimeout(1500);
    await tab.close();
    await bench.reload();
    expect(await bench.values("Runs!A2")).toEqual([["TH-01"]]);
  });

  test("what cannot be read is said and put aside, not thrown away", async () => {
    await bench.saved();
    await bench.page.evaluate(storeCurrent, "not a workbook");
    await bench.page.reload();
    await bench.page.getByRole("heading", { name: "Start your own job" }).waitFor();
    expect(await bench.text("#notice")).toContain("could not be read");
    await bench.page.getByRole("button", { name: "Look at the demo job" }).click();
    await bench.settled();
    expect(await bench.values("Runs!A2")).toEqual([["TH-01"]]);
    await bench.page.getByRole("button", { name: "Earlier copies" }).click();
    await bench.page.getByText("(cannot be opened)").waitFor();
  });

  test("a workbook that reads but does not open stays stored, and starting again keeps a copy of it", async () => {
    const broken = { savedAt: 1, data: { sheetOrder: ["s"], sheets: { s: { id: "s", name: "S", mergeData: 5 } } } };
    await bench.saved();
    await bench.page.evaluate(storeCurrent, broken);
    await bench.page.reload();
    await bench.page.getByText("What you saved is still stored").waitFor();
    bench.complaints.length = 0;
    await bench.page.getByRole("button", { name: "New job" }).click();
    await bench.page.getByRole("button", { name: "Look at the demo job" }).click();
    await bench.page.locator('#save-state[data-kind="saved"]').waitFor();
    await bench.settled();
    expect(await bench.values("Runs!A2")).toEqual([["TH-01"]]);
  });
});

test("no request leaves this machine", async () => {
  await bench.type("Runs!P2", "=CONDUIT.OFFSET.SPACING(6,30)");
  await bench.page.getByRole("button", { name: "Ledger pane" }).click();
  await bench.page.waitForTimeout(2000);
  const elsewhere = bench.requested.filter((url) => !url.startsWith(bench.origin) && !/^(data|blob):/.test(url));
  expect(elsewhere).toEqual([]);
  expect(bench.requested.length).toBeGreaterThan(3);
});

/** Writes into the page's own store, past the page. */
function storeCurrent(value: unknown): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open("raceway-ledger");
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const writing = opening.result.transaction("workbooks", "readwrite");
      writing.objectStore("workbooks").put(value, "current");
      writing.oncomplete = () => resolve();
      writing.onerror = () => reject(writing.error);
    };
  });
}
