import { DRAWING_CSS } from "../../../src/drawing/paper/drawingCss";

/**
 * How a ticket looks, on paper and in the pane: black on white whatever theme is around it. Sizes follow the font size
 * of the ticket, so that the pane shows it smaller than the page.
 */
export const TICKET_CSS = `
.rlt-ticket, .rlt-cuts { color: #000; background: #fff; --rl-page: #fff; --rl-tint: #e8e8e8; --rl-accent: #000;
  color-scheme: light; forced-color-adjust: none; font-family: "Segoe UI", Arial, Helvetica, sans-serif; line-height: 1.2;
  container-type: inline-size; }
.rlt-ticket h3, .rlt-ticket h4, .rlt-ticket p, .rlt-ticket ul, .rlt-ticket dl, .rlt-ticket dd,
.rlt-cuts h3, .rlt-cuts h4, .rlt-cuts p, .rlt-cuts ul { margin: 0; padding: 0; }
.rlt-ticket small { font-size: 0.8em; font-weight: 400; }
.rlt-ticket svg { width: 100%; }
.rlt-head { display: flex; gap: 0 1.2em; align-items: flex-start; border-bottom: 2px solid; padding-bottom: 0.3em; }
.rlt-names { flex: 1 1 auto; min-width: 0; display: flex; flex-wrap: wrap; gap: 0 1.2em; align-items: baseline; }
.rlt-code { order: 1; margin: 0; flex: none; width: 7.8em; text-align: center; font-size: 0.8em; font-weight: 600; line-height: 1.15; }
.rlt-code svg { shape-rendering: crispEdges; background: #fff; }
.rlt-ticks { flex: 1 0 100%; }
.rlt-ticks span { white-space: nowrap; }
.rlt-ticks i { display: inline-block; width: 1em; height: 1em; border: 1.25px solid; margin-right: 0.35em; vertical-align: -0.15em; }
.rlt-head h3 { font-size: 2em; line-height: 1.1; flex: 1 1 auto; }
.rlt-head h3 span { font-size: 0.6em; font-weight: 600; }
.rlt-make { font-size: 1.5em; font-weight: 700; }
.rlt-cut { font-size: 1.2em; white-space: nowrap; }
.rlt-cut strong { font-size: 1.5em; }
.rlt-head dl { flex: 1 0 100%; display: flex; flex-wrap: wrap; gap: 0 1.2em; }
.rlt-head dt, .rlt-head dd { display: inline; }
.rlt-head dt { font-weight: 600; }
.rlt-bends caption { font-size: 0.9em; }
.rlt-lead, .rlt-bends caption { font-weight: 600; text-align: left; caption-side: top; }
.rlt-stick { margin: 0.5em 0; break-inside: avoid; }
.rlt-bends { border-collapse: collapse; width: 100%; margin-bottom: 0.6em; }
.rlt-bends th, .rlt-bends td { text-align: left; vertical-align: top; padding: 0.2em 0.8em 0.2em 0; border-bottom: 1px solid #777; }
.rlt-bends thead th { font-size: 0.9em; border-bottom: 1.5px solid #000; vertical-align: bottom; }
.rlt-bends tr { break-inside: avoid; }
.rlt-bends td:last-child { padding-right: 0; }
.rlt-bends b { font-size: 1.5em; line-height: 1.1; white-space: nowrap; }
.rlt-bends small { display: block; }
.rlt-lineup { white-space: nowrap; }
.rlt-ticket .rlt-lineup svg { display: inline-block; width: 1.3em; max-width: none; vertical-align: -0.35em; margin-right: 0.2em; }
.rlt-dial, .rlt-hook, .rlt-close .rlt-mark { white-space: nowrap; }
.rlt-lie { width: 10em; }
.rlt-close .rlt-lie { width: 8.4em; }
.rlt-close .rlt-bends b { font-size: 1.45em; }
.rlt-close .rlt-bends th small, .rlt-close .rlt-mark small { display: inline; margin-left: 0.3em; }
.rlt-close .rlt-bends th { white-space: nowrap; }
.rlt-close .rlt-bends th, .rlt-close .rlt-bends td { padding-top: 0.05em; padding-bottom: 0.05em; }
.rlt-close .rlt-bends { font-size: 0.9em; margin-bottom: 0.2em; }
.rlt-close .rlt-stick { margin: 0.1em 0; }
.rlt-close .rlt-caution { font-size: 0.64em; line-height: 1.15; }
.rlt-close .rlt-checks { font-size: 0.8em; line-height: 1.15; }
.rlt-tight .rlt-bends td:last-child { padding: 0; }
.rlt-tight .rlt-bends { font-size: 0.85em; line-height: 1.05; }
.rlt-tight .rlt-bends b { font-size: 1.5em; line-height: 1; }
.rlt-tight .rlt-turn small { display: inline; margin-left: 0.4em; }
.rlt-tight .rlt-lie svg { margin: -1px 0; }
.rlt-tight .rlt-checks { font-size: 0.65em; }
.rlt-tight .rlt-checks ul { columns: 2; column-gap: 1em; }
.rlt-tight .rlt-finished > :first-child { flex-basis: 24%; }
.rlt-tight .rlt-finished { flex-basis: 74%; }
.rlt-tight .rlt-caution { font-size: 0.52em; line-height: 1.05; }
.rlt-tight .rlt-foot { margin-top: 0; }
.rlt-foot { display: flex; gap: 0.8em; align-items: flex-start; margin-top: 0.3em; }
.rlt-finished { flex: 1 1 66%; display: flex; gap: 0.8em; align-items: flex-start; }
.rlt-finished > :first-child { flex: 1 1 38%; }
.rlt-finished > * { flex: 1 1 62%; break-inside: avoid; }
.rlt-length { white-space: nowrap; }
.rlt-checks { font-size: 0.87em; }
.rlt-ticket h4 { font-size: 1em; }
.rlt-ticket .rlt-join { margin-bottom: 0.4em; }
.rlt-ticket ul { list-style: none; }
.rlt-ticket li { padding-left: 0.7em; text-indent: -0.7em; }
.rlt-ticket li::before { content: "– "; }
.rlt-caution { border: 1.5px solid; padding: 0.3em 0.5em; margin: 0 1px; font-size: 0.72em; break-inside: avoid; flex: 1 1 34%; }
.rlt-caution:first-child ul { columns: 2; column-gap: 1.5em; }
.rlt-caution li { break-inside: avoid; }
.rlt-cuts li { list-style: none; padding-left: 1.6em; text-indent: -1.3em; }
.rlt-cuts li::before { content: "\\2610  "; }
.rlt-cuts li:last-child::before { content: ""; }
.rlt-ways { columns: 18em; column-gap: 2em; }
.rlt-cuts .rlt-way { break-inside: avoid; margin-top: 0.7em; }
.rlt-cuts h3 { font-size: 1.6em; border-bottom: 2px solid; }
.rlt-cuts h4 { font-size: 1.2em; margin-top: 0.8em; break-after: avoid; }
.rlt-cuts .rlt-way p { font-weight: 600; }
.rlt-preview { border: 1px solid #777; padding: 8px; background: #fff; font-size: 13px; overflow: hidden; }
@container (max-width: 460px) {
  .rlt-bends thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .rlt-bends tr { display: grid; grid-template-columns: auto 1fr; gap: 0 0.8em; padding: 0.4em 0; border-bottom: 1px solid #777; }
  .rlt-bends th, .rlt-bends td { border: 0; padding: 0; }
  .rlt-bends td:not(.rlt-mark) { grid-column: 1 / -1; }
  .rlt-bends td:not(.rlt-mark)::before { content: attr(data-label) ": "; font-weight: 600; }
  .rlt-bends .rlt-dial small, .rlt-bends td.rlt-dial b { display: inline; margin-right: 0.5em; }
  .rlt-head { display: flow-root; }
  .rlt-head .rlt-code { float: right; margin-left: 0.8em; }
  .rlt-names { display: block; }
  .rlt-head h3 span { display: block; }
  .rlt-foot, .rlt-finished { display: block; }
  .rlt-caution ul { columns: 1; }
}
`.trim();

