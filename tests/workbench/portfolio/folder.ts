import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { openHeadless } from "../../../workbench/engine/headless";
import { saveXlsx } from "../../../workbench/workbook";
import { setUpContent } from "../../../workbench/workbook/content/jobContent";
import { openData } from "../../../workbench/workbook/openData";
import { TABS } from "../../../taskpane/workbook/items";
import type { Rows } from "../../../taskpane/workbook/design/startRows";
import { builtFunctions } from "../workbook/demoFile";

const functions = builtFunctions();

/** A workbook of the tables and sheets that Set up makes, with these runs. */
export async function jobWorkbook(
  rows: Partial<Record<"Runs" | "Issued" | "Labor" | "Rules", Rows>>,
): Promise<Uint8Array> {
  const items = TABS.filter((item) => ["Runs", "Issued", "Labor", "Shoes", "Rules", "Stock", "Prices", "Counts", "Allowances", "Takeoff"].includes(item)); // prettier-ignore
  const { book, close } = openHeadless(functions, openData(setUpContent(items, { rows })));
  try {
    await book.settled();
    return await saveXlsx(book, "Job");
  } finally {
    close();
  }
}

/** A file with some text in it changed by hand, as a program does that does not know the add-in's functions. */
export function editedByHand(bytes: Uint8Array, from: string | RegExp, to: string): Uint8Array {
  let edits = 0;
  const parts = Object.entries(unzipSync(bytes)).map(([name, part]): [string, Uint8Array] => {
    if (!name.endsWith(".xml")) return [name, part];
    const text = strFromU8(part);
    const edited = text.replace(from, to);
    if (edited !== text) edits += 1;
    return [name, strToU8(edited)];
  });
  if (edits !== 1) throw new Error(`${from} stands in ${edits} parts of the file.`);
  return zipSync(Object.fromEntries(parts));
}
