import type { JobWork } from "../amounts/jobWork";
import type { Told } from "../amounts/leftToMake";
import type { Lists, PricedLine } from "./priceLine";
import { toCent } from "../../units/money";

type Cell = string | number;

/** What a take-off is shown with. */
export interface TakeoffView extends Lists {
  /** Columns of Runs it is grouped by; they stand first. */
  readonly by: readonly string[];
  /** What was made and left out, in words. */
  readonly told?: readonly Told[];
  /** Said of the whole order, below its total. */
  readonly notes: readonly string[];
  /** Rows of the user's other tables that could not be used, in words. */
  readonly problems: readonly string[];
}

/**
 * The take-off as a table with a header row: the lines, a totals row when there are prices or labor, then whatever
 * could not be counted or read, in words.
 */
export const takeoffTable = (priced: readonly PricedLine[], job: JobWork, view: TakeoffView): Cell[][] =>
  tableOfParts(priced, job, view, priced);

/** Lines of a group added up: the cells of the group, as many as it has in common, and its lines. */
export interface Subtotal {
  readonly group: readonly string[];
  readonly lines: readonly PricedLine[];
}

/** The same, with what stands in place of its lines where they are told apart by groups. */
export function tableOfParts(
  priced: readonly PricedLine[],
  job: JobWork,
  view: TakeoffView,
  parts: readonly (PricedLine | Subtotal)[],
): Cell[][] {
  const headers = [...view.by, "Item", "Unit", "Quantity", ...moneyHeaders(view), ...laborHeaders(view), "Note"];
  const row = (cells: Record<string, Cell | null>): Cell[] => headers.map((header) => cells[header] ?? "");
  return [
    headers,
    ...parts.map((part) => row("line" in part ? lineCells(part, view) : subtotalCells(part, view))),
    ...(view.prices || view.labor ? [row(totalCells(priced, job, view))] : []),
    ...lackingRows(priced).map(row),
    ...view.notes.map((words) => row({ Item: "in groups", Note: words })),
    ...job.problems.map(({ name, message }) => row({ Item: `not counted: ${name}`, Note: message })),
    ...(view.told ?? []).map(({ what, words }) => row({ Item: what, Note: words })),
    ...view.problems.map((problem) => row({ Item: "not read", Note: problem })),
  ];
}

const moneyHeaders = ({ prices }: TakeoffView): string[] => (prices ? ["Unit price", "Extension"] : []);
const laborHeaders = ({ labor }: TakeoffView): string[] => (labor ? ["Minutes", "Hours"] : []);

function lineCells({ line, unitPrice, extension, hours, notes, noPrice }: PricedLine, view: TakeoffView) {
  return {
    ...groupCells(line.group, view),
    Item: line.item.name,
    Unit: line.item.unit,
    Quantity: line.quantity,
    "Unit price": noPrice === null ? unitPrice : "no price",
    Extension: extension,
    Minutes: hours === null || line.quantity === 0 ? null : (hours * 60) / line.quantity,
    Hours: hours,
    Note: notes.join("; "),
  };
}

const groupCells = (group: readonly string[], { by }: TakeoffView): Record<string, Cell> =>
  Object.fromEntries(by.map((column, index) => [column, group[index] ?? ""]));

const subtotalCells = ({ group, lines }: Subtotal, view: TakeoffView): Record<string, Cell> => ({
  ...groupCells(group, view),
  Item: group.length === view.by.length ? SUBTOTAL : `${SUBTOTAL}, whole ${view.by[group.length - 1]!.toLowerCase()}`,
  ...sums(lines, view),
});

/** How a row begins that adds up a group. */
export const SUBTOTAL = "Subtotal";

const sums = (priced: readonly PricedLine[], { prices, labor }: TakeoffView): Record<string, Cell> => ({
  ...(prices ? { Extension: toCent(sum(priced.map((entry) => entry.extension ?? 0))) } : {}),
  ...(labor ? { Hours: sum(priced.map((entry) => entry.hours ?? 0)) } : {}),
});

function totalCells(priced: readonly PricedLine[], job: JobWork, view: TakeoffView): Record<string, Cell> {
  const noPrice = [...new Set(priced.flatMap((entry) => entry.noPrice ?? []))];
  const noLabor = [...new Set(priced.flatMap((entry) => entry.noLabor))];
  const left = job.problems.length;
  const notes = [
    ...(noPrice.length > 0 ? [`no price for ${noPrice.join(", ")}`] : []),
    ...(noLabor.length > 0 ? [`no minutes for ${noLabor.join(", ")}`] : []),
    ...(left > 0 ? [`${left} not counted, named below`] : []),
  ];
  return {
    Item: notes.length > 0 ? "Total, without what the note names" : "Total",
    ...sums(priced, view),
    Note: notes.join("; "),
  };
}

/** Words of the lines for what the total lacks. */
export const LACKING = { prices: "without a price", labor: "without minutes" } as const;

/** A line of its own for all that has no price, and one for work that has no minutes: seen without opening the note. */
const lackingRows = (priced: readonly PricedLine[]): Record<string, Cell>[] => {
  const noPrice = [...new Set(priced.flatMap((entry) => entry.noPrice ?? []))];
  const noLabor = [...new Set(priced.flatMap((entry) => entry.noLabor))];
  return [
    ...(noPrice.length > 0 ? [{ Item: `${LACKING.prices}: ${noPrice.length}`, Note: noPrice.join(", ") }] : []),
    ...(noLabor.length > 0 ? [{ Item: `${LACKING.labor}: ${noLabor.length}`, Note: noLabor.join(", ") }] : []),
  ];
};

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
