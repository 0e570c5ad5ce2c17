import type { Ledger } from "../hooks/useLedger";
import type { Cell } from "../workbook/items";

/** What a take-off of this workbook rests on besides its runs: the cells of its tables. */
export interface OrderTables {
  shoes: Cell[][] | undefined;
  prices: Cell[][] | undefined;
  labor: Cell[][] | undefined;
  rules: Cell[][] | undefined;
  stock: Cell[][] | undefined;
  counts: Cell[][] | undefined;
  allowances: Cell[][] | undefined;
  by: string;
}

/** @param by columns of Runs to group by; empty for none */
export function orderTables(
  { Shoes, Prices, Labor, Rules, Stock, Counts, Allowances }: Ledger["tables"],
  by = "",
): OrderTables {
  return {
    shoes: Shoes?.cells,
    prices: Prices?.cells,
    labor: Labor?.cells,
    rules: Rules?.cells,
    stock: Stock?.cells,
    counts: Counts?.cells,
    allowances: Allowances?.cells,
    by,
  };
}
