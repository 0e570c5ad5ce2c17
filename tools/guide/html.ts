import { escapeText } from "../../src/drawing/paper/toSvg";
import { printCell } from "./answers";
import type { Shown } from "./assemble";
import { isError, type ResultCell } from "./evaluate";

export const escape = escapeText;

/** A name that may break after each of its dots. */
export const breakable = (name: string): string => escape(name).replace(/\./g, ".<wbr>");

/** Rows of a table that the guide shows before it says how many more there are. */
const MOST_ROWS = 20;
/** Longer texts are set as words: parted into lines, in the page's own type. */
const LONG = 28;

/** A formula and its result: side by side for a single value, the result as a table for more. */
export function shownHtml({ formula, rows, decimals }: Shown): string {
  const call = `<code class="call">${breakableFormula(formula)}</code>`;
  const single = rows.length === 1 && rows[0]!.length === 1;
  if (single) return `<div class="line">${call}${singleHtml(printCell(rows[0]![0]!, decimals))}</div>`;
  return `<div class="sheet">${call}${tableHtml(`Result of ${formula}`, rows, decimals)}</div>`;
}

const singleHtml = (text: string): string =>
  `<output${text.length > LONG ? ' class="words"' : ""}>${escape(text)}</output>`;

/** A refused formula with what the cell says. */
export function refusedHtml({ formula, rows }: Shown): string {
  const cell = rows[0]![0]!;
  const [code, message] = isError(cell) ? [cell.code, cell.message] : ["", ""];
  return `<div class="line refused"><code class="call">${breakableFormula(formula)}</code><p><b>${escape(code)}</b> ${escape(message)}</p></div>`;
}

/** Formulas may break after commas, semicolons and the dots of names. */
const breakableFormula = (formula: string): string =>
  formula
    .split(/(?<=[,;(])(?=\S)|(?<=\.)(?=[A-Z])/)
    .map(escape)
    .join("<wbr>");

/** A table with its header row, scrolled sideways where the page is narrow. */
export function tableHtml(name: string, rows: readonly (readonly ResultCell[])[], decimals: number): string {
  const [headers = [], ...body] = rows;
  const head = headers.map((cell) => `<th scope="col">${escape(printCell(cell))}</th>`).join("");
  const lines = body
    .slice(0, MOST_ROWS)
    .map((row) => `<tr>${row.map((cell) => cellHtml(cell, decimals)).join("")}</tr>`);
  const left = body.length - lines.length;
  return [
    `<div class="wide" tabindex="0" role="region" aria-label="${escape(name)}">`,
    `<table><thead><tr>${head}</tr></thead><tbody>`,
    ...lines,
    "</tbody></table></div>",
    ...(left > 0 ? [`<p class="quiet">… and ${left} more rows.</p>`] : []),
  ].join("\n");
}

function cellHtml(cell: ResultCell, decimals: number): string {
  const text = printCell(cell, decimals);
  const kind = typeof cell === "number" ? ' class="n"' : text.length > LONG ? ' class="long"' : "";
  return `<td${kind}>${escape(text)}</td>`;
}
