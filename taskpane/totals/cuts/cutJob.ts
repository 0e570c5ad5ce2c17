import type { Ledger } from "../../hooks/useLedger";
import type { Cell } from "../../workbook/items";

/** The tables a cutting plan is made from. */
export interface CutJob {
  runs: Cell[][];
  stock: Cell[][] | undefined;
  shoes: Cell[][] | undefined;
  rules: Cell[][] | undefined;
  /** The Made table, where what is made is not cut again. */
  made?: Cell[][];
  /** Rows of Runs (1 is the header's) that are cut now; all where nothing is said. */
  rows?: readonly number[];
  /** The Prices table, where couplings that would save sticks are looked for. */
  prices?: Cell[][] | undefined;
}

/** These tables as the workbook has them now; undefined without runs. */
export function cutJob({ Runs, Stock, Shoes, Rules }: Ledger["tables"]): CutJob | undefined {
  return Runs && { runs: Runs.cells, stock: Stock?.cells, shoes: Shoes?.cells, rules: Rules?.cells };
}
