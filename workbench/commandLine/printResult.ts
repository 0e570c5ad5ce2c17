import { isError, type ResultCell } from "./evaluateFormulas";

/** A result as lines of tab-separated cells; numbers with every digit, errors as "#VALUE! message". */
export function printRows(rows: readonly (readonly ResultCell[])[]): string {
  return rows.map((row) => row.map(printCell).join("\t")).join("\n");
}

/** A result for JSON: a single value by itself, a table as rows, an error as its code and message. */
export function jsonResult(rows: readonly (readonly ResultCell[])[]): unknown {
  const cells = rows.map((row) =>
    row.map((cell) => (isError(cell) ? { error: cell.code, message: cell.message } : cell)),
  );
  return cells.length === 1 && cells[0]!.length === 1 ? cells[0]![0] : cells;
}

function printCell(cell: ResultCell): string {
  if (isError(cell)) return oneLine(`${cell.code} ${cell.message}`.trim());
  if (cell === null) return "";
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return oneLine(String(cell));
}

/** Tabs and line breaks inside a text would read as new cells and rows. */
function oneLine(text: string): string {
  return text.replace(/\\/g, "\\\\").replace(/\t/g, "\\t").replace(/\r?\n/g, "\\n");
}
