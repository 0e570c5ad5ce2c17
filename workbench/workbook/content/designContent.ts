import { type NewSheet, LIST_ROOM } from "../../../taskpane/workbook/design/newSheets";
import type { Cell } from "../../../taskpane/workbook/items";
import type { ContentCell, SheetContent } from "./sheetContent";

/** Sheets as Set up makes them, on their way to a file or to the page. */
export const designContent = (sheets: readonly NewSheet[]): SheetContent[] => sheets.map(contentOf);

function contentOf({ sheet, table, cells, columns, headings, frozenColumns, tab, beside }: NewSheet): SheetContent {
  const rows = Math.max(cells.length, beside?.cells.length ?? 0);
  const content = Array.from({ length: rows }, (_, row): (ContentCell | null)[] =>
    columns.map((_column, place) => {
      const given = beside && place === beside.column ? (beside.cells[row] ?? "") : (cells[row]?.[place] ?? "");
      const heading = row === 0 ? headings[place] : undefined;
      const cell = given === "" ? null : contentCell(given);
      return cell || heading ? { value: null, ...cell, ...(heading && { look: heading }) } : null;
    }),
  );
  const headers = columns.map(({ header }) => header);
  const below = { startRow: 1, endRow: cells.length - 1 + LIST_ROOM };
  return {
    name: sheet,
    cells: content,
    columns: columns.map(({ width, look, hidden }) => ({ width, look, ...(hidden && { hidden }) })),
    frozenRows: 1,
    frozenColumns,
    tabColor: tab,
    tables:
      table === undefined
        ? []
        : [
            {
              name: table,
              range: { startRow: 0, endRow: cells.length - 1, startColumn: 0, endColumn: columns.length - 1 },
              headers,
            },
          ],
    choices: columns.flatMap(({ list }, column) =>
      list ? [{ list: [...list], range: { ...below, startColumn: column, endColumn: column } }] : [],
    ),
    notes: columns.flatMap(({ header, note }, column) => (note ? [{ column, title: header, text: note }] : [])),
  };
}

const contentCell = (cell: Cell): ContentCell =>
  typeof cell === "string" && cell.startsWith("=")
    ? { value: null, formula: cell }
    : { value: typeof cell === "string" && cell.startsWith("'") ? cell.slice(1) : cell };
