import { rememberTable } from "../../memory/tables";
import { readTable, type TableRow } from "../../table/headerTable";
import { readEach } from "../../table/takeRows";
import { InputError, NotListedError, quoteValue } from "../../units/errors";
import { lookUpKey } from "../../units/names/lookUpKey";
import { toCent } from "../../units/money";
import { toNumber } from "../../units/number";
import { loadedRate, type Wage } from "./laborRate";

/** A kind of worker in a crew. */
interface Worker extends Wage {
  readonly crew: string;
  readonly number: number;
}

export const CREW_COLUMNS = [
  { name: "Crew" },
  { name: "Worker", required: true },
  { name: "Number", zero: true },
  { name: "Base", required: true },
  { name: "Fringes", zero: true },
  { name: "Of that paid", zero: true },
  { name: "Burden", zero: true },
];

/** How many straight hours an hour is paid as. */
const TIMES: Readonly<Record<string, number>> = { straight: 1, overtime: 1.5, double: 2 };

/**
 * Reads how an hour is paid: straight, overtime (1.5), double (2), or the multiple itself.
 * @throws InputError for anything else
 */
export function readTimes(cell: unknown): number {
  if (cell === null || cell === undefined || cell === "") return 1;
  const times = TIMES[lookUpKey(cell)];
  if (times !== undefined) return times;
  if (typeof cell === "number") return toNumber(cell, "time", { min: 1, max: 5 });
  throw new InputError(`time must be straight, overtime, double or a multiple from 1 to 5; got ${quoteValue(cell)}.`);
}

const readCrews = rememberTable((range): readonly Worker[] =>
  readEach(readTable(range, "crews", CREW_COLUMNS).rows, "crews", readWorker),
);

function readWorker(row: TableRow): Worker {
  const amount = (column: string, limits = { min: 0 }): number => toNumber(row.get(column) ?? 0, column, limits);
  const number = toNumber(row.get("Number") ?? 1, "Number", { min: 0 });
  const worker = {
    ...{ crew: String(row.get("Crew") ?? "").trim(), number, base: toNumber(row.get("Base"), "Base", { above: 0 }) },
    ...{ fringes: amount("Fringes"), paid: amount("Of that paid"), burden: readBurden(row.get("Burden")) },
  };
  if (worker.paid <= worker.fringes) return worker;
  throw new InputError(`Of that paid must be at most the Fringes, ${worker.fringes}; got ${worker.paid}.`);
}

/** Percent, with or without its sign. */
const readBurden = (cell: unknown): number =>
  toNumber(typeof cell === "string" ? cell.replace(/\s*%\s*$/, "") : (cell ?? 0), "Burden", { min: 0, max: 200 });

/**
 * What an hour of one worker of a crew costs on average, fully loaded, to the cent: each kind of worker by their number.
 *
 * @param crew its name; omitted: every row
 * @throws NotListedError when no row has that crew
 * @throws InputError when a row cannot be read: a rate that leaves somebody out is wrong
 */
export function crewRate(range: unknown, crew: unknown, time: unknown): number {
  const times = readTimes(time);
  const wanted = lookUpKey(crew);
  const workers = readCrews(range).filter((worker) => wanted === "" || lookUpKey(worker.crew) === wanted);
  const count = workers.reduce((sum, { number }) => sum + number, 0);
  if (count === 0) throw new NotListedError(`crews has nobody in crew ${quoteValue(crew)}.`);
  return toCent(workers.reduce((sum, worker) => sum + worker.number * loadedRate(worker, times), 0) / count);
}
