import { rememberTable } from "../../memory/tables";
import type { TableRow } from "../../table/headerTable";
import { optionalRows, takeRows } from "../../table/takeRows";
import { dayText } from "../../units/day";
import { InputError, quoteValue } from "../../units/errors";
import { lookUpKey } from "../../units/names/lookUpKey";
import { toNumber } from "../../units/number";
import { RUN_GROUP_NAMES } from "./groupBy";
import type { Item } from "./item";
import { rowCell, type SourceRow } from "./lineBook";
import { remember } from "../../memory/remember";
import type { RuleBook } from "../../rules/rules";
import { whyNotOf } from "../../shop/job/alternates";
import { placesOf } from "../../shop/job/typicals";

/** Columns of Runs that a count may be told apart by, too: all but those of a run itself. */
export const COUNT_GROUPS = RUN_GROUP_NAMES.filter((name) => !["Raceway", "Size", "Run", "From", "To"].includes(name));

/** Columns of a Counts table. */
export const COUNT_COLUMNS = [
  { name: "Item", required: true },
  { name: "Quantity", required: true, also: ["Qty"], zero: true },
  { name: "Unit" },
  ...COUNT_GROUPS.map((name) => ({ name })),
];

/** Things that hang on no run: devices, fixtures, gear, boxes, strut. */
export interface Count {
  readonly row: SourceRow;
  readonly item: Item;
  readonly quantity: number;
}

export interface CountBook {
  readonly counts: readonly Count[];
  readonly problems: readonly string[];
}

/** Most of one item that is taken for meant. */
const MOST = 1_000_000;

/** Reads a Counts range: Item, Quantity, Unit (each or ft). A row that cannot be read is told in words and hides no other. */
export const readCounts: (range: unknown) => CountBook = rememberTable((range) => {
  const counts: Count[] = [];
  const rows = optionalRows(range, "counts", COUNT_COLUMNS);
  const problems = takeRows(rows, "counts", (row) => void counts.push(readCount(row)));
  return { counts, problems };
});

/** The counts that are in the job by its alternates, those of a typical as often as it is placed; the others are told. */
export const countsIn = (range: unknown, rules: RuleBook): CountBook => chosenOf(readCounts(range), rules);

const chosenOf = remember((book: CountBook, rules: RuleBook): CountBook => {
  const whyNot = whyNotOf(rules);
  const told: string[] = [];
  const counts = book.counts.flatMap((count): readonly Count[] => {
    const { row, item } = count;
    const placed = whyNot(rowCell(row, "Alternate")) ?? placedCounts(count, rules);
    if (typeof placed !== "string") return placed;
    told.push(`${row.name}, ${item.name}: ${placed}`);
    return [];
  });
  const isWhole = counts.length === book.counts.length && counts.every((count, at) => count === book.counts[at]);
  return isWhole ? book : { counts, problems: [...book.problems, ...told] };
});

/** A count of a typical in each area where that is placed; in words why nowhere. */
function placedCounts(count: Count, rules: RuleBook): readonly Count[] | string {
  const { row, quantity } = count;
  const typical = rowCell(row, "Typical");
  if (typical === "") return [count];
  const places = placesOf(typical, rules);
  if (typeof places === "string") return places;
  return places.map(({ area, times }) => ({
    ...{ ...count, quantity: quantity * times },
    row: { ...row, cell: (column) => (column === "Area" && area !== "" ? area : rowCell(row, column)) },
  }));
}

function readCount(row: TableRow): Count {
  const name = String(row.get("Item") ?? "").trim();
  if (name === "") throw new InputError("Item is empty.");
  const quantity = row.get("Quantity");
  if (quantity === null || quantity === 0)
    throw new InputError(`Quantity of ${name} is 0 or empty; it is not counted.`);
  const cells = new Map(COUNT_GROUPS.map((column) => [column, cellText(column, row.get(column))]));
  return {
    row: { rowNumber: row.rowNumber, name: `Counts row ${row.rowNumber}`, cell: (column) => cells.get(column) ?? "" },
    item: { name, kind: "counted item", unit: readUnit(row.get("Unit")), bought: true },
    quantity: toNumber(quantity, "Quantity", { above: 0, max: MOST }),
  };
}

/** A cell that things are told apart by, as text: a day as it is written. */
export const cellText = (column: string, cell: unknown): string =>
  column === "Date" ? dayText(cell) : String(cell ?? "").trim();

function readUnit(cell: unknown): Item["unit"] {
  const unit = lookUpKey(cell);
  if (["", "each", "ea", "pc", "pcs"].includes(unit)) return "each";
  if (["ft", "foot", "feet", "lf"].includes(unit)) return "ft";
  throw new InputError(`Unit must be each or ft; got ${quoteValue(cell)}.`);
}
