import type { Anchor, Box, Spot, TextStyle } from "./scene";

/** Height of letters on the page: still legible when 320 units fill a narrow pane. */
export const TEXT_SIZE = 12;
/** From one line of text to the next. */
export const LINE_HEIGHT = 16;

const NARROW = /[\s.,:;'"’”|!fijlrt()[\]/-]/;
const WIDE = /[mwMW%@—→←×]/;

/**
 * Width of text on the page. The font is the host's and cannot be asked here, so this is the width in a wide one
 * (measured on a common sans-serif with wide letters); narrower fonts leave some air.
 */
export function textWidth(text: string, style: TextStyle = "text"): number {
  let ems = 0;
  for (const letter of text)
    ems += NARROW.test(letter) ? 0.39 : WIDE.test(letter) ? 0.98 : /[A-Z]/.test(letter) ? 0.72 : 0.635;
  return ems * TEXT_SIZE * (style === "strong" ? 1.1 : 1);
}

/** Room that text takes when its anchor stands at `at`. */
export function textBox(text: string, at: Spot, anchor: Anchor, style: TextStyle = "text"): Box {
  const width = textWidth(text, style);
  const left = at[0] - (anchor === "start" ? 0 : anchor === "middle" ? width / 2 : width);
  return { left, right: left + width, top: at[1] - TEXT_SIZE * 0.6, bottom: at[1] + TEXT_SIZE * 0.6 };
}

/** Words parted into lines no wider than `width`. */
export function wrapText(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidth(longer) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
