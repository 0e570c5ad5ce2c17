import { TEXT_SIZE, textWidth } from "../paper/textBox";

/** How the letters of a ticket's cell look on a worksheet. */
export type TicketLetters =
  | "plain"
  | "fact"
  | "name"
  | "cut"
  | "strong"
  | "heading"
  | "number"
  | "cell"
  | "cell-small"
  | "cell-tiny"
  | "check"
  | "small"
  | "tiny"
  | "rule";

export interface LettersLook {
  /** [pt] */
  readonly size: number;
  readonly bold?: boolean;
  /** Text goes on in further lines of its cell. */
  readonly wrap?: boolean;
  /** A thin line under the cell. */
  readonly underline?: boolean;
}

export const LETTERS: Readonly<Record<TicketLetters, LettersLook>> = {
  plain: { size: 11 },
  fact: { size: 11 },
  name: { size: 22, bold: true },
  cut: { size: 18, bold: true },
  strong: { size: 12, bold: true },
  heading: { size: 11, bold: true, underline: true },
  number: { size: 16, bold: true, wrap: true, underline: true },
  cell: { size: 11, wrap: true, underline: true },
  "cell-small": { size: 10, wrap: true, underline: true },
  "cell-tiny": { size: 9, wrap: true, underline: true },
  check: { size: 11 },
  small: { size: 10 },
  tiny: { size: 9 },
  rule: { size: 4, underline: true },
};

/**
 * A sheet of tickets is printed so much smaller: ten bends find room on a page, and a font that stands in for a missing
 * one, which may be a seventh wider and the columns counted in its digits with it, still keeps to the page's width.
 */
export const PRINT_SCALE = 0.82;

/** Columns of a ticket on a worksheet [pt], 560 in all. */
export const TICKET_COLUMNS: readonly number[] = [28, 108, 58, 44, 60, 164, 98];

/** Width of the columns from one to before another [pt]. */
export const widthOf = (columns: readonly number[], first = 0, end = columns.length): number =>
  columns.slice(first, end).reduce((sum, width) => sum + width, 0);

export const TICKET_WIDTH = widthOf(TICKET_COLUMNS);

export interface TicketCell {
  readonly text: string;
  readonly letters: TicketLetters;
}

/** One row of the worksheet: its cells from the first column on, and its height [pt]. */
export interface TicketLine {
  readonly cells: readonly TicketCell[];
  readonly height: number;
}

/** Arial takes this share of the wide letters that widths are reckoned in (measured in Liberation Sans, of its measure). */
const NARROWER = 0.88;
/** Air on both sides of a cell's text [pt]. */
const PADDING = 4;
/** Air that the line under a cell takes [pt]. */
const RULE = 1;

/** Height of so many lines of letters [pt]. */
export const heightOf = (letters: TicketLetters, lines = 1): number =>
  Math.ceil(LETTERS[letters].size * 1.25 * lines + 1.5);

/** A row of cells side by side, as high as the fullest of them. */
export function cellsLine(cells: readonly TicketCell[]): TicketLine {
  const heights = cells.map(({ text, letters }, column) => {
    const lines = LETTERS[letters].wrap ? parted(text, letters, TICKET_COLUMNS[column]!).length : 1;
    return heightOf(letters, Math.max(1, lines));
  });
  return { cells, height: Math.max(...heights) + RULE };
}

/** A text across the columns from `first` to before `end`, in as many rows as it needs. */
export function textLines(
  text: string,
  letters: TicketLetters,
  { first = 0, end = TICKET_COLUMNS.length }: { first?: number; end?: number } = {},
): TicketLine[] {
  const width = widthOf(TICKET_COLUMNS, first, end);
  const before = TICKET_COLUMNS.slice(0, first).map((): TicketCell => ({ text: "", letters: "plain" }));
  return parted(text, letters, width).map((line) => ({
    cells: [...before, { text: line, letters }],
    height: heightOf(letters),
  }));
}

/** An empty row. [pt] */
export const gapLine = (height: number): TicketLine => ({ cells: [], height });

export const heightOfLines = (lines: readonly TicketLine[]): number =>
  lines.reduce((sum, { height }) => sum + height, 0);

/** Words parted into lines no wider than `width` [pt], a length kept together, words too long cut. */
export function parted(text: string, letters: TicketLetters, width: number): string[] {
  const { size, bold } = LETTERS[letters];
  const perUnit = (size / TEXT_SIZE) * NARROWER;
  const fits = (line: string): boolean =>
    textWidth(line, bold ? "strong" : "text") * perUnit <= width - PADDING || [...line].length === 1;
  const lines: string[] = [];
  for (const word of text.split(/(?<!\d') (?!in\.|mm\b)/)) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word;
    if (fits(longer)) lines.splice(-1, 1, longer);
    else lines.push(...pieces(word, fits));
  }
  return lines.length > 0 ? lines : [""];
}

/** A word in pieces that fit: itself where it does. */
function pieces(word: string, fits: (line: string) => boolean): string[] {
  const found: string[] = [];
  for (const letter of word) {
    const longer = (found.at(-1) ?? "") + letter;
    if (found.length > 0 && fits(longer)) found[found.length - 1] = longer;
    else found.push(letter);
  }
  return found;
}
