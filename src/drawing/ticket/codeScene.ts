import qrcode from "qrcode-generator";
import type { Scene, SceneItem, Spot } from "../paper/scene";

/** Light modules around a code that a reader needs (ISO/IEC 18004: four). */
const QUIET = 4;

/**
 * A QR code (ISO/IEC 18004) of a text, dark on light whatever theme is around it only where the page is light: a page unit
 * to the module.
 *
 * @param words what the code is for, for those who cannot see it
 */
export function codeScene(text: string, words: string): Scene {
  const code = qrcode(0, "M");
  code.addData(utf8(text));
  code.make();
  const count = code.getModuleCount();
  const items = Array.from({ length: count }, (_, row) => rowItems(row, count, (column) => code.isDark(row, column)));
  const width = count + 2 * QUIET;
  return { width, height: width, title: words, description: text, items: items.flat() };
}

/** The bytes of a text in UTF-8, a letter to the byte, as the encoder takes them. */
const utf8 = (text: string): string =>
  encodeURIComponent(text).replace(/%([0-9A-F]{2})/g, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)));

/** Dark modules side by side as one bar. */
function rowItems(row: number, count: number, isDark: (column: number) => boolean): SceneItem[] {
  const bars: SceneItem[] = [];
  for (let from = 0; from < count; from++) {
    if (!isDark(from)) continue;
    let to = from;
    while (to + 1 < count && isDark(to + 1)) to++;
    bars.push({ kind: "line", style: "solid", closed: true, points: bar(from + QUIET, to + 1 + QUIET, row + QUIET) });
    from = to;
  }
  return bars;
}

const bar = (left: number, right: number, top: number): Spot[] => [
  [left, top],
  [right, top],
  [right, top + 1],
  [left, top + 1],
];
