import type { CellValue } from "../engine";

/** One item of a job, as it is now or as it was issued. */
export interface ItemLine {
  job: string;
  /** "now", or the sheet that holds the runs as they were issued. */
  issue: string;
  item: string;
  unit: string;
  quantity: number;
  /** Hours by the Labor table; null where it has none for it. Factors are not in them. */
  hours: number | null;
}

/** A cell whose saved result is another than what is worked out now. */
export interface Difference {
  sheet: string;
  cell: string;
  was: CellValue;
  now: CellValue;
}

/** What is wrong in a workbook, and where. */
export interface Problem {
  where: string;
  what: string;
}

/** What came of one workbook. */
export interface Reading {
  jobs: string[];
  /** Rows of the Runs table. */
  runs: number;
  items: ItemLine[];
  /** How many saved results were looked at, and how many are others now. */
  compared: number;
  different: number;
  /** The first of them, sheet by sheet. */
  differences: Difference[];
  /** Formulas that only the program that saved them can work out, or that answer otherwise each time. */
  notCompared: number;
  problems: Problem[];
}
