import { parseCsv, writeCsv } from "hucre/csv";
import type { CellValue } from "../../engine";

/** What a spreadsheet program would read as the start of a formula, after any blanks and apostrophes. */
const startsFormula = /^'*\s*[=+\-@＝＋－＠\t\r\n]/;

/**
 * A table as CSV (RFC 4180) that spreadsheet programs open as text and numbers only. A text that they would run as a
 * formula, such as `=1+1` or `-5 up`, gets an apostrophe in front; readCsv takes it off again.
 */
export function tableToCsv(rows: readonly (readonly CellValue[])[]): string {
  const safe = rows.map((row) => row.map((value) => (typeof value === "string" ? guarded(value) : shown(value))));
  // The mark at the beginning tells Excel that the text is UTF-8, so that ½ and ° arrive.
  return `${writeCsv(safe, { bom: true })}\r\n`;
}

const guarded = (text: string): string => (startsFormula.test(text) || /^'*[\t\r\n]/.test(text) ? `'${text}` : text);

const shown = (value: CellValue): CellValue => (typeof value === "boolean" ? (value ? "TRUE" : "FALSE") : value);

/**
 * The rows of a CSV text, every cell a text as written: `1/2` stays `1/2`. Cells may be parted by commas, semicolons or
 * tabs, as Excel writes them in different countries, or as a range is copied to the clipboard.
 *
 * @throws Error when a quote is opened and never closed
 */
export function readCsv(text: string): string[][] {
  const plain = text.replace(/^\uFEFF/, "");
  checkLines(plain);
  const delimiter = delimiterOf(plain);
  checkQuotes(plain, delimiter);
  const rows = parseCsv(plain, { delimiter }).map((row) => row.map((value) => unguarded(String(value ?? ""))));
  return rows.filter((row) => row.some((value) => value.trim() !== ""));
}

const unguarded = (text: string): string => (text.startsWith("'") && startsFormula.test(text) ? text.slice(1) : text);

/** Longest line that is taken for cells [characters]: a hundred cells as full as they can be in a Runs table. */
const longestLine = 1_000_000;

function checkLines(text: string): void {
  let number = 1;
  for (let start = 0; start <= text.length; number += 1) {
    const found = text.indexOf("\n", start);
    const end = found < 0 ? text.length : found;
    if (end - start > longestLine) {
      throw new Error(
        `line ${number} has ${(end - start).toLocaleString("en-US")} characters; a line of cells has at most ` +
          `${longestLine.toLocaleString("en-US")}. Rows must stand on lines of their own.`,
      );
    }
    start = end + 1;
  }
}

/** Whichever of the three stands most often in the header line, outside quotes. */
function delimiterOf(text: string): string {
  const header = (/^\s*(?:"[^"]*"|[^"\r\n]+)*/.exec(text)?.[0] ?? "").replace(/"[^"]*"/g, "");
  const count = (sign: string): number => header.split(sign).length;
  return [",", ";", "\t"].reduce((best, sign) => (count(sign) > count(best) ? sign : best));
}

function checkQuotes(text: string, delimiter: string): void {
  const before = `(^|[\\r\\n${delimiter}])`;
  const withoutClosed = text.replace(
    new RegExp(`${before}"[^"]*(?:""[^"]*)*"`, "g"),
    (field: string, start: string) => {
      return start + "\n".repeat(field.slice(start.length).split("\n").length - 1);
    },
  );
  const open = new RegExp(`${before}"`).exec(withoutClosed);
  if (!open) return;
  const line = withoutClosed.slice(0, open.index + open[0].length).split("\n").length;
  throw new Error(`line ${line} opens a quote that is never closed.`);
}

/**
 * The text of a CSV file's bytes: UTF-8 or UTF-16 by its mark; without one UTF-16 where every other byte is 0, UTF-8 if it
 * is that, else Windows-1252.
 *
 * @throws Error when it holds 0 bytes otherwise: no text does
 */
export function decodeText(bytes: Uint8Array): string {
  const text = decode(bytes);
  if (text.includes("\0")) throw new Error("this is not a text file: it holds bytes of 0. Save it as CSV (UTF-8).");
  return text;
}

function decode(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  const [even, odd] = zeros(bytes.subarray(0, 2000));
  if (odd > 0.3 && even < 0.1) return new TextDecoder("utf-16le").decode(bytes);
  if (even > 0.3 && odd < 0.1) return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** Which part of the bytes at even and at odd places is 0: letters of most languages have one such byte in UTF-16. */
function zeros(bytes: Uint8Array): [even: number, odd: number] {
  const part = (rest: number) => {
    const some = bytes.filter((_, at) => at % 2 === rest);
    return some.length === 0 ? 0 : some.filter((byte) => byte === 0).length / some.length;
  };
  return [part(0), part(1)];
}
