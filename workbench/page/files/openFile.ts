import { openXlsx } from "../../workbook";
import { ask } from "../dialog";
import { isSavedBook, type SavedBook } from "../keep/store";
import { pickFile } from "./browserFiles";
import type { Desk } from "./desk";
import { saveWorkbook } from "./saveFiles";
import { busy, inform, reasonOf } from "./telling";
import { words } from "./words";

const t = words.open;

/** Opens an .xlsx file in place of the open workbook, of which a copy is kept first. */
export async function openWorkbook(desk: Desk): Promise<void> {
  const file = await pickFile(".xlsx");
  if (!file) return;
  const { store } = desk;
  const failed = t.failedTitle(file.name);
  try {
    const next = await busy(t.working(file.name), () => read(file, desk));
    if (!store) return await inform(failed, t.noStore);
    if (!(await agreed(desk, file.name, next))) return;
    await busy(t.working(file.name), async () => {
      await store.keep(desk.current(), Date.now());
      await desk.replace(next);
    }).catch((error: unknown) => inform(failed, t.noRoom(reasonOf(error))));
  } catch (error) {
    await inform(failed, reasonOf(error), t.failedHelp);
  }
}

async function read(file: File, { functions }: Desk): Promise<SavedBook> {
  const data = await openXlsx(new Uint8Array(await file.arrayBuffer()), functions);
  const next = { savedAt: Date.now(), data: { ...data, name: file.name.replace(/\.xlsx$/i, "") } };
  if (!isSavedBook(next)) throw new Error(t.noSheets);
  return next;
}

/** Says what will be replaced by what. Saving the open workbook as a file first comes back to the question. */
async function agreed(desk: Desk, file: string, { data }: SavedBook): Promise<boolean> {
  const sheets = data.sheetOrder.map((id) => data.sheets[id]?.name ?? "");
  for (;;) {
    const choice = await ask(
      t.title(file),
      [t.replaced(desk.name), t.holds(file, sheets), t.comesIn],
      [
        { words: t.leave, value: "leave" },
        { words: t.saveFirst, value: "save" },
        { words: t.go, value: "go", main: true },
      ],
    );
    if (choice !== "save") return choice === "go";
    await saveWorkbook(desk);
  }
}
