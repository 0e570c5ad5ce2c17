import type { Run } from "../../shop/run/runsTable";
import { InputError, quoteValue } from "../../units/errors";
import { naturalOrder } from "../../units/names/naturalOrder";
import { lookUpKey } from "../../units/names/lookUpKey";
import { RACEWAYS } from "../../raceway/raceway";
import { placeInWords } from "../../wiring/place";
import { show } from "../../units/show";
import { TRADE_SIZES } from "../../raceway/tradeSize";

const RUN_GROUPS: Record<string, (run: Run) => string> = {
  Job: (run) => run.job,
  Area: (run) => run.area,
  Raceway: (run) => run.raceway,
  Size: (run) => run.size,
  Run: (run) => run.name,
  From: (run) => run.from,
  To: (run) => run.to,
  Date: (run) => run.date,
  Crew: (run) => run.crew,
  Phase: (run) => run.phase ?? "",
  Floor: (run) => shown(run.floor),
  Height: (run) => shown(run.height),
  Alternate: (run) => run.alternate ?? "",
  Typical: (run) => run.typical ?? "",
  Where: (run) => (run.place ? placeInWords(run.place) : ""),
};

/** A number of a cell that may be empty. */
const shown = (value: number | undefined): string => (value === undefined ? "" : show(value));

/** Names of the columns of Runs that results can be grouped by. */
export const RUN_GROUP_NAMES: readonly string[] = Object.keys(RUN_GROUPS);

/** The cell of a run under a column that can be grouped by. */
export const groupCell = (run: Run, column: string): string => RUN_GROUPS[column]?.(run) ?? "";

/**
 * Reads `by`: column names parted by commas, in the order in which the columns shall stand; "none" for no grouping.
 *
 * @param fallback what an omitted argument means
 * @throws InputError when a name is not one of `known`
 */
export function readBy(by: unknown, known: readonly string[], fallback: readonly string[]): string[] {
  if (by === null || by === undefined || by === "") return [...fallback];
  const parts: unknown[] = Array.isArray(by) ? by.flat() : String(by).split(/[,;]/);
  const words = parts.map((part) => String(part ?? "").trim()).filter((word) => word !== "");
  if (words.length === 1 && lookUpKey(words[0]) === "none") return [];
  const columns = words.map((word) => {
    const column = known.find((name) => lookUpKey(name) === lookUpKey(word));
    if (!column) throw new InputError(`by must name columns out of ${known.join(", ")}; got ${quoteValue(word)}.`);
    return column;
  });
  return [...new Set(columns)];
}

const placeIn = (list: readonly string[], value: string): number => (value === "" ? list.length : list.indexOf(value));

/** Compares two cells of one group column: raceways and sizes as the trade lists them, other labels naturally. */
export function compareCells(column: string, a: string | number, b: string | number): number {
  if (typeof a === "number" && typeof b === "number") return a - b;
  if (column === "Raceway") return placeIn(RACEWAYS, String(a)) - placeIn(RACEWAYS, String(b));
  if (column === "Size") return placeIn(TRADE_SIZES, String(a)) - placeIn(TRADE_SIZES, String(b));
  return naturalOrder(String(a), String(b));
}

/** Compares two groups, column by column. */
export function compareGroups(
  columns: readonly string[],
  a: readonly (string | number)[],
  b: readonly (string | number)[],
): number {
  for (let index = 0; index < columns.length; index++) {
    const difference = compareCells(columns[index]!, a[index]!, b[index]!);
    if (difference !== 0) return difference;
  }
  return 0;
}
