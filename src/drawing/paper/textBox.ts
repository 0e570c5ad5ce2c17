import type { Anchor, Box, Spot, TextStyle } from "./scene";

/** Height of letters on the page: still legible when 320 units fill a narrow pane. */
export const TEXT_SIZE = 12;
/** From one line of text to the next. */
export const LINE_HEIGHT = 16;

/** Widths of letters, in shares of the letters' height; the first that fits counts. */
const LETTERS: readonly (readonly [letters: RegExp, width: number])[] = [
  [/[\s.,:;'’|!fijlrt()[\]/-]/, 0.39],
  [/["“”]/, 0.47],
  [/[mwMW%@—→←×]/, 0.98],
  [/[A-Z]/, 0.75],
];
const ORDINARY = 0.64;
const STRONG = 1.1;

/**
 * Width of text on the page. The font is the host's and cannot be asked here, so this is the width in a wide one
 * (measured in DejaVu Sans); narrower fonts leave some air.
 */
export function textWidth(text: string, style: TextStyle = "text"): number {
  let ems = 0;
  for (const letter of text) ems += LETTERS.find(([letters]) => letters.test(letter))?.[1] ?? ORDINARY;
  return ems * TEXT_SIZE * (style === "strong" ? STRONG : 1);
}

/** Room that text takes when its anchor stands at `at`. */
export function textBox(text: string, at: Spot, anchor: Anchor, style: TextStyle = "text"): Box {
  const width = textWidth(text, style);
  const left = at[0] - (anchor === "start" ? 0 : anchor === "middle" ? width / 2 : width);
  return { left, right: left + width, top: at[1] - TEXT_SIZE * 0.6, bottom: at[1] + TEXT_SIZE * 0.6 };
}

/** Words parted into lines no wider than `width`. */
export function wrapText(text: string, width: number, style: TextStyle = "text"): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidth(longer, style) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
