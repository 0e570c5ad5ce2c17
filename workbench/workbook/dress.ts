import type { CellValue } from "../engine";
import type { ContentCell, Look, SheetContent } from "./sheetContent";

export const inputHeading: Look = { bold: true, wrap: true, color: "FFFFFF", fill: "1F4E5F" };
const resultHeading: Look = { bold: true, wrap: true, color: "FFFFFF", fill: "5B4A1F" };

/** Columns by what they hold, wherever their header stands. */
const counts = ["Quantity", "Straps", "On hand", "Minutes", "Bends", "Piece", "Bend", "Pull", "Sticks"];
const inches = ["Length", "Cut length", "Mark", "Radius", "Deduct", "Shortest tail", "Stick", "Cut", "Left over"];
const degrees = ["Degrees", "Angle", "Dial", "Plane", "Springback", "Dial from", "Dial to", "Dial start"];
const money = ["Price", "Unit price", "Cost"];
const long = ["Route", "Note", "Check", "Finding", "Fix", "Item", "Turn", "For", "Conductors", "Rule"];

/** Format of a column, by its header. @param typed cells that people type: they stay text unless they are numbers */
export function columnLook(header: string, typed = false): Look {
  const wrap = long.includes(header) ? { wrap: true } : {};
  if (counts.includes(header)) return { align: "right" };
  if (money.includes(header)) return { format: "#,##0.00" };
  if (typed || header === "Size" || header === "Made for") return { format: "@", ...wrap };
  if (inches.includes(header)) return { format: "0.000" };
  if (degrees.includes(header)) return { format: "0.0##" };
  return wrap;
}

/** Width that shows most of a column [px]: text wraps beyond it. */
export function columnWidth(values: readonly CellValue[], header: string): number {
  const texts = values
    .slice(0, 400)
    .map((value) => (typeof value === "number" ? value.toFixed(3) : String(value ?? "")));
  const longest = Math.max(header.length + 3, ...texts.map((text) => text.length));
  return Math.min(long.includes(header) ? 380 : 240, Math.max(60, longest * 7 + 14));
}

/** Result sheets get headings, formats and widths by what their formulas gave. */
export function dressResults(sheets: readonly SheetContent[]): SheetContent[] {
  return sheets.map((sheet) => (sheet.cells[0]?.[0]?.formula ? dressResult(sheet) : sheet));
}

function dressResult(sheet: SheetContent): SheetContent {
  const headers = sheet.cells[0]!.map((cell) => String(cell?.value ?? ""));
  const heading = (cell: ContentCell | null) => cell && { ...cell, look: resultHeading };
  return {
    ...sheet,
    cells: sheet.cells.map((row, at) => (at === 0 && row.length > 1 ? row.map(heading) : row)),
    columns: headers.map((header, column) => ({
      width: columnWidth(
        sheet.cells.map((row) => row[column]?.value ?? null),
        header,
      ),
      look: columnLook(header),
    })),
  };
}