/** The page around the tickets: margins, what stands on every sheet, where a page ends. Fits A4 and Letter alike. */
export const PAGE_CSS = `
@page { margin: 8mm 12mm 11mm; @bottom-right { content: counter(page) " / " counter(pages); font: 9pt Arial, sans-serif; } }
html { color-scheme: light; }
body { margin: 0; color: #000; background: #fff; font-size: 11pt; }
.rlt-page { width: 100%; border-collapse: collapse; break-after: page; table-layout: fixed; }
.rlt-page:last-child { break-after: auto; }
.rlt-page > thead td, .rlt-page > tbody > tr > td { padding: 0; }
.rlt-page > thead td { font: 9pt Arial, sans-serif; padding-bottom: 2mm; }
.rlt-page > thead span { float: right; }
.rlt-together .rlt-page { break-after: auto; break-inside: avoid; margin-bottom: 5mm; }
.rlt-together .rlt-ticket { font-size: 10pt; }
.rlt-together .rlt-cutpage { break-before: page; }
@media screen { body { padding: 16px; max-width: 190mm; margin: auto; } .rlt-page { margin-bottom: 16mm; } }
${DRAWING_CSS}
${TICKET_CSS}
`.trim();

/** A sheet of stickers, three by eight, inside what both A4 and Letter have. */
export const LABELS_CSS = `
@page { margin: 10mm 8mm; }
html { color-scheme: light; }
body.rlt-labels { margin: 0 auto; width: 190mm; color: #000; background: #fff; display: grid;
  grid-template-columns: repeat(3, 1fr); gap: 2mm; font: 8pt/1.2 "Segoe UI", Arial, Helvetica, sans-serif; }
.rlt-label { height: 29mm; overflow: hidden; border: 0.5px dashed #777; border-radius: 2mm; padding: 1.5mm; box-sizing: border-box;
  display: flex; gap: 1.5mm; break-inside: avoid; }
.rlt-label h3 { margin: 0; font-size: 12pt; }
.rlt-label p { margin: 0; }
.rlt-label > div { min-width: 0; overflow-wrap: anywhere; }
.rlt-label .rlt-code { flex: none; width: 20mm; margin: 0; font-size: 6.5pt; text-align: center; }
.rlt-label svg { width: 100%; height: auto; shape-rendering: crispEdges; }
${DRAWING_CSS}
`.trim();
