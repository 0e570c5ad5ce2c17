import { RUN_COLUMNS } from "../../../src/shop/run/runsTable";
import { readTable } from "../../../src/table/headerTable";
import { columnPlaces } from "../../../taskpane/workbook/columns";
import { RUN_FORMULAS } from "../../../taskpane/workbook/design/formulas";
import { INPUTS } from "../../../taskpane/workbook/design/sheets";
import type { CellValue } from "../../engine";
import { readCsv } from "./csv";
import { numbers } from "./matchRuns";

/** Runs read from a file: the headers they will stand under, and their rows. */
export interface RunList {
  headers: string[];
  rows: CellValue[][];
}

/**
 * Runs from CSV text, its headers matched the way the functions match them: any order, any case, "Qty" for Quantity.
 * Our columns come first, in our order; columns we do not know follow as they are. Length, Bends, Degrees and Check
 * are left out: the workbook works them out itself.
 *
 * @throws Error when a needed column is missing or a header stands twice
 */
export function runsFromCsv(text: string, fileName: string): RunList {
  const [given = [], ...lines] = readCsv(text);
  readTable([given], fileName, RUN_COLUMNS);
  const places = columnPlaces(given, RUN_COLUMNS);
  const claimed = new Set(places.values());
  const worked = ["Length", ...Object.keys(RUN_FORMULAS)].map((name) => name.toLowerCase());
  const others = given.flatMap((header, place) =>
    claimed.has(place) || header.trim() === "" || worked.includes(header.trim().toLowerCase()) ? [] : [place],
  );
  const sources = [
    ...INPUTS.Runs.map((name) => ({ header: name, place: places.get(name) })),
    ...others.map((place) => ({ header: given[place]!.trim(), place })),
  ];
  const headers = sources.map(({ header }) => header);
  const twice = headers.find((header, index) => headers.some((other, at) => at < index && same(other, header)));
  if (twice !== undefined) throw new Error(`${fileName} must name each column once; "${twice}" stands twice.`);
  const rows = lines.map((line) =>
    sources.map(({ header, place }) => cell(place === undefined ? "" : (line[place] ?? ""), header)),
  );
  return { headers, rows };
}

const same = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

function cell(text: string, header: string): CellValue {
  if (text.trim() === "") return null;
  return numbers.includes(header) && /^\s*\d+(\.\d+)?\s*$/.test(text) ? Number(text) : text;
}
