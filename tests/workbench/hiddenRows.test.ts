import type { HeadlessBook } from "../../workbench/engine/headless";
import { openProbe } from "./probe";

let open: HeadlessBook | undefined;
afterEach(() => open?.close());

test("a total of the rows shown follows rows that are hidden and shown between edits of cells", async () => {
  open = await openProbe({ A1: 1, A2: 20, A3: 300, A4: 4000, T50: "=SUBTOTAL(109,A1:A4)" });
  const { book } = open;
  const rows = book.sheets()[0]!.native;
  const total = async (edit: [string, number]) => {
    book.range(edit[0]).setValues([[edit[1]]]);
    await book.settled();
    return book.range("T50").values[0]![0];
  };

  expect(await total(["A1", 2])).toBe(4322);
  rows.hideRows(1, 2);
  expect(await total(["A1", 3])).toBe(4003);
  expect(await total(["A4", 5000])).toBe(5003);
  rows.showRows(2, 1);
  expect(await total(["A1", 4])).toBe(5304);
});

test("a hidden row counts where only a spilled value stands in it", async () => {
  open = await openProbe({ A1: 9, C1: "=PROBE.COUNTDOWN(A1)", A2: "=SUBTOTAL(109,C1:C9)" });
  const { book } = open;
  book.sheets()[0]!.native.hideRows(7, 1);
  book.range("A1").setValues([[8]]);
  await book.settled();
  // 8 + 7 + … + 1, without the 1 that stands in the hidden row.
  expect(book.range("A2").values[0]![0]).toBe(35);
});
