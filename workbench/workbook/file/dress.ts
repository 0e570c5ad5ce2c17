import type { CellValue } from "../../engine";
import { NUMBER_FORMATS } from "../../numberFormats";
import type { ContentCell, Look, SheetContent } from "../content/sheetContent";

export const inputHeading: Look = { bold: true, wrap: true, color: "FFFFFF", fill: "1F4E5F" };
const resultHeading: Look = { bold: true, wrap: true, color: "FFFFFF", fill: "5B4A1F" };

/** Columns by what they hold, wherever their header stands. */
const counts = ["Quantity", "Straps", "On hand", "Minutes", "Bends", "Piece", "Bend", "Pull", "Sticks"];
const rooms = ["Room above", "Room below", "Room beside", "Reach behind", "Reach ahead"];
const inches = ["Length", "Cut length", "Mark", "Radius", "Deduct", "Shortest tail", "Stick", "Cut", "Left over"];
const degrees = ["Degrees", "Angle", "Dial", "Plane", "Springback", "Dial from", "Dial to", "Dial start"];
const money = ["Price", "Unit price", "Cost"];
const long = ["Route", "Note", "Check", "Finding", "Fix", "Item", "Turn", "For", "Conductors", "Rule", "Source"];

/** Format of a column, by its header. @param typed cells that people type: they stay text unless they are numbers */
export function columnLook(header: string, typed = false): Look {
  const wrap = long.includes(header) ? { wrap: true } : {};
  if (counts.includes(header)) return { align: "right" };
  if (header === "Date") return { format: "yyyy-mm-dd", align: "left" };
  if (money.includes(header)) return { format: "#,##0.00" };
  if (typed || header === "Size" || header === "Made for") return { format: "@", ...wrap };
  if (inches.includes(header)) return { format: NUMBER_FORMATS.inches };
  if (rooms.includes(header)) return { format: NUMBER_FORMATS.room };
  if (degrees.includes(header)) return { format: NUMBER_FORMATS.degrees };
  return wrap;
}

/** Widest column of each kind [px]: text wraps beyond it, headings break between words. */
const widest = { long: 250, other: 170 };
const perCharacter = 7;

/** Width that shows most of a column [px]. */
export function columnWidth(values: readonly CellValue[], header: string): number {
  const word = Math.max(...header.split(" ").map((part) => part.length)) + 2;
  const longest = Math.max(word, ...values.slice(1, 400).map((value) => shownText(value).length));
  return Math.min(long.includes(header) ? widest.long : widest.other, Math.max(45, longest * perCharacter + 12));
}

const shownText = (value: CellValue): string =>
  typeof value === "number" ? value.toFixed(Number.isInteger(value) ? 0 : 3) : String(value ?? "");

/** Result sheets get headings, formats, widths and heights by what their formulas gave. */
export function dressResults(sheets: readonly SheetContent[]): SheetContent[] {
  return sheets.map((sheet) => (sheet.cells[0]?.[0]?.formula ? dressResult(sheet) : sheet));
}

function dressResult(sheet: SheetContent): SheetContent {
  const headers = sheet.cells[0]!.map((cell) => String(cell?.value ?? ""));
  const columns = headers.map((header, column) => ({
    width: columnWidth(
      sheet.cells.map((row) => row[column]?.value ?? null),
      header,
    ),
    look: columnLook(header),
  }));
  const cells = sheet.cells.map((row, at) =>
    row.map((cell, column) => {
      if (at === 0 && row.length > 1) return cell && { ...cell, look: resultHeading };
      const unformatted = typeof cell?.value === "number" && !columns[column]?.look.format;
      return unformatted && !Number.isInteger(cell.value) ? { ...cell, look: { format: "0.000" } } : cell;
    }),
  );
  return { ...sheet, cells, columns, rowLines: cells.map((row) => linesOf(row, columns)) };
}

/** Lines of text that the fullest cell of a row needs. */
function linesOf(row: readonly (ContentCell | null)[], columns: readonly { width: number; look: Look }[]): number {
  const lines = row.map((cell, column) => {
    const { width, look } = columns[column]!;
    const fits = Math.max(1, Math.floor((width - 12) / 6));
    return look.wrap || cell?.look?.wrap ? Math.ceil(shownText(cell?.value ?? null).length / fits) : 1;
  });
  return Math.max(1, ...lines);
}
