import { rememberTable } from "../../memory/tables";
import type { Degrees } from "../../geometry/angle";
import { readTable, type Column, type TableRow } from "../../table/headerTable";
import { takeRows } from "../../table/takeRows";
import { toAngle } from "../../units/angle";
import { dayText } from "../../units/day";
import { InputError } from "../../units/errors";
import { toNumber } from "../../units/number";

/** Columns of the Made table: a row for each time that pieces were made, or spoilt. */
export const MADE_COLUMNS: readonly Column[] = [
  { name: "Date" },
  { name: "Piece", required: true },
  { name: "Good", required: true, zero: true },
  { name: "Scrapped", zero: true },
  { name: "By" },
  { name: "Crew" },
  { name: "Raceway" },
  { name: "Size" },
  { name: "Bend" },
  { name: "Dial reached" },
  { name: "Angle measured" },
  { name: "Shape" },
  { name: "Note" },
  { name: "Id" },
];

/** What was made, as the shop wrote it down. */
export interface MadeRecord {
  readonly rowNumber: number;
  /** The piece by its run and number, TH-01/2, or by the run alone where it has one piece. */
  readonly piece: string;
  readonly good: number;
  readonly scrapped: number;
  /** 2026-12-01, or as it is written. */
  readonly date: string;
  readonly by: string;
  readonly crew: string;
  /** The shoe it was made on, where it was written down. */
  readonly raceway: string;
  readonly size: string;
  /** Code of the shape, where it was written down. */
  readonly shape: string;
  readonly note: string;
  /** What was measured on one of its bends [°]. */
  readonly measured?: BendMeasured;
}

/** A bend as it was made: which one (1 for the first), the dial when it was let go, the angle after. */
export interface BendMeasured {
  readonly bend: number;
  readonly dial: number;
  readonly angle: Degrees;
}

export interface MadeBook {
  readonly records: readonly MadeRecord[];
  /** Rows that could not be read, in words. */
  readonly problems: readonly string[];
}

/** Most of one piece in a row that is taken for meant. */
const MOST = 100_000;

/**
 * Reads a Made range. A row that cannot be read is told and hides no other. A row whose Id stood before is the same
 * record read twice and counts once; where the two differ, that is told.
 *
 * @throws InputError when the header row lacks a needed column
 */
export const readMade: (range: unknown) => MadeBook = rememberTable((range) => {
  const records: MadeRecord[] = [];
  const byId = new Map<string, string>();
  const problems = takeRows(readTable(range, "made", MADE_COLUMNS).rows, "made", (row) => {
    const record = readRecord(row);
    if (isNew(row, record, byId)) records.push(record);
  });
  return { records, problems };
});

function isNew(row: TableRow, record: MadeRecord, byId: Map<string, string>): boolean {
  const id = text(row.get("Id"));
  if (id === "") return true;
  const content = JSON.stringify({ ...record, rowNumber: 0 });
  const before = byId.get(id);
  if (before === undefined) byId.set(id, content);
  else if (before !== content)
    throw new InputError(`Id ${id} stands twice with different cells; the first one counts.`);
  return before === undefined;
}

function readRecord(row: TableRow): MadeRecord {
  const piece = text(row.get("Piece"));
  if (piece === "") throw new InputError("Piece is empty; write the run and the number of the piece, as in TH-01/2.");
  const [good, scrapped] = [readCount(row, "Good"), readCount(row, "Scrapped")];
  const measured = readMeasured(row);
  // A row may tell of a bend that was measured while its piece is not finished.
  if (good + scrapped === 0 && !measured) {
    throw new InputError("Good and Scrapped are both 0 or empty; write how many were made.");
  }
  return {
    ...{ rowNumber: row.rowNumber, piece, good, scrapped, date: dayText(row.get("Date")) },
    ...{ by: text(row.get("By")), crew: text(row.get("Crew")), shape: text(row.get("Shape")).toUpperCase() },
    ...{ raceway: text(row.get("Raceway")), size: text(row.get("Size")) },
    note: text(row.get("Note")),
    ...(measured ? { measured } : {}),
  };
}

function readCount(row: TableRow, column: string): number {
  const cell = row.get(column);
  return cell === null ? 0 : toNumber(cell, column, { min: 0, max: MOST, integer: true });
}

/** Both readings or none: one alone says nothing. */
function readMeasured(row: TableRow): BendMeasured | undefined {
  const [dial, angle, bend] = [row.get("Dial reached"), row.get("Angle measured"), row.get("Bend")];
  if (dial === null && angle === null) return undefined;
  if (dial === null || angle === null) {
    const [has, lacks] = dial === null ? ["Angle measured", "Dial reached"] : ["Dial reached", "Angle measured"];
    throw new InputError(`${has} stands without ${lacks}; write both, or none.`);
  }
  return {
    bend: bend === null ? 1 : toNumber(bend, "Bend", { min: 1, integer: true }),
    dial: toAngle(dial, "Dial reached", { above: 0, max: 270 }),
    angle: toAngle(angle, "Angle measured", { above: 0, max: 200 }),
  };
}

const text = (cell: unknown): string => (cell === null || cell === undefined ? "" : String(cell).trim());
