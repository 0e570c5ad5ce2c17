import { toSvg } from "../../src/drawing/paper/toSvg";
import type { GuidePage } from "./assemble";
import type { DocArgument, DocFunction } from "./docComments";
import { breakable, escape, refusedHtml, shownHtml, tableHtml } from "./html";
import { tablesIn } from "./tables";

export const pageName = (id: string): string => `${id.toLowerCase()}.html`;

/** Units as they stand in the doc comments, in words. */
const UNITS: Readonly<Record<string, string>> = {
  in: "inches",
  "in²": "square inches",
  "°": "degrees",
  "°F": "degrees Fahrenheit",
  "lb/100 ft": "pounds per 100 ft",
};

/** Letters of the formulas. */
const LETTERS = "R radius on the centerline, A angle, OD outside diameter, T setback, g gain of a bend.";

export const CAUTION =
  "Results are planning aids. Check every shoe with a test bend; powered benders crush and pinch, and the free end " +
  "swings. The adopted edition of the local electrical code, the inspector and a licensed electrician decide.";

/** How a function is called: its arguments by name, optional ones in brackets. */
export const usage = ({ id, arguments: args }: DocFunction): string =>
  `=CONDUIT.${id}(${args.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")})`;

/** The help page of one function. `others` are the functions of its family. */
export function pageHtml(page: GuidePage, others: readonly string[]): string {
  const { doc, notes, scene } = page;
  const sections = [
    `<h1><span>CONDUIT.</span><wbr>${breakable(doc.id)}</h1>`,
    `<p class="usage"><code>${breakable(usage(doc))}</code></p>`,
    `<p class="lead">${escape(doc.summary)}</p>`,
    doc.remarks && `<p>${escape(doc.remarks)}</p>`,
    scene && `<figure>${toSvg(scene)}<figcaption>${escape(notes.figure!.caption)}</figcaption></figure>`,
    section("Arguments", argumentsHtml(doc.arguments)),
    section("Gives", `<p>${escape(capital(withUnits(doc.returns)))}</p>`),
    notes.formula && section("Formula", formulaHtml(notes.formula)),
    section("Example", exampleHtml(page)),
    section("What it refuses", page.refused.map(refusedHtml).join("\n")),
    section("Source", `<p>${escape(capital(doc.source))}</p>`),
    others.length > 0 && section("See also", linksHtml(others)),
  ].filter((part): part is string => typeof part === "string" && part !== "");
  return documentHtml(`CONDUIT.${doc.id}`, doc.summary, sections.join("\n"), "index.html");
}

const section = (title: string, content: string): string => `<h2>${title}</h2>\n${content}`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Units in square brackets, in words and in round brackets. */
const withUnits = (text: string): string =>
  text.replace(/\[([^\]]+)\]/g, (_, unit: string) => `(${UNITS[unit] ?? unit})`);

function argumentsHtml(args: readonly DocArgument[]): string {
  if (args.length === 0) return "<p>None.</p>";
  const rows = args.map(({ name, optional, unit, text }) => {
    const kind = [unit && (UNITS[unit] ?? unit), optional && "may be left out"].filter(Boolean).join("; ");
    return `<dt><code>${escape(name)}</code>${kind ? ` <span>${escape(kind)}</span>` : ""}</dt><dd>${escape(withUnits(text))}</dd>`;
  });
  return `<dl>${rows.join("\n")}</dl>`;
}

function formulaHtml(lines: readonly string[]): string {
  const used = lines.some((line) => /\b(R|A|OD|T|g)\b/.test(line));
  return `<div class="formula">${lines.map((line) => `<p>${escape(line)}</p>`).join("\n")}</div>${
    used ? `\n<p class="quiet">${LETTERS}</p>` : ""
  }`;
}

function exampleHtml({ example, more, notes, doc }: GuidePage): string {
  const shown = [example, ...more];
  const tables = [...new Set(shown.flatMap(({ formula }) => tablesIn(formula)))];
  const cells = notes.cells ? [`<h3>Cells from A1</h3>\n${tableHtml("Cells from A1", notes.cells, 4)}`] : [];
  return [
    ...shown.map(shownHtml),
    `<p class="quiet">Computed when this page was made; numbers are shown to ${example.decimals} decimals, a cell holds them in full.</p>`,
    ...(tables.length + cells.length > 0 ? [`<p>What ${shown.length > 1 ? "they read" : "it reads"}:</p>`] : []),
    ...cells,
    ...tables.map(({ name, rows }) => `<h3>${name}</h3>\n${tableHtml(`${name} table of ${doc.id}`, rows, 4)}`),
  ].join("\n");
}

const linksHtml = (ids: readonly string[]): string =>
  `<p class="links">${ids.map((id) => `<a href="${pageName(id)}">${breakable(id)}</a>`).join(" ")}</p>`;

/** A whole page. `home` is the address of the guide's first page, left out on that page itself. */
export function documentHtml(title: string, description: string, content: string, home?: string): string {
  const name = "Raceway Ledger function guide";
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="description" content="${escape(description)}">
<title>${escape(home ? `${title} · Raceway Ledger` : title)}</title>
<link rel="stylesheet" href="guide.css">
</head>
<body>
<header>${home ? `<a href="${home}">${name}</a>` : `<span>${name}</span>`}</header>
<main>
${content}
</main>
<footer><p>${escape(CAUTION)}</p></footer>
</body>
</html>
`;
}
