import type { Book } from "../../../workbench/engine";

/** What stands in a workbook: cells by sheet, tables and settings. Looks are left out. */
export interface State {
  sheets: Record<string, string[]>;
  kept: Record<string, string>;
}

export function stateOf(book: Book): State {
  const { resources = [] } = book.snapshot();
  const kept = resources.filter(({ name }) => /TABLE|SETTINGS/.test(name));
  return {
    sheets: Object.fromEntries(
      book.sheets().map((sheet) => {
        const used = sheet.used();
        const cells = (used?.values ?? []).flatMap((row, at) =>
          row.flatMap((value, column) => {
            const formula = used?.formulas[at]?.[column];
            return value === null && !formula ? [] : [`${at},${column}: ${formula || String(value)}`];
          }),
        );
        return [sheet.name, cells];
      }),
    ),
    kept: Object.fromEntries(kept.map(({ name, data }) => [name, data])),
  };
}
