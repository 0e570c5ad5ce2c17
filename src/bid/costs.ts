import type { RuleBook } from "../rules/rules";
import { whyNotOf } from "../shop/job/alternates";
import { rememberTable } from "../memory/tables";
import { readTable } from "../table/headerTable";
import { takeRows } from "../table/takeRows";
import { InputError } from "../units/errors";
import { toNumber } from "../units/number";
import { centsOf } from "./amounts";
import { cellText, COUNT_GROUPS } from "../takeoff/amounts/counts";

/** A cost of the job that is neither material nor labor of its take-off. */
export interface JobCost {
  readonly name: string;
  readonly cents: number;
  /** What stands under a column that a bid is told apart by. */
  readonly cell: (column: string) => string;
}

export interface CostBook {
  readonly costs: readonly JobCost[];
  readonly problems: readonly string[];
}

/** Columns of a Costs table. */
export const COST_COLUMNS = [
  { name: "Job cost", required: true, also: ["Cost"] },
  { name: "Quantity", also: ["Qty"], zero: true },
  { name: "Unit" },
  { name: "Price", required: true, also: ["Unit price"], zero: true },
  ...COUNT_GROUPS.map((name) => ({ name })),
];

/** The costs that are in the job by its alternates; the others are told. */
export function costsIn(range: unknown, rules: RuleBook): CostBook {
  const { costs, problems } = readCosts(range);
  const whyNot = whyNotOf(rules);
  const told = costs.flatMap(({ name, cell }) => {
    const words = whyNot(cell("Alternate"));
    return words === undefined ? [] : [`job cost ${name}: ${words}`];
  });
  const chosen = costs.filter(({ cell }) => whyNot(cell("Alternate")) === undefined);
  return { costs: chosen, problems: [...problems, ...told] };
}

/** Reads a Costs range: what each costs, times how many of its units. A row that cannot be read is told in words. */
export const readCosts: (range: unknown) => CostBook = rememberTable((range) => {
  if (range === null || range === undefined) return { costs: [], problems: [] };
  const costs: JobCost[] = [];
  const problems = takeRows(readTable(range, "costs", COST_COLUMNS).rows, "costs", (row, tell) => {
    const name = String(row.get("Job cost") ?? "").trim();
    if (name === "") throw new InputError("Job cost is empty.");
    const quantity = row.get("Quantity") === null ? 1 : toNumber(row.get("Quantity"), "Quantity");
    if (quantity === 0) tell(`Quantity of ${name} is 0 or empty and counts as 1`);
    const price = row.get("Price");
    if (price === null || price === 0) throw new InputError(`Price of ${name} is 0 or empty; it is not counted.`);
    const cells = new Map(COUNT_GROUPS.map((column) => [column, cellText(column, row.get(column))]));
    const cents = centsOf((quantity === 0 ? 1 : quantity) * toNumber(price, "Price"));
    costs.push({ name, cents, cell: (column) => cells.get(column) ?? "" });
  });
  return { costs, problems };
});
