import { findColumns } from "../../table/headerTable";
import { dayText } from "../../units/day";
import { MADE_COLUMNS } from "./madeTable";

type Cell = string | number | boolean;

/** Two rows of one Id that say different things. */
export interface MadeConflict {
  readonly id: string;
  /** The column, what stands in the table and what the new row says. */
  readonly differences: readonly { readonly column: string; readonly here: string; readonly there: string }[];
}

/** What comes of adding records to a Made table. */
export interface MergedMade {
  /** Rows to add, a cell for each column of the table; null for a column that is none of ours. */
  readonly rows: readonly (readonly (Cell | null)[])[];
  /** Rows that stood there already, word for word. */
  readonly known: number;
  readonly conflicts: readonly MadeConflict[];
  /** Rows that cannot be told apart from others, in words. */
  readonly refused: readonly string[];
}

/** Columns that a table may lack: what they hold is kept in Note. */
const textOf = (column: string, cell: unknown): string =>
  column === "Date" ? dayText(cell) : String(cell ?? "").trim();

/**
 * Adds records to a Made table by their Id: one that is there already is counted once, one that says something else is
 * shown and changes nothing, and what the table has no column for goes into its Note.
 *
 * @param table the Made table, header row first
 * @param incoming the records, header row first
 * @throws InputError where a header stands twice or Piece or Good is missing
 */
export function mergeMade(table: readonly (readonly Cell[])[], incoming: readonly (readonly Cell[])[]): MergedMade {
  const [headers = [], ...own] = table;
  const [given = [], ...lines] = incoming;
  const here = findColumns(headers, "Made", MADE_COLUMNS);
  const there = findColumns(given, "records", MADE_COLUMNS);
  const cellOf = (line: readonly Cell[], places: ReadonlyMap<string, number>, column: string) =>
    textOf(column, line[places.get(column) ?? -1]);
  const byId = new Map(own.map((line) => [cellOf(line, here, "Id"), (column: string) => cellOf(line, here, column)]));
  const rows: (Cell | null)[][] = [];
  const conflicts: MadeConflict[] = [];
  const refused: string[] = [];
  let known = 0;
  lines.forEach((line, index) => {
    const get = (column: string) => (column === "Note" ? noteOf(line) : cellOf(line, there, column));
    const id = get("Id");
    if (id === "")
      return void refused.push(`line ${index + 2}: it has no Id, so it cannot be told whether it was read before.`);
    if (!here.has("Id"))
      return void refused.push(`line ${index + 2}: the Made table has no column Id to keep ${id} in.`);
    const before = byId.get(id);
    if (!before) {
      byId.set(id, get);
      rows.push(headers.map((_, place) => valueAt(line, place)));
      return;
    }
    const differences = [...here.keys()].flatMap((column) => {
      const [was, is] = [before(column), get(column)];
      return same(was, is) ? [] : [{ column, here: was, there: is }];
    });
    if (differences.length > 0) conflicts.push({ id, differences });
    else known += 1;
  });
  return { rows, known, conflicts, refused };

  /** Note with what the table has no column for. */
  function noteOf(line: readonly Cell[]): string {
    const lost = [...there.keys()].filter((column) => !here.has(column) && column !== "Note");
    const extra = lost.flatMap((column) => {
      const cell = cellOf(line, there, column);
      return cell === "" ? [] : [`${column} ${cell}`];
    });
    return [cellOf(line, there, "Note"), ...extra].filter(Boolean).join("; ");
  }

  function valueAt(line: readonly Cell[], place: number): Cell | null {
    const column = [...here].find(([, at]) => at === place)?.[0];
    if (column === undefined) return null;
    const cell = column === "Note" ? noteOf(line) : cellOf(line, there, column);
    return NUMBERS.has(column) && cell !== "" && Number.isFinite(Number(cell)) ? Number(cell) : cell;
  }
}

/** Columns whose cells are numbers in the sheet. */
const NUMBERS = new Set(["Good", "Scrapped", "Bend", "Dial reached", "Angle measured"]);

/** Cells that say the same: 0 and nothing are the same count. */
const same = (a: string, b: string): boolean => a === b || (isCount(a, b) && Number(a) === Number(b));
const isCount = (a: string, b: string): boolean => [a, b].every((cell) => cell === "" || /^[\d.]+$/.test(cell));
