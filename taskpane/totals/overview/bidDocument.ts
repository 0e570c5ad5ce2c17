import { readBid } from "../../../src/bid/bidTable";
import { escapeText } from "../../../src/drawing/paper/toSvg";
import { showMoney } from "../../../src/units/money";
import { show } from "../../../src/units/show";
import { attempt } from "../../components/attempt";
import { overviewStrings } from "./overviewStrings";

const t = overviewStrings.paper;
type Cell = string | number;

/** Words that stand on top of a bid, such as its job, bidder and date. */
export type TitleWords = readonly (readonly [name: string, words: string])[];

export interface PaperFacts {
  readonly words: TitleWords;
  /** Day and time of printing, as the person's language writes them. */
  readonly printed: string;
}

/** The words of a Bid table; none where it cannot be read. */
export const wordsOfBid = (bid: unknown): TitleWords =>
  (attempt(() => readBid(bid)).value?.lines ?? []).flatMap(({ name, unit, words }) =>
    unit === "words" && words !== "" ? [[name, words] as const] : [],
  );

const MONEY = ["Amount", "Unit price", "Extension"];
/** Rows of a change order whose every number is money. */
const PRICED = ["price", "subtotal", "total"];
const NUMBERS = [...MONEY, "Needed", "On hand", "To buy", "Left over", "Before", "After", "Difference", "Hours"];

/**
 * A table of the bid as a whole page of HTML, complete in itself: a title block, the lines, then what is not in it; its
 * head on every page, page x of y below. Prints clean on A4 and Letter.
 */
export function bidDocument(
  title: string,
  [header = [], ...rows]: readonly (readonly Cell[])[],
  facts: PaperFacts,
): string {
  const first = rows.filter((row) => !isTitle(row, facts.words));
  const notes = first.filter(isNote);
  const lines = first.filter((row) => !isNote(row));
  const shown = header.filter((_, column) => column === 0 || lines.some((row) => row[column] !== ""));
  const cell = (row: readonly Cell[], name: Cell): string => {
    const value = row[header.indexOf(name)] ?? "";
    const shownAs = PRICED.includes(String(row[0])) ? "Amount" : name;
    return `<td${NUMBERS.includes(String(name)) ? ` class="n"` : ""}>${escapeText(written(value, shownAs))}</td>`;
  };
  return [
    `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${escapeText(title)}</title>`,
    `<style>${PAPER_CSS}${footer([title, ...facts.words.slice(0, 1).map(([, words]) => words)].join(", "))}</style></head><body>`,
    `<header><h1>${escapeText(title)}</h1><dl>`,
    ...facts.words.map(([name, words]) => `<div><dt>${escapeText(name)}</dt><dd>${escapeText(words)}</dd></div>`),
    `<div><dt></dt><dd>${escapeText(t.printed(facts.printed))}</dd></div></dl></header>`,
    `<table><thead><tr>${shown.map((name) => `<th${NUMBERS.includes(String(name)) ? ` class="n"` : ""}>${escapeText(String(name))}</th>`).join("")}</tr></thead><tbody>`,
    ...lines.map(
      (row) => `<tr${isSum(row) ? ` class="sum"` : ""}>${shown.map((name) => cell(row, name)).join("")}</tr>`,
    ),
    "</tbody></table>",
    notes.length > 0 ? `<h2>${escapeText(t.notes)}</h2><ul>` : "",
    ...notes.map((row) => `<li>${escapeText(row.filter((value) => value !== "" && value !== "note").join(": "))}</li>`),
    notes.length > 0 ? "</ul>" : "",
    `<p class="caution">${escapeText(t.caution)}</p></body></html>`,
  ].join("\n");
}

/** Words that stand in the title block already. */
const isTitle = (row: readonly Cell[], words: TitleWords): boolean =>
  words.some(([name, said]) => row[0] === name && row[1] === said);

/** What is told below the lines has no number. */
const isNote = (row: readonly Cell[]): boolean =>
  row.every((value) => typeof value !== "number" || value === 0) && /^(note|not read|not counted)/.test(String(row[0]));

const isSum = (row: readonly Cell[]): boolean => /total/i.test(String(row[0]));

const written = (value: Cell, name: Cell): string =>
  typeof value !== "number" ? value : MONEY.includes(String(name)) ? showMoney(value) : show(value, 2);

/** What stands at the foot of every page, at the left: letters that end a text of CSS or of its page are left out. */
const footer = (text: string): string =>
  `@page { @bottom-left { content: "${text.replace(/[^\p{L}\p{N} ,.'#()+/:;&-]/gu, "")}"; font: 9pt Arial, sans-serif; } }`;

const PAPER_CSS = `
@page { margin: 14mm 14mm 16mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: 9pt Arial, sans-serif; } }
html { color-scheme: light; }
body { margin: 0; color: #000; background: #fff; font: 10pt/1.3 "Segoe UI", Arial, Helvetica, sans-serif; }
h1 { font-size: 18pt; margin: 0 0 2mm; }
h2 { font-size: 11pt; margin: 5mm 0 1mm; break-after: avoid; }
header { border: 1.5px solid; padding: 3mm 4mm; margin: 0 1px 5mm; }
dl { margin: 0; display: grid; grid-template-columns: 1fr 1fr; gap: 1mm 6mm; }
dl div { display: flex; gap: 2mm; }
dt { font-weight: 600; }
dd { margin: 0; }
table { width: 100%; border-collapse: collapse; }
th { text-align: left; border-bottom: 1.5px solid; vertical-align: bottom; }
th, td { padding: 0.8mm 2mm 0.8mm 0; vertical-align: top; overflow-wrap: break-word; }
td { border-bottom: 0.5px solid #999; }
.n { text-align: right; white-space: nowrap; }
tr { break-inside: avoid; }
.sum td { font-weight: 700; border-bottom: 1.5px solid; }
ul { margin: 0; padding-left: 5mm; }
li { break-inside: avoid; overflow-wrap: anywhere; }
.caution { margin-top: 6mm; font-size: 8.5pt; break-inside: avoid; }
@media screen { body { padding: 16px; max-width: 190mm; margin: auto; } }
`.trim();
