import { DRAWING_CSS, LINE_WIDTHS } from "./drawingCss";
import type { CircleItem, SceneItem, LineItem, Scene, Spot } from "./scene";

/** Text as it may stand in SVG, between tags or in an attribute. */
export const escapeText = (text: string): string =>
  text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/'/g, "&#39;")
    // Control characters are not allowed in XML at all.
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/g, "");

/**
 * A drawing as SVG text. It takes its color and font from the page around it; the page loads `DRAWING_CSS` once, or
 * `standalone` puts it in the drawing (for a picture in a worksheet or a file).
 *
 * @example toSvg(drawCounts([{ label: "stub-up", count: 4 }], { title: "Bends" })) //=> '<svg class="rl-drawing" …'
 */
export function toSvg(scene: Scene, { standalone = false } = {}): string {
  const { width, height, title, description, items } = scene;
  const size = standalone ? ` width="${width}" height="${height}"` : "";
  return [
    `<svg class="rl-drawing" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"${size} role="img">`,
    `<title>${escapeText(title)}</title>`,
    `<desc>${escapeText(description)}</desc>`,
    ...(standalone ? [`<style>${DRAWING_CSS}</style>`] : []),
    ...items.map(itemSvg),
    "</svg>",
  ].join("\n");
}

function itemSvg(item: SceneItem): string {
  switch (item.kind) {
    case "line": {
      const name = item.closed ? "polygon" : "polyline";
      const hue = item.hue === undefined ? "" : ` rl-hue-${item.hue}`;
      const row = item.row === undefined ? "" : ` data-row="${item.row}"`;
      return `<${name} class="rl-${item.style}${hue}"${row} points="${item.points.map(pair).join(" ")}" ${strokeWidth(item)}/>`;
    }
    case "circle":
      return `<circle class="rl-${item.style}" cx="${round(item.center[0])}" cy="${round(item.center[1])}" r="${round(item.radius)}" ${strokeWidth(item)}/>`;
    case "text": {
      const anchor = item.anchor === "start" ? "" : ` text-anchor="${item.anchor}"`;
      const place = `x="${round(item.at[0])}" y="${round(item.at[1])}"`;
      return `<text class="rl-${item.style}" ${place} dy="0.36em"${anchor}>${escapeText(item.text)}</text>`;
    }
  }
}

const strokeWidth = ({ style, width = LINE_WIDTHS[style] }: LineItem | CircleItem): string =>
  `stroke-width="${round(width)}"`;

const pair = ([x, y]: Spot): string => `${round(x)},${round(y)}`;

/** Thousandths of a page unit: far finer than a screen or a printer shows. */
const round = (value: number): number => Math.round(value * 1000) / 1000 + 0;
