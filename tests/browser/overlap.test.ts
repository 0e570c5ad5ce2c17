// Edits on the page while its worker computes, against the same cells worked out anew.
import type { CellValue } from "../../workbench/engine";
import { withBench } from "./atPage";
import type { Bench } from "./bench";

jest.setTimeout(300000);

type SheetValues = [name: string, values: CellValue[][] | undefined][];

let bench: Bench;

withBench((opened) => (bench = opened));

/** Makes one edit after another, each some time after the one before; all are made before anything is awaited. */
async function editsInPage(edits: readonly (readonly [address: string, value: CellValue, pause: number])[]) {
  for (const [address, value, pause] of edits) {
    window.ledgerBook!.range(address).setValues([[value]]);
    await new Promise((resolve) => setTimeout(resolve, pause));
  }
  await window.ledgerBook!.settled();
}

/** The stored workbook opened anew, by a new worker, with no results kept from before. */
async function computedAfresh(): Promise<SheetValues> {
  await bench.saved();
  await bench.page.evaluate(forgetResults);
  await bench.reload();
  return bench.page.evaluate(valuesInPage);
}

function valuesInPage(): SheetValues {
  return window.ledgerBook!.sheets().map((sheet) => [sheet.name, sheet.used()?.values]);
}

function forgetResults(): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open("raceway-ledger");
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const writing = opening.result.transaction("workbooks", "readwrite");
      writing.objectStore("workbooks").delete("results");
      writing.oncomplete = () => resolve();
    };
  });
}

test("edits that overtake the calculation end as a fresh calculation has them, on every sheet", async () => {
  const pauses = [0, 40, 90, 150, 230, 10, 320, 60, 0, 120, 200, 30];
  const edits = pauses.map((pause, at): [string, CellValue, number] => {
    const row = 2 + ((at * 5) % 14);
    if (at % 4 === 3) return [`Runs!O${row}`, 100 + at, pause];
    return at % 4 === 1 ? [`Runs!G${row}`, 3 + at, pause] : [`Runs!F${row}`, `up ${30 + at}, east ${90 + at}`, pause];
  });
  await bench.page.evaluate(editsInPage, edits);
  const values = await bench.page.evaluate(valuesInPage);
  expect(values.find(([name]) => name === "Schedule")![1]!.length).toBeGreaterThan(20);
  expect(values).toEqual(await computedAfresh());
});
