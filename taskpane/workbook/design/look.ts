/** How a cell or a column looks, as far as Excel, a file and the local page all know it. */
export interface Look {
  format?: string;
  bold?: boolean;
  italic?: boolean;
  wrap?: boolean;
  /** Right leaves some air before what stands next to it. */
  align?: "left" | "center" | "right";
  /** Height of the letters [pt], where it is not the workbook's own. */
  size?: number;
  /** Text in the middle of the row's height; at its top where this is not said. */
  middle?: boolean;
  /** A thin line under the cell. */
  underline?: boolean;
  /** Colors as RRGGBB. */
  color?: string;
  fill?: string;
}

/** Air beside what stands at the right of its cell, where the host counts in pixels [px]. */
export const AIR = 8;

/** Colors of the two kinds of sheets: what people fill in, and what follows by formula. */
export const COLORS = { input: "1F4E5F", result: "5B4A1F" } as const;

export const heading = (kind: keyof typeof COLORS): Look => ({
  bold: true,
  wrap: true,
  middle: true,
  size: 10,
  color: "FFFFFF",
  fill: COLORS[kind],
});

/** Rounds what is shown; the cell keeps the exact value. A number leaves the width of a bracket before what follows it. */
export const FORMATS = {
  text: "@",
  date: "yyyy-mm-dd",
  inches: '0.000" in."_)',
  /** Room a swing takes: no one measures it finer. */
  room: '0.0" in."_)',
  degrees: '0.0##"°"_)',
  quantity: "#,##0.0_)",
  count: "#,##0_)",
  hours: "#,##0.00_)",
  minutes: "0.0#_)",
  /** Thousandths: a number of no unit, or of one that its row names. */
  number: "0.000_)",
} as const;

/** What prices are in where a workbook says nothing: the code and the trade sizes are American. */
export const CURRENCY = "$";

/** Money in the workbook's currency: a sign such as $ or a code such as CAD, or nothing. */
export const money = (currency: string): string =>
  `${currency === "" ? "" : `"${currency.replace(/"/g, "")}${/\w$/.test(currency) ? " " : ""}"`}#,##0.00_)`;
