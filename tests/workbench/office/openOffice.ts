import type { IWorkbookData } from "@univerjs/core";
import type { Book, FunctionSet } from "../../../workbench/engine";
import { type HeadlessBook, openHeadless } from "../../../workbench/engine/headless";
import { officeFor } from "../../../workbench/office";
import { probeFunctions } from "../probe";

const opened: HeadlessBook[] = [];

afterEach(async () => {
  // Tables take in what was typed under them after the change itself.
  await later();
  for (const headless of opened.splice(0)) headless.close();
});

const twoSheets: Partial<IWorkbookData> = {
  id: "probe",
  sheetOrder: ["one", "two"],
  sheets: { one: { id: "one", name: "Sheet1" }, two: { id: "two", name: "Second sheet" } },
};

/** Opens a workbook without a page and puts its `Office` and `Excel` in place of the global ones. */
export async function openOffice(data = twoSheets, functions: FunctionSet = probeFunctions): Promise<Book> {
  // The grid keeps the very object it is given.
  const headless = openHeadless(functions, structuredClone(data));
  opened.push(headless);
  Object.assign(globalThis, officeFor(headless.book));
  await headless.book.settled();
  return headless.book;
}

/** Lets what is told later be told. */
export const later = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 20));
