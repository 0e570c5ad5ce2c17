import type { Cell } from "./items";

/** Text that a spreadsheet would take for a formula. A signed number is a number, not a formula. */
const LOOKS_LIKE_FORMULA = /^[=@\t\r]|^[+-](?!\s*[\d.])/;

/**
 * A person's text as it must be written so that it stays text: an apostrophe before what looks like a formula. The
 * sheet shows and hands over the text without it.
 */
export const plainText = (cell: Cell): Cell =>
  typeof cell === "string" && LOOKS_LIKE_FORMULA.test(cell) ? `'${cell}` : cell;
