import { type IWorkbookData, LocaleType } from "@univerjs/core";

/** A workbook with one empty sheet. */
export function emptyBook(): IWorkbookData {
  const sheet = { id: "sheet-1", name: "Sheet1", rowCount: 1000, columnCount: 30 };
  return {
    id: "workbook",
    name: "New workbook",
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: [sheet.id],
    sheets: { [sheet.id]: sheet },
  };
}
