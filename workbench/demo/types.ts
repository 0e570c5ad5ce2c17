/** A cell of the demo: a value, a formula (text that starts with "="), or null for a blank. */
export type DemoCell = string | number | boolean | null;

/** How a column of a demo sheet looks and what may be typed into it below the header. */
export interface DemoColumn {
  /** Width [px]; 100 when not given. */
  width?: number;
  /** Number format: "0.000", "@" keeps what is typed as text (a size of 1/2 stays 1/2). */
  format?: string;
  /** A list to choose from. */
  choices?: readonly string[];
  align?: "left" | "center" | "right";
  /** Breaks long text into lines. */
  wrap?: boolean;
}

/** One sheet of the demo. */
export interface DemoSheet {
  name: string;
  columns: readonly DemoColumn[];
  rows: readonly (readonly DemoCell[])[];
  /** The row of headings, counted from 0; it and the rows above stay in view. 0 when not given. */
  headerRow?: number;
  /** Columns at the left that stay in view. */
  frozenColumns?: number;
  /** Rows with words about the sheet, drawn in plain gray across it. */
  noteRows?: readonly number[];
  /** Makes the rows from the header down a table of this name, so that formulas can say Runs[#All]. */
  table?: string;
  /** A sheet of formulas: drawn with a tinted header so that it reads as a result. */
  result?: boolean;
  /** Tab color. */
  color?: string;
}

/** The workbook that the page opens on. */
export interface DemoBook {
  name: string;
  sheets: readonly DemoSheet[];
}
