import type { Vec3 } from "../../geometry/vector";
import { remember } from "../../memory/remember";
import { rememberRows, type CellRow } from "../../memory/rows";
import { rememberTable } from "../../memory/tables";
import { readRaceway, type Raceway } from "../../raceway/raceway";
import { readTradeSize, type TradeSize } from "../../raceway/tradeSize";
import { usableStick } from "../../raceway/sticks";
import { readTable, type Column, type TableRow } from "../../table/headerTable";
import { dayText } from "../../units/day";
import { InputError, isUserError } from "../../units/errors";
import { toInches } from "../../units/length";
import { toNumber } from "../../units/number";
import { BID_RUN_COLUMNS, readBidCells, type BidCells } from "../cells/bidCells";
import { readSite, SITE_COLUMNS, type Site } from "../cells/siteCells";
import { readRack, type Rack, type RackMember } from "../cells/rack";
import { readStart } from "../cells/start";

/** Columns of the Runs table. */
export const RUN_COLUMNS: readonly Column[] = [
  { name: "Run", required: true },
  { name: "Job" },
  { name: "Area" },
  { name: "Raceway", required: true, also: ["Conduit"] },
  { name: "Size", required: true, also: ["Trade size"] },
  { name: "Route", required: true },
  { name: "Quantity", also: ["Qty"], zero: true },
  { name: "From" },
  { name: "To" },
  { name: "Conductors" },
  { name: "Stick", also: ["Stick length"] },
  { name: "Date" },
  { name: "Crew" },
  { name: "Fittings" },
  { name: "Grounding bushing", also: ["Grounding bushings"] },
  { name: "Straps", zero: true },
  { name: "Start" },
  { name: "Joints" },
  { name: "Rack" },
  ...SITE_COLUMNS,
  ...BID_RUN_COLUMNS,
];

/** Conduit comes in 10 ft sticks (ANSI C80.1/C80.3 nominal, a threaded one with its coupling) [in]. */
export const STICK = 120;

/** Most rows of a job that the functions serve. */
const MOST_RUNS = 20_000;

/** Most of one run that is taken for meant. */
export const MOST_OF_ONE = 100_000;

/** One run as the user wrote it, its cells read. */
export interface Run extends Site, BidCells {
  readonly name: string;
  readonly job: string;
  readonly area: string;
  readonly raceway: Raceway;
  readonly size: TradeSize;
  readonly route: string;
  readonly quantity: number;
  /** True when the cell held the number 0, which counts as 1: an empty cell may come as 0. */
  readonly quantityWasZero?: true;
  readonly from: string;
  readonly to: string;
  readonly conductors: string;
  /** Longest piece a stick gives [in]: of a threaded one without its coupling. */
  readonly stick: number;
  /** 2026-12-01, or as the user wrote it. */
  readonly date: string;
  readonly crew: string;
  /** Fitting style and where grounding bushings go, as written; read by the take-off. */
  readonly fittings: string;
  readonly groundingBushing: string;
  /** Straps planned for the run, checked against the code; undefined when the cell is empty. */
  readonly straps?: number;
  /** Where its datum end stands, from the job's zero [in]; undefined: not said. */
  readonly start?: Vec3;
  /** Where the run is coupled, from its datum end along the conduit [in]; undefined: where the program puts couplings. */
  readonly joints?: readonly number[];
  /** Where the row is of a rack, as its cell says; and of which conduit of it the run is. */
  readonly rackCell?: Rack;
  readonly rack?: RackMember;
}

/** A row of the Runs table, by its place in the range: read, or told in words why not. */
export type RunRow = { readonly rowNumber: number; readonly name: string } & ReadRow;

type ReadRow = { readonly run: Run } | { readonly run?: undefined; readonly problem: string };

/**
 * Reads the Runs range. A row that cannot be read is kept in its place with its message.
 * @param argument what the range is called in messages
 * @throws InputError when the header row lacks a needed column
 */
export const readRuns: (range: unknown, argument?: string) => readonly RunRow[] = rememberTable(
  (range, argument = "runs") => {
    const rows = readTable(range, argument, RUN_COLUMNS, MOST_RUNS).rows.map((row) => {
      const name = runName(row);
      return { row, name, cells: [name, ...row.cells] };
    });
    const read = readRows(rows);
    return rows.map(({ row: { rowNumber }, name }, index) => placed(read[index]!, rowNumber, name));
  },
);

/** Places of a row that are kept: where it stands, and where before the last rows were put in. */
const PLACES = 2;

/** A row in its place; the same object for a row that stands where it stood. */
const placed = remember((row: ReadRow, rowNumber: number, name: string): RunRow => ({ rowNumber, name, ...row }), {
  most: PLACES,
});

/** A row but for its place: the same cells give the same run. */
const readRows = rememberRows(({ row, name }: NamedRow): ReadRow => {
  try {
    return { run: readRun(row, name) };
  } catch (error) {
    if (!isUserError(error)) throw error;
    return { problem: error.message };
  }
});

interface NamedRow extends CellRow {
  readonly row: TableRow;
  readonly name: string;
}

const text = (cell: unknown): string => (cell === null || cell === undefined ? "" : String(cell).trim());

/** What a row goes by that has no name. */
export const placeName = (rowNumber: number): string => `row ${rowNumber}`;

/** The run's name; its row where the cell is empty or holds an error. */
function runName(row: TableRow): string {
  const place = placeName(row.rowNumber);
  try {
    return text(row.get("Run")) || place;
  } catch {
    return place;
  }
}

function readRun(row: TableRow, name: string): Run {
  row.get("Run"); // an error there costs the row
  const route = row.get("Route");
  if (route === null) throw new InputError("Route is empty; write the legs, for example: up 4', east 12' 6\".");
  const raceway = readRaceway(row.get("Raceway"), "Raceway");
  const size = readTradeSize(row.get("Size"), "Size");
  const quantity = row.get("Quantity");
  const stick = row.get("Stick");
  const straps = row.get("Straps");
  const start = row.get("Start");
  const joints = row.get("Joints");
  const rack = row.get("Rack");
  return {
    name,
    job: text(row.get("Job")),
    area: text(row.get("Area")),
    raceway,
    size,
    route: text(route),
    quantity:
      quantity === null || quantity === 0
        ? 1
        : toNumber(quantity, "Quantity", { min: 1, max: MOST_OF_ONE, integer: true }),
    ...(quantity === 0 ? { quantityWasZero: true } : {}),
    from: text(row.get("From")),
    to: text(row.get("To")),
    conductors: text(row.get("Conductors")),
    stick: usableStick(raceway, size, stick === null ? STICK : toInches(stick, "Stick", { min: 12, max: 480 })),
    date: dayText(row.get("Date")),
    crew: text(row.get("Crew")),
    fittings: text(row.get("Fittings")),
    groundingBushing: text(row.get("Grounding bushing")),
    straps: straps === null ? undefined : toNumber(straps, "Straps", { min: 0, integer: true }),
    ...(start === null ? {} : { start: readStart(start) }),
    ...(joints === null ? {} : { joints: readJoints(joints) }),
    ...(rack === null ? {} : { rackCell: readRack(rack) }),
    ...readSite(row),
    ...readBidCells(row),
  };
}

/** Positions parted by commas or semicolons, in their order along the run. */
function readJoints(cell: unknown): number[] {
  const parts = typeof cell === "number" ? [cell] : text(cell).split(/[,;]/);
  return parts.map((part) => toInches(part, "Joints", { above: 0 })).sort((a, b) => a - b);
}
