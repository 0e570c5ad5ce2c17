import { dayNumber } from "./dayNumber";
import { readRuns, RUN_COLUMNS } from "../../../src/shop/run/runsTable";
import { readTable, type Column } from "../../../src/table/headerTable";
import { columnPlaces } from "../../../taskpane/workbook/columns";
import { RUN_FORMULAS } from "../../../taskpane/workbook/design/formulas";
import type { CellValue } from "../../engine";
import { readCsv } from "./csv";

/** A Runs table that rows are to go into. */
export interface RunsTarget {
  headers: readonly string[];
  /** Columns that hold formulas, by place: what a list says of them is not taken. */
  worked: readonly boolean[];
  /** Names of the runs it has. */
  names: readonly string[];
}

/** Why a column of the list does not get into the table. */
export type LeftOutWhy = "worked out" | "no such column" | "no header";

/** A list of runs, laid out for a table. */
export interface MatchedRuns {
  /** A value for each column of the table; null where the list says nothing. */
  rows: CellValue[][];
  matched: { header: string; column: string }[];
  leftOut: { header: string; why: LeftOutWhy }[];
  /** Rows with more cells than there are headers: their cells stand under wrong ones. The list's header is row 1. */
  ragged: number[];
  /** Names of runs that the table has already. */
  repeated: string[];
  /** What is wrong with rows that are taken all the same, in words that begin with the run's name. */
  problems: string[];
}

/** Columns of numbers; every other known column keeps the text as written, so that 1/2 stays 1/2. */
export const numbers = ["Quantity", "Straps", "Cover", "Temperature change", "Ambient", "Breaker", "Height"];

/**
 * Lays a list of runs (CSV, or a block copied from a sheet) out for a Runs table. Headers are matched the way the
 * functions match them: any order, any case, "Qty" for Quantity; columns of the person's own by their names.
 *
 * @param source what the list is called in messages
 * @throws Error when a needed column is missing, a header stands twice, a quote is never closed or there are no rows
 */
export function matchRuns(text: string, source: string, target: RunsTarget): MatchedRuns {
  const [given = [], ...lines] = readCsv(text);
  if (given.length === 0) throw new Error(`${source} must have a header row and rows under it; it is empty.`);
  readTable([given], source, RUN_COLUMNS);
  if (lines.length === 0) throw new Error(`${source} must have rows under its header row; it has none.`);

  const columns = targetColumns(target.headers);
  const places = columnPlaces(given, columns);
  const taken = target.headers.map((_, at) => (target.worked[at] ? undefined : places.get(columns[at]!.name)));
  const fits = (line: readonly string[]) => line.slice(given.length).every((cell) => cell.trim() === "");
  const rows = lines
    .filter(fits)
    .map((line) => taken.map((place, at) => cellOf(place === undefined ? "" : (line[place] ?? ""), columns[at]!.name)));
  return {
    // A row that says something only in columns that are left out would come in empty.
    rows: rows.filter((row) => row.some((value) => value !== null)),
    matched: target.headers.flatMap((column, at) => {
      const place = taken[at];
      return place === undefined ? [] : [{ header: given[place]!.trim(), column }];
    }),
    leftOut: leftOut(given, lines, taken, places),
    ragged: lines.flatMap((line, at) => (fits(line) ? [] : [at + 2])),
    ...lookOver(target, rows),
  };
}

/** The table's columns: ours with their other spellings and the table's own, the person's by their names. */
function targetColumns(headers: readonly string[]): Column[] {
  const ours = columnPlaces([...headers], RUN_COLUMNS);
  return headers.map((header, at) => {
    const column = RUN_COLUMNS.find(({ name }) => ours.get(name) === at);
    return column ? { ...column, required: false } : { name: header };
  });
}

function leftOut(
  given: readonly string[],
  lines: readonly (readonly string[])[],
  taken: readonly (number | undefined)[],
  places: ReadonlyMap<string, number>,
): MatchedRuns["leftOut"] {
  const known = [...places.values()];
  const worked = Object.keys(RUN_FORMULAS).map((name) => name.toLowerCase());
  return given.flatMap((header, place): MatchedRuns["leftOut"] => {
    if (taken.includes(place)) return [];
    const name = header.trim();
    if (name === "") return lines.some((line) => line[place]?.trim()) ? [{ header: "", why: "no header" }] : [];
    const isWorked = known.includes(place) || worked.includes(name.toLowerCase());
    return [{ header: name, why: isWorked ? "worked out" : "no such column" }];
  });
}

function lookOver({ headers, names }: RunsTarget, rows: readonly CellValue[][]) {
  const place = columnPlaces([...headers], RUN_COLUMNS).get("Run") ?? 0;
  const key = (name: unknown) =>
    String(name ?? "")
      .trim()
      .toLowerCase();
  const there = new Set(names.map(key).filter((name) => name !== ""));
  const read = readRuns([headers, ...rows]);
  return {
    repeated: rows.map((row) => String(row[place] ?? "").trim()).filter((name) => there.has(key(name))),
    problems: read.flatMap((row) => ("problem" in row ? [`${row.name}: ${row.problem}`] : [])),
  };
}

const ourNames = RUN_COLUMNS.map(({ name }) => name);

function cellOf(text: string, column: string): CellValue {
  const trimmed = text.trim();
  if (trimmed === "") return null;
  if (numbers.includes(column)) return /^\d+(\.\d+)?$/.test(trimmed) ? Number(trimmed) : text;
  if (column === "Date") return dayNumber(trimmed) ?? text;
  // A column of the person's own: a number written as a sheet shows it is one, 007 is a text.
  return !ourNames.includes(column) && String(Number(trimmed)) === trimmed ? Number(trimmed) : text;
}
