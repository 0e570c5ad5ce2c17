/** One amount of an overview, drawn as a bar. */
export interface Bar {
  readonly label: string;
  readonly amount: number;
  /** Where it is another than its part's. */
  readonly unit?: string;
  readonly note?: string;
}

/** A part of an overview: amounts of one kind, told apart. */
export interface OverviewPart {
  readonly name: string;
  readonly unit: "ft" | "money" | "h" | "pieces";
  readonly bars: readonly Bar[];
  /** What is said of all of it; why there is nothing, where there are no bars. */
  readonly note: string;
}

/** Less of an amount than this is none: what the shares of a whole leave [ft, h]. */
export const NONE = 1e-9;

/** What stands for a column that a row leaves empty. */
export const unnamed = (label: string, column: string): string => (label === "" ? `no ${column}` : label);
