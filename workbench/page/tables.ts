import { UniverSheetsSortPlugin } from "@univerjs/sheets-sort";
import { UniverSheetsTablePlugin, UniverSheetsTableUIPlugin } from "@univerjs/preset-sheets-table";

/** How tables look: the heading of the demo's sheets over plain rows, every second one shaded. */
const look = {
  name: "ledger",
  style: {
    headerRowStyle: { bg: { rgb: "#1f4e5f" }, cl: { rgb: "#ffffff" } },
    firstRowStyle: { bg: { rgb: "#ffffff" } },
    secondRowStyle: { bg: { rgb: "#f1f5f7" } },
  },
};

/** The grid's tables, without the tab that shows each one's name over its headings. */
export const tables = {
  plugins: [
    // The sort entries of a table's menu are its commands.
    [UniverSheetsSortPlugin, {}],
    [UniverSheetsTablePlugin, { userThemes: [look] }],
    [UniverSheetsTableUIPlugin, { hideAnchor: true }],
  ],
};
