import type { Column, TableRow } from "../../table/headerTable";
import { toInches } from "../../units/length";
import { InputError, quoteValue } from "../../units/errors";
import { asNumber, toNumber } from "../../units/number";
import { optional } from "../../units/limits";
import { readBreaker, type Breaker } from "../../wiring/breaker";
import { readPlace, type Place } from "../../wiring/place";
import { readCelsius } from "../../units/celsius";

/** Columns of Runs about where a run is and what feeds it. */
export const SITE_COLUMNS: readonly Column[] = [
  { name: "Where" },
  { name: "Cover" },
  { name: "Temperature change" },
  { name: "Ambient" },
  { name: "Breaker" },
  { name: "Check pull" },
];

/** Where a run is and what feeds it, each as far as its row says so. */
export interface Site {
  readonly place?: Place;
  /** Planned cover of a buried run [in]. */
  readonly cover?: number;
  /** From its coldest to its hottest [°F]. */
  readonly temperatureChange?: number;
  /** Air around it [°C]. */
  readonly ambient?: number;
  readonly breaker?: Breaker;
  /** Whether to check the pull of its conductors, or the friction to check it with. */
  readonly pull?: boolean | number;
}

/** Reads those cells of a row. @throws InputError naming the column */
export function readSite(row: TableRow): Site {
  const cell = <T>(column: string, read: (value: unknown) => T) => optional(row.get(column), read);
  return dropUndefined({
    place: cell("Where", (value) => readPlace(value)),
    cover: cell("Cover", (value) => toInches(value, "Cover", { min: 0 })),
    temperatureChange: cell("Temperature change", (value) =>
      toNumber(value, "Temperature change", { above: 0, max: 500 }),
    ),
    ambient: cell("Ambient", (value) => readCelsius(value, "Ambient", { min: -60, max: 100 })),
    breaker: cell("Breaker", (value) => readBreaker(value)),
    pull: cell("Check pull", readPull),
  });
}

/** Yes, no, or a coefficient of friction. */
function readPull(cell: unknown): boolean | number {
  const word = String(cell).trim().toLowerCase();
  if (word === "yes" || word === "true") return true;
  if (word === "no" || word === "false") return false;
  if (asNumber(cell) !== undefined) return toNumber(cell, "Check pull", { min: 0.05, max: 1 });
  throw new InputError(`Check pull must be yes, no or a coefficient of friction, as in 0.35; got ${quoteValue(cell)}.`);
}

const dropUndefined = <T extends object>(values: { [K in keyof T]: T[K] | undefined }): T =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as T;
