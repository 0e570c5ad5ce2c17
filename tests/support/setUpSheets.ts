import { CURRENCY } from "../../taskpane/workbook/design/look";
import { newSheets, type NewSheet, type SheetWishes } from "../../taskpane/workbook/design/newSheets";
import { defaultNames } from "../../taskpane/excel/names";
import type { ItemName } from "../../taskpane/workbook/items";
import { plannedSheets, planSetUp } from "../../taskpane/workbook/plan";

/** What new sheets go by in a workbook with nothing in it but an empty sheet. */
export function wishesForEmpty(given: Pick<SheetWishes, "rows" | "traced"> = {}): SheetWishes {
  const contents = { sheets: ["Sheet1"], corners: [""], lost: [], gone: [], tables: [], names: [] };
  const plan = planSetUp(contents, defaultNames());
  return { ...plannedSheets(contents, defaultNames(), plan), currency: CURRENCY, ...given };
}

/** Some of the sheets that Set up makes there. */
export const setUpSheets = (items: readonly ItemName[], given: Pick<SheetWishes, "rows" | "traced"> = {}): NewSheet[] =>
  newSheets(items, wishesForEmpty(given));
