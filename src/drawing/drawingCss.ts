import { TEXT_SIZE } from "./textBox";

/**
 * How the parts of a drawing look. Everything is drawn in the text color of the page around it, so that it follows
 * light, dark and high-contrast themes and prints black on white; parts differ by width, dash and fill.
 *
 * A page may set `--rl-page` (its background, for gaps where conduit passes behind), `--rl-tint` (fill of conduit and
 * bars) and `--rl-accent` (marks and what is pointed out).
 */
export const DRAWING_CSS = `
.rl-drawing { display: block; max-width: 100%; height: auto; color: inherit; font-family: inherit; }
.rl-drawing * { vector-effect: none; }
.rl-drawing polyline, .rl-drawing polygon, .rl-drawing circle {
  fill: none; stroke: currentColor; stroke-width: 1; stroke-linejoin: round; stroke-linecap: butt; }
.rl-drawing text { fill: currentColor; stroke: none; font-size: ${TEXT_SIZE}px; font-weight: 400; }
.rl-drawing text.rl-strong { font-weight: 600; }
.rl-drawing .rl-conduit { stroke-width: 1.5; fill: var(--rl-tint, none); }
.rl-drawing .rl-conduit-thin { stroke-width: 2.5; stroke-linecap: round; }
.rl-drawing .rl-ghost { stroke-dasharray: 5 3; }
.rl-drawing .rl-halo { stroke: var(--rl-page, transparent); }
.rl-drawing .rl-centerline { stroke-width: 0.75; stroke-dasharray: 9 3 2 3; }
.rl-drawing .rl-dimension { stroke-width: 0.9; }
.rl-drawing .rl-extension { stroke-width: 0.6; }
.rl-drawing .rl-solid { fill: currentColor; stroke: none; }
.rl-drawing .rl-mark { stroke: var(--rl-accent, currentColor); stroke-width: 2; }
.rl-drawing .rl-shape { stroke-width: 1.25; }
.rl-drawing .rl-surface { stroke-width: 1; stroke-dasharray: 2 2; }
.rl-drawing .rl-faint { stroke-width: 0.6; }
.rl-drawing .rl-highlight { stroke: var(--rl-accent, currentColor); stroke-width: 5; stroke-opacity: 0.6; }
`.trim();
