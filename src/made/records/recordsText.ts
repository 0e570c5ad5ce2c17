import { InputError } from "../../units/errors";
import { MADE_COLUMNS } from "./madeTable";

type Cell = string | number | boolean;

/** A row of the Made table to be, by its headers. */
export type RecordCells = Readonly<Record<string, Cell>>;

/** Headers of the Made table, in their order. */
export const MADE_HEADERS: readonly string[] = MADE_COLUMNS.map(({ name }) => name);

/** What would break a line or a cell of the text is a space. */
const plain = (cell: Cell | undefined): string =>
  String(cell ?? "")
    .replace(/\s+/g, " ")
    .trim();

/**
 * Records as lines with a header line, cells parted by tabs: a file, or something to paste, into a sheet too.
 * @example recordsText([{ Piece: "TH-01/2", Good: 1, Id: "k1" }]) // "Date\tPiece\t…\nTH-01/2…"
 */
export const recordsText = (records: readonly RecordCells[]): string =>
  [MADE_HEADERS, ...records.map((record) => MADE_HEADERS.map((header) => plain(record[header])))]
    .map((line) => line.join("\t"))
    .join("\n");

/** Reads lines of cells parted by tabs. @throws InputError where the first line has no Piece and no Id */
export function readRecordsText(text: string): string[][] {
  const lines = text
    .replace(/\r\n?/g, "\n")
    .split("\n")
    .filter((line) => line.trim() !== "");
  const cells = lines.map((line) => line.split("\t").map((cell) => cell.trim()));
  const headers = (cells[0] ?? []).map((cell) => cell.toLowerCase());
  for (const wanted of ["piece", "id"]) {
    if (!headers.includes(wanted)) {
      throw new InputError(
        `records must begin with a line of headers with ${wanted === "id" ? "Id" : "Piece"}, parted by tabs, as a bender's file has it; got ${plain(lines[0]).slice(0, 60) || "nothing"}.`,
      );
    }
  }
  return cells;
}
