import type { Linked, TableCells } from "../excel";
import { strings } from "../strings";
import type { Cell } from "./items";
import { asResult, newSheets, type NewSheet, type SheetWishes } from "./design/newSheets";

/** Spare rows it gets besides, when it grows [rows]. */
const MORE = 20;

/**
 * The rows that a linked table grows by, from the formulas of its first row: those its source has more, and spare ones.
 * @param count rows it has; @param isName true for the column of run names, whose last cell says when the table is full
 * @returns its last row anew, which no longer says that, and the rows after it
 */
export function moreLinkedRows(
  { source, first, lacks }: Linked,
  count: number,
  isName: (column: number) => boolean,
): { last: (Cell | null)[]; rows: (Cell | null)[][] } {
  // Cells of other people's columns stay theirs.
  const isOurs = (formula: string): boolean =>
    formula.includes(`ROWS(${source})`) || /^=.*CONDUIT\.RUN\./i.test(formula);
  const at = (row: number): (Cell | null)[] =>
    first.map(String).map((formula) => {
      if (!isOurs(formula)) return null;
      return formula.replace(/(\)<|\),)1(?=[,)])/g, (_, before: string) => `${before}${row}`);
    });
  const rows = Array.from({ length: lacks + MORE }, (_, index) => at(count + index + 1));
  const end = count + rows.length;
  const full = rows
    .pop()!
    .map((formula, column) => (isName(column) ? fullOr(source, end, String(formula).slice(1)) : formula));
  return { last: at(count), rows: [...rows, full] };
}

/** What the last row shows of the name of its run: that there is more, where there is. */
const fullOr = (source: string, last: number, shown: string): string =>
  `=IF(ROWS(${source})>${last},"${strings.start.map.full(source)}",${shown})`;

/** Empty rows a linked table keeps for rows that its source will grow [rows]. */
const SPARE = 200;

/**
 * A Runs table whose cells are formulas that read the person's own table, row by row as it stands: rows put in, deleted
 * or sorted there show here. Their table stays as it is. When it outgrows this one the last row says so, and so do Checks
 * and the take-off, which cannot count it.
 *
 * @param columns our column by name → their zero-based column in the table
 */
export function linkedRuns(
  source: TableCells,
  columns: Readonly<Record<string, number>>,
  wishes: SheetWishes,
): NewSheet[] {
  const last = source.cells.length - 1 + SPARE;
  const rows = Array.from({ length: last }, (_, index): Record<string, Cell> => {
    const row = index + 1;
    return Object.fromEntries(
      Object.entries(columns).map(([name, column]) => {
        const header = String(source.cells[0]?.[column] ?? "");
        // The choice gives the local engine the cells themselves, which it does not find through a table's name; nor does
        // it know a header with marks that mean something in such a name.
        const cell = /['[\]#@]/.test(header)
          ? `INDEX(IF(TRUE,${source.name}),${row},${column + 1})`
          : `INDEX(IF(TRUE,${source.name}[${header}]),${row})`;
        const shown = `IF(ROWS(${source.name})<${row},"",IF(${cell}="","",${cell}))`;
        const isFull = name === "Run" && row === last;
        return [name, isFull ? fullOr(source.name, last, shown) : `=${shown}`];
      }),
    );
  });
  return newSheets(["Runs"], { ...wishes, rows: { Runs: rows } }).map((sheet) => ({
    ...sheet,
    // A formula in a cell of text format would stay text.
    columns: sheet.columns.map(({ list: _, ...column }) => ({
      ...column,
      look: asResult(column.look),
    })),
  }));
}
