import { LETTERS, type LettersLook, type TicketLine } from "../../../src/drawing/ticket/ticketLines";
import type { PrintArea } from "../../excel";

/** Rows of a sheet, and how many columns it has. */
interface Looks {
  readonly lines: readonly TicketLine[];
  readonly columns: number;
}

/**
 * Areas of a sheet whose letters have something in common, as large as they can be: rows alike are taken together, a text
 * alone in its row counts for the whole row, and empty cells and rows join what is beside them.
 *
 * @param of what is looked at in the letters of a cell
 * @param usual what needs no area
 */
export const bandsOf = <T>(looks: Looks, of: (look: LettersLook) => T, usual: T): (PrintArea & { value: T })[] =>
  bands(looks, usual, ({ cells }) => {
    const texts = cells.flatMap(({ text, letters }, column) =>
      text === "" ? [] : [{ column, value: of(LETTERS[letters]) }],
    );
    if (texts.length === 0) return undefined;
    return columnsOf(looks, (at) => (texts.filter(({ column }) => column <= at).at(-1) ?? texts[0]!).value);
  });

/** Areas whose cells have a line under them, to the cell. */
export const underlinesOf = (looks: Looks): PrintArea[] =>
  bands(looks, false, ({ cells }) => {
    const isUnder = (at: number) => cells[at] !== undefined && LETTERS[cells[at].letters].underline === true;
    return columnsOf(looks, isUnder);
  });

const columnsOf = <T>({ columns }: Looks, of: (column: number) => T): T[] =>
  Array.from({ length: columns }, (_, column) => of(column));

/** @param valuesOf the value of each column of a row; undefined for a row that joins the one above */
function bands<T>(
  { lines }: Looks,
  usual: T,
  valuesOf: (line: TicketLine) => T[] | undefined,
): (PrintArea & { value: T })[] {
  const found: (PrintArea & { value: T })[] = [];
  let [first, above] = [0, undefined as T[] | undefined];
  const end = (row: number) => {
    if (above) found.push(...acrossRow(above, usual).map((area) => ({ ...area, row: first, rows: row - first })));
  };
  lines.forEach((line, row) => {
    const values = valuesOf(line);
    if (!values || (above && same(above, values))) return;
    end(row);
    [first, above] = [row, values];
  });
  end(lines.length);
  return found;
}

/** Columns side by side that share an unusual value. */
function acrossRow<T>(values: readonly T[], usual: T): { value: T; column: number; columns: number }[] {
  const found: { value: T; column: number; columns: number }[] = [];
  values.forEach((value, column) => {
    const last = found.at(-1);
    if (last?.value === value && last.column + last.columns === column) last.columns += 1;
    else if (value !== usual) found.push({ value, column, columns: 1 });
  });
  return found;
}

const same = <T>(one: readonly T[], other: readonly T[]): boolean => one.every((value, at) => value === other[at]);
