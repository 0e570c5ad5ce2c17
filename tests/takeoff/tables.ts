/** Helpers that build ranges and read tables by their headers, for take-off tests. */

export type Cell = string | number | null;

export const RUNS_HEADER = ["Run", "Job", "Area", "Raceway", "Size", "Route", "Quantity", "From", "To", "Conductors"];

export interface RunCells {
  Run: string;
  Route: string;
  [column: string]: Cell;
}

/** A Runs range; whatever a run does not say is 1/2 EMT, once, without job, ends or conductors. */
export function runsRange(...runs: RunCells[]): Cell[][] {
  const usual: Record<string, Cell> = { Raceway: "EMT", Size: "1/2", Quantity: 1 };
  const extra = [...new Set(runs.flatMap((run) => Object.keys(run)))].filter((name) => !RUNS_HEADER.includes(name));
  const headers = [...RUNS_HEADER, ...extra];
  return [headers, ...runs.map((run) => headers.map((header) => run[header] ?? usual[header] ?? ""))];
}

/** Shoes of radius 4 for every raceway and size that is asked for. */
export const shoesRange = (...of: [raceway: string, size: string, radius: number][]): Cell[][] => [
  ["Raceway", "Size", "Radius", "Deduct"],
  ...of.map(([raceway, size, radius]) => [raceway, size, radius, radius + 2]),
];

/** The rows of a table as records by header. */
export function records(table: readonly (readonly (string | number)[])[]): Record<string, string | number>[] {
  const [headers = [], ...rows] = table;
  return rows.map((row) => Object.fromEntries(headers.map((header, index) => [header, row[index] ?? ""])));
}

/** The only row whose cells are as wanted. */
export function rowWhere(
  table: readonly (readonly (string | number)[])[],
  wanted: Record<string, string | number>,
): Record<string, string | number> {
  const found = records(table).filter((row) => Object.entries(wanted).every(([name, value]) => row[name] === value));
  if (found.length !== 1) {
    throw new Error(
      `${found.length} rows have ${JSON.stringify(wanted)} in\n${table.map((row) => row.join(" | ")).join("\n")}`,
    );
  }
  return found[0]!;
}

/** Quantity of an item of a take-off. */
export const quantityOf = (table: readonly (readonly (string | number)[])[], item: string): number =>
  Number(rowWhere(table, { Item: item })["Quantity"]);
