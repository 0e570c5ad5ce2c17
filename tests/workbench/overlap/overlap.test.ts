import type { IWorkbookData } from "@univerjs/core";
import type { Book, CellValue } from "../../../workbench/engine";
import { type HeadlessBook, openHeadless } from "../../../workbench/engine/headless";
import { openWithWorker } from "./openWithWorker";
import { slowFunctions } from "./slowFunctions";

jest.setTimeout(120000);

const rows = 12;

/** Numbers, each with a slow formula beside it; on a second sheet a table that they spill, and formulas that read it. */
function workbook(id: string): Partial<IWorkbookData> {
  const numbers: Record<number, Record<number, { v?: number; f?: string }>> = {};
  for (let row = 0; row < rows; row += 1) {
    numbers[row] = { 0: { v: row * 7 }, 1: { f: `=SLOW.TWICE(A${row + 1})` }, 2: { f: `=B${row + 1}+SUM(Out!A:A)` } };
  }
  const out = { 0: { 0: { f: "=SLOW.SPREAD(In!A:A)" }, 3: { f: "=COUNT(A:A)" }, 4: { f: "=SUM(In!B:B)+D1" } } };
  return {
    id,
    sheetOrder: ["in", "out"],
    sheets: {
      in: { id: "in", name: "In", rowCount: 40, columnCount: 8, cellData: numbers },
      out: { id: "out", name: "Out", rowCount: 80, columnCount: 8, cellData: out },
    },
  };
}

const values = (book: Book): (CellValue[][] | undefined)[] => book.sheets().map((sheet) => sheet.used()?.values);

let afresh = 0;

/** What a fresh engine makes of the same cells. */
async function computedAfresh(book: Book): Promise<(CellValue[][] | undefined)[]> {
  // By another name: engines of one process share what they keep of a workbook's formulas.
  const fresh = openHeadless(slowFunctions, { ...structuredClone(book.snapshot()), id: `fresh ${(afresh += 1)}` });
  try {
    await fresh.book.settled();
    return values(fresh.book);
  } finally {
    fresh.close();
  }
}

/** A small linear congruential generator, so that a failure can be had again. */
function randomFrom(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 4294967296) * below);
  };
}

const edits: ((book: Book, random: (below: number) => number) => void)[] = [
  (book, random) => book.range(`In!A${1 + random(rows)}`).setValues([[random(100)]]),
  (book, random) => book.range(`In!A${1 + random(rows)}`).setValues([[random(100)]]),
  (book, random) => book.range(`In!A${1 + random(rows)}`).clear(),
  // A number over a formula: no result that was under way may write over it.
  (book, random) => book.range(`In!B${1 + random(rows)}`).setValues([[random(1000)]]),
  (book, random) => {
    const row = 1 + random(rows);
    book.range(`In!B${row}`).setFormula(`=SLOW.TWICE(A${row})+1`);
  },
  (book, random) => book.sheet("In").native.insertRows(random(rows), 1),
  (book, random) => book.sheet("In").native.deleteRows(random(rows), 1),
];

// The engine complains of formulas that went with their rows; what counts is what it computes.
beforeEach(() => void jest.spyOn(console, "error").mockImplementation(() => undefined));

const wait = (time: number) => new Promise((resolve) => setTimeout(resolve, time));

describe.each([
  ["in a worker", openWithWorker],
  ["on the same thread", openHeadless],
])("edits made while the engine computes, %s", (where, open) => {
  let opened: HeadlessBook | undefined;
  afterEach(() => opened?.close());

  test.each([1, 2, 3])("end as a fresh calculation has them, series %i", async (seed) => {
    const random = randomFrom(seed);
    opened = open(slowFunctions, workbook(`${where} ${seed}`));
    const { book } = opened;
    await book.settled();
    for (let edit = 0; edit < 12; edit += 1) {
      edits[random(edits.length)]!(book, random);
      // At any moment: before the calculation starts, in its middle, at its end, after it.
      await wait(random(4) * random(60));
    }
    await book.settled();
    const shown = values(book);
    expect(shown[0]!.length).toBeGreaterThan(5);
    expect(shown).toEqual(await computedAfresh(book));
  });

  test("reach every moment of a calculation and lose nothing", async () => {
    opened = open(slowFunctions, workbook(`${where}, moments`));
    const { book } = opened;
    await book.settled();
    for (let moment = 12; moment < 60; moment += 2) {
      book.range("In!A2:A4").setValues([[moment], [moment + 1], [moment + 2]]);
      await wait(moment);
      // A number over a formula that is being computed, or a row less above all the others.
      if (moment % 4 === 0) book.range("In!B3").setValues([[5000]]);
      else book.sheet("In").native.deleteRows(0, 1);
      await book.settled();
      const shown = book.range("In!A1:B4").values;
      const doubled = (number: CellValue) => (typeof number === "number" ? 2 * number : "no number");
      const expected = shown.map(([number], at) => [number, at === 2 && moment % 4 === 0 ? 5000 : doubled(number!)]);
      expect([moment, shown]).toEqual([moment, expected]);
      book.range("In!B3").setFormula("=SLOW.TWICE(A3)");
      book.sheet("In").native.insertRows(0, moment % 4 === 0 ? 0 : 1);
      book.range("In!A1:B1").setValues([[0, "=SLOW.TWICE(A1)"]]);
      await book.settled();
    }
  });

  test("settled() waits for the newest edit, however often it was asked before", async () => {
    opened = open(slowFunctions, workbook(where));
    const { book } = opened;
    await book.settled();
    for (const number of [11, 22, 33]) {
      book.range("In!A1").setValues([[number]]);
      const asked = book.settled();
      await wait(30);
      book.range("In!A2").setValues([[number + 1]]);
      await asked;
      expect(book.range("In!B1:B2").values).toEqual([[2 * number], [2 * number + 2]]);
    }
  });
});
