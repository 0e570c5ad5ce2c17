// The two lists of all functions: docs/functions.md and the first page of the help.
import type { GuidePage } from "./assemble";
import { breakable, escape } from "./html";
import { documentHtml, pageName, usage } from "./page";
import type { Family } from "./pages/types";

const LENGTHS =
  "A length is a number of inches or text as the trade writes it: 3' 4-1/2\", 40.5, 40 ½, 1028 mm or 1.2 m. Angles are " +
  "degrees. Arguments in brackets may be left out.";
const ERRORS =
  "What cannot be computed answers #VALUE! with a message that names the argument, the limit and the value; what no table " +
  "lists answers #N/A. In a table a bad row comes back as a line in words and hides no other.";

interface Listed {
  readonly family: Family;
  readonly pages: readonly GuidePage[];
}

/** Pages by their families, in order. */
export function byFamily(pages: readonly GuidePage[]): Listed[] {
  const families = [...new Set(pages.map(({ family }) => family))];
  return families.map((family) => ({ family, pages: pages.filter((page) => page.family === family) }));
}

export function indexHtml(pages: readonly GuidePage[]): string {
  const lists = byFamily(pages).map(
    ({ family, pages: own }) => `<h2>${escape(family.title)}</h2>
<p>${escape(family.about)}</p>
<ul class="list">
${own.map(({ doc }) => `<li><a href="${pageName(doc.id)}">${breakable(doc.id)}</a> ${escape(doc.summary)}</li>`).join("\n")}
</ul>`,
  );
  const opening = `<h1>Worksheet functions</h1>
<p class="lead">Each function's name begins with <code>CONDUIT.</code> in a cell.</p>
<p>${escape(LENGTHS)}</p>
<p>${escape(ERRORS)}</p>`;
  return documentHtml(
    "Raceway Ledger function guide",
    "All worksheet functions of Raceway Ledger.",
    `${opening}\n${lists.join("\n")}`,
  );
}

export function functionsMarkdown(pages: readonly GuidePage[]): string {
  const parts = byFamily(pages).map(({ family, pages: own }) => {
    const rows = own.map(({ doc }) => [
      `[\`${doc.id}\`](help/${pageName(doc.id)})`,
      `\`${usage(doc).replace(/^=CONDUIT\.[\w.]+/, "")}\``,
      doc.summary,
    ]);
    return `## ${family.title}\n\n${family.about}\n\n${markdownTable([["function", "arguments", "what it gives"], ...rows])}`;
  });
  const opening = [
    "# Worksheet functions",
    "<!-- Written by `npm run guide` from the doc comments in functions/; do not edit. -->",
    "In a cell, write `CONDUIT.` before each name. Each links to its page, with formula, figure, examples and source.",
    LENGTHS,
    ERRORS,
  ];
  return `${[...opening, ...parts].join("\n\n")}\n`;
}

/** A table whose columns are padded to their widest cell, as the formatter has it. */
function markdownTable(rows: readonly (readonly string[])[]): string {
  const cells = rows.map((row) => row.map((cell) => cell.replace(/\|/g, "\\|")));
  const widths = cells[0]!.map((_, column) => Math.max(...cells.map((row) => [...row[column]!].length)));
  const line = (row: readonly string[]): string =>
    `| ${row.map((cell, column) => cell + " ".repeat(widths[column]! - [...cell].length)).join(" | ")} |`;
  const [head, ...body] = cells;
  return [line(head!), line(widths.map((width) => "-".repeat(width))), ...body.map(line)].join("\n");
}
