import { dayText } from "../../../src/units/day";
import { FORMATS } from "../../../taskpane/workbook/design/look";
import type { CellRange, CellValue } from "../../engine";
import { saveValuesXlsx, saveXlsx, tableToCsv } from "../../workbook";
import { ask, element } from "../dialog";
import { download, fileName } from "./browserFiles";
import type { Desk } from "./desk";
import { busy, inform, reasonOf, tell } from "./telling";
import { words } from "./words";

const t = words.save;
const xlsx = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Downloads the workbook: live formulas with their results, tables, lists to choose from. */
export const saveWorkbook = (desk: Desk): Promise<boolean> =>
  save(`${desk.name}.xlsx`, xlsx, desk, async () => asPart(await saveXlsx(desk.book, desk.name)), t.live);

/** Downloads the workbook with results alone, for programs without the add-in. */
export const saveValues = (desk: Desk): Promise<boolean> =>
  save(`${desk.name} ${t.valuesSuffix}.xlsx`, xlsx, desk, async () =>
    asPart(await saveValuesXlsx(desk.book, desk.name)),
  );

const asPart = (bytes: Uint8Array): BlobPart => bytes as Uint8Array<ArrayBuffer>;

/** Lets one choose a sheet, the one in front unless told otherwise, and downloads it as CSV. */
export async function saveSheetAsCsv(desk: Desk): Promise<void> {
  const { book, name } = desk;
  const label = element("label", t.sheet);
  const select = document.createElement("select");
  select.append(...book.sheets().map((sheet) => new Option(sheet.name, sheet.id)));
  select.value = book.activeSheet().id;
  label.append(select);
  const choices = [
    { words: words.cancel, value: false },
    { words: t.save, value: true, main: true },
  ];
  if (!(await ask(t.csvTitle, [t.csvText, label], choices))) return;
  const sheet = book.sheets().find(({ id }) => id === select.value);
  if (!sheet) return;
  await save(`${name} ${sheet.name}.csv`, "text/csv", desk, async () => tableToCsv(shownDays(sheet.used())));
}

/** Makes a file and downloads it, saying so; or says why not. @returns whether it was written */
export async function save(
  name: string,
  type: string,
  { book }: Desk,
  make: () => Promise<BlobPart>,
  done = t.done,
): Promise<boolean> {
  const file = fileName(name);
  try {
    const content = await busy(t.working(file), async () => {
      await book.settled();
      return make();
    });
    download(file, content, type);
    tell(done(file));
    return true;
  } catch (error) {
    await inform(t.failedTitle(file), reasonOf(error), t.failed);
    return false;
  }
}

/** The values of a sheet, days as they are read: 2026-12-01. */
const shownDays = (used: CellRange | null): CellValue[][] =>
  (used?.values ?? []).map((row, at) =>
    row.map((value, column) => (used?.numberFormats[at]?.[column] === FORMATS.date ? dayText(value) : value)),
  );
