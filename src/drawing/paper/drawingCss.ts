import type { LineStyle } from "./scene";
import { TEXT_SIZE } from "./textBox";

/** Width of each line, where an item does not bring its own. In the SVG itself, so that an item's own can differ. */
export const LINE_WIDTHS: Readonly<Record<LineStyle, number>> = {
  conduit: 1.5,
  "conduit-thin": 2.5,
  ghost: 1,
  halo: 6,
  centerline: 0.75,
  dimension: 0.9,
  extension: 0.6,
  solid: 0,
  mark: 2,
  shape: 1.25,
  surface: 1,
  faint: 0.6,
  highlight: 5,
};

/** Dashes and gaps of the lines that have them. */
export const DASHES: Readonly<Partial<Record<LineStyle, readonly number[]>>> = {
  ghost: [5, 3],
  centerline: [9, 3, 2, 3],
  surface: [2, 2],
};

/** Color and dash of each kind of line: every color stands out from white and from a dark page alike by 3 to 1. */
export const HUE_LOOKS: readonly { readonly color: string; readonly dashes: readonly number[] }[] = [
  { color: "#1f83c4", dashes: [] },
  { color: "#c9590a", dashes: [12, 3] },
  { color: "#1f9467", dashes: [5, 3] },
  { color: "#b8609a", dashes: [12, 3, 3, 3] },
  { color: "#96781d", dashes: [3, 3] },
  { color: "#7a74d6", dashes: [16, 3, 3, 3, 3, 3] },
  { color: "#808080", dashes: [8, 6] },
];

const hueRules = HUE_LOOKS.map(({ color, dashes }, index) => {
  const dash = dashes.length > 0 ? ` stroke-dasharray: ${dashes.join(" ")};` : "";
  return `.rl-drawing .rl-hue-${index + 1} { stroke: ${color};${dash} }`;
}).join("\n");

const dashRules = Object.entries(DASHES)
  .map(([style, dashes]) => `.rl-drawing .rl-${style} { stroke-dasharray: ${dashes.join(" ")}; }`)
  .join("\n");

/**
 * How the parts of a drawing look. Everything is drawn in the text color of the page around it, so that it follows
 * light, dark and high-contrast themes and prints black on white; parts differ by width, dash and fill.
 *
 * A page may set `--rl-page` (its background, for gaps where conduit passes behind), `--rl-tint` (fill of conduit and
 * bars) and `--rl-accent` (marks and what is pointed out).
 */
export const DRAWING_CSS = `
.rl-drawing { display: block; max-width: 100%; height: auto; color: inherit; font-family: inherit; }
.rl-drawing polyline, .rl-drawing polygon, .rl-drawing circle {
  fill: none; stroke: currentColor; stroke-linejoin: round; stroke-linecap: butt; }
.rl-drawing text { fill: currentColor; stroke: none; font-size: ${TEXT_SIZE}px; font-weight: 400; }
.rl-drawing text.rl-strong { font-weight: 600; }
.rl-drawing .rl-conduit { fill: var(--rl-tint, none); }
.rl-drawing .rl-conduit-thin { stroke-linecap: round; }
.rl-drawing .rl-halo { stroke: var(--rl-page, transparent); }
.rl-drawing .rl-solid { fill: currentColor; stroke: none; }
.rl-drawing .rl-mark { stroke: var(--rl-accent, currentColor); }
.rl-drawing .rl-highlight { stroke: var(--rl-accent, currentColor); stroke-opacity: 0.6; }
${dashRules}
${hueRules}
`.trim();
