import type { BlockPicture, TicketBlock } from "./blocks";
import { heightOfLines, PRINT_SCALE, type TicketLine } from "./ticketLines";

/** Something to print, laid out as rows of a worksheet. */
export interface PageSheet {
  /** Width of each column [pt]. */
  readonly columns: readonly number[];
  readonly lines: readonly TicketLine[];
  /** How many of them are the title. */
  readonly titleLines: number;
  /** Rows that begin a page, the first page's not among them; counted from 0. */
  readonly pageStarts: readonly number[];
  /** Drawings, each hanging from the top left corner of a cell. */
  readonly pictures: readonly BlockPicture[];
}

/** What margins and a footer leave of a Letter page's height, less some air for printers that round up [pt]. */
const PAGE_HEIGHT = 708 / PRINT_SCALE;

/** Fills pages with blocks from the top. */
export class Pages implements PageSheet {
  readonly lines: TicketLine[];
  readonly titleLines: number;
  readonly pageStarts: number[] = [];
  readonly pictures: BlockPicture[] = [];
  private readonly room: number;

  /** @param title rows that print at the head of every page */
  constructor(
    readonly columns: readonly number[],
    title: readonly TicketLine[],
  ) {
    this.lines = [...title];
    this.titleLines = title.length;
    this.room = PAGE_HEIGHT - heightOfLines(title);
  }

  /** Blocks from the top of a new page on; `continued` stands over what goes on on another. */
  add(blocks: readonly TicketBlock[], continued: readonly TicketLine[]): void {
    if (this.lines.length > this.titleLines) this.pageStarts.push(this.lines.length);
    let used = 0;
    for (const { lines, pictures = [] } of blocks) {
      const height = heightOfLines(lines);
      if (used > 0 && used + height > this.room) {
        this.pageStarts.push(this.lines.length);
        this.lines.push(...continued);
        used = heightOfLines(continued);
      }
      const first = this.lines.length;
      this.pictures.push(...pictures.map((each) => ({ ...each, line: first + each.line })));
      this.lines.push(...lines);
      used += height;
    }
  }
}
