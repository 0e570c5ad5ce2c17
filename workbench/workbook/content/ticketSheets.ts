import type { Scene } from "../../../src/drawing/paper/scene";
import { LETTERS, TICKET_COLUMNS, type TicketLine } from "../../../src/drawing/ticket/ticketLines";
import { ticketSheet, type TicketSheet } from "../../../src/drawing/ticket/ticketSheet";
import { readBench } from "../../../src/shop/bench/bench";
import { jobTickets, type JobTickets } from "../../../src/shop/ticket/jobTickets";
import { buildJob } from "../../../src/shop/job/job";
import type { Ticket } from "../../../src/shop/ticket/ticket";
import { TICKET_SHEET_LABELS as t } from "../../../src/shop/ticket/ticketLabels";
import { ticketTitle } from "../../../src/shop/ticket/ticketTitle";
import { usualFont } from "../file/looks";
import type { ContentCell, Look, Picture, SheetContent } from "./sheetContent";

/** Makes a picture of a drawing: the bytes of a PNG so many pixels wide. */
export type DrawPng = (scene: Scene, width: number) => Uint8Array | Promise<Uint8Array>;

export interface TicketWishes {
  /** Without it the tickets have no pictures. */
  draw?: DrawPng;
  /** Told after each picture. */
  onPicture?: (drawn: number, of: number) => void;
}

/** Excel knows 1,026 page breaks a sheet ("Excel specifications and limits"); a long ticket takes two or three. */
const TICKETS_PER_SHEET = 300;
/** Pixels to the point: 216 to the inch, twice what a screen shows. */
const SHARPNESS = 3;
const PIXELS_PER_POINT = 96 / 72;

/** Sheets of shop tickets, a page to each piece, from the tables as the workbook's sheets hold them. */
export async function ticketSheets(
  sheets: readonly SheetContent[],
  { draw, onPicture }: TicketWishes = {},
): Promise<SheetContent[]> {
  const { tickets, problems } = ticketsOf(sheets);
  if (tickets.length + problems.length === 0) return [];
  const title = ticketTitle(tickets);
  const parts = inParts(tickets).map((part, index, all) =>
    ticketSheet(part, {
      style: "feet",
      title,
      pictures: draw !== undefined,
      problems: index === all.length - 1 ? problems : [],
    }),
  );
  const count = parts.reduce((sum, { pictures }) => sum + pictures.length, 0);
  const made: SheetContent[] = [];
  let drawn = 0;
  for (const part of parts) {
    const pictures: Picture[] = [];
    for (const { line, scene, width, height } of draw ? part.pictures : []) {
      const png = await draw!(scene, Math.round(width * SHARPNESS));
      pictures.push({ png, row: line, width, height, title: scene.title, description: scene.description });
      onPicture?.(++drawn, count);
    }
    made.push({ ...contentOf(part, made.length === 0 ? t.name : `${t.name} ${made.length + 1}`), pictures });
  }
  return made;
}

function ticketsOf(sheets: readonly SheetContent[]): JobTickets {
  const values = (name: string): unknown[][] | null =>
    sheets.find((sheet) => sheet.name === name)?.cells.map((row) => row.map((cell) => cell?.value ?? null)) ?? null;
  const bench = values("Bench");
  return jobTickets(
    buildJob({ runs: values("Runs") ?? [], shoes: values("Shoes") }),
    bench ? readBench(bench) : undefined,
  );
}

/** One part at least: runs without tickets need a sheet to stand on. */
const inParts = (tickets: readonly Ticket[]): Ticket[][] =>
  Array.from({ length: Math.max(1, Math.ceil(tickets.length / TICKETS_PER_SHEET)) }, (_, part) =>
    tickets.slice(part * TICKETS_PER_SHEET, (part + 1) * TICKETS_PER_SHEET),
  );

function contentOf({ lines, titleLines, pageStarts }: TicketSheet, name: string): SheetContent {
  return {
    name,
    cells: lines.map(contentRow),
    columns: TICKET_COLUMNS.map((width) => ({ width: Math.round(width * PIXELS_PER_POINT) })),
    rowHeights: lines.map(({ height }) => height),
    pageStarts,
    frozenRows: titleLines,
    frozenColumns: 0,
    tabColor: "5B4A1F",
    tables: [],
    choices: [],
  };
}

const contentRow = ({ cells }: TicketLine): (ContentCell | null)[] =>
  cells.map(({ text, letters }) => (text === "" ? null : { value: text, look: LOOKS[letters] }));

/** Every cell is text, whatever a run or a job is called. */
const LOOKS = Object.fromEntries(
  Object.entries(LETTERS).map(([letters, { size, ...look }]): [string, Look] => [
    letters,
    { format: "@", middle: true, ...look, ...(size === usualFont.size ? {} : { size }) },
  ]),
);
