import { isError, type ResultCell } from "./evaluate";

/** Decimals that the guide prints; a result is rounded to them. */
const DECIMALS = 4;

/** A cell of a result as the guide prints it. */
export function printCell(cell: ResultCell, decimals = DECIMALS): string {
  if (isError(cell)) return `${cell.code} ${cell.message}`.trim();
  if (cell === null) return "";
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return typeof cell === "number" ? String(Number(cell.toFixed(decimals))) : cell;
}

const decimalsOf = (text: string): number => /^-?\d+\.(\d+)$/.exec(text)?.[1]?.length ?? 0;

/** Decimals at which a result is printed: those of the answer in the comment, where it has more than usual. */
export const printedDecimals = (answer: string): number => Math.max(DECIMALS, decimalsOf(answer));

/**
 * Whether a computed result is the answer in the doc comment. A number is compared at the answer's decimals, four or
 * more; a table by its header row, whose end "…" may stand for.
 */
export function isAnswer(answer: string, rows: readonly (readonly ResultCell[])[]): boolean {
  const [first] = rows;
  if (!first?.length || isError(first[0])) return false;
  if (rows.length === 1 && first.length === 1) return printCell(first[0]!, printedDecimals(answer)) === answer;
  const headers = first.map((cell) => printCell(cell)).join(", ");
  return answer.endsWith(", …") ? headers.startsWith(answer.slice(0, -1)) : headers === answer;
}
