import { buildJob } from "../../../src/shop/job/job";
import type { PageSheet } from "../../../src/drawing/ticket/pages";
import { PRINT_SCALE, TICKET_WIDTH } from "../../../src/drawing/ticket/ticketLines";
import { ticketSheets, type TicketSheetOptions } from "../../../src/drawing/ticket/ticketSheet";
import type { Ticket } from "../../../src/shop/ticket/ticket";
import { labelOf, labelText } from "../../../src/shop/ticket/pieceLabel";
import { jobTickets } from "../../../src/shop/ticket/jobTickets";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";

const job = (rows: readonly (readonly unknown[])[]) => jobTickets(buildJob({ runs: rows }));
const runs = (...rows: string[][]) => job([["Run", "Raceway", "Size", "Route"], ...rows]);
const ticketSheet = (tickets: readonly Ticket[], options: TicketSheetOptions): PageSheet =>
  ticketSheets(tickets, options)[0]!;
const layOut = (made: ReturnType<typeof job>, pictures = true): PageSheet =>
  ticketSheet(made.tickets, { style: "feet", title: "Quay", pictures, problems: made.problems });

const textOf = ({ lines }: PageSheet): string[] => lines.map(({ cells }) => cells.map(({ text }) => text).join("|"));

/** The rows of each page, the title's not among them. */
function pagesOf({ lines, titleLines, pageStarts }: PageSheet): { first: number; end: number }[] {
  const starts = [titleLines, ...pageStarts];
  return starts.map((first, page) => ({ first, end: starts[page + 1] ?? lines.length }));
}

/**
 * ANSI/ASME Y14.1: Letter is 11 in. high; ISO 216: A4 is 210 mm wide. Margins as tickets are printed with [in], and the
 * share of their size.
 */
const LETTER_HEIGHT = ((11 - 0.4 - 0.5) * 72) / PRINT_SCALE;
const A4_WIDTH = ((210 / 25.4 - 2 * 0.4) * 72) / PRINT_SCALE;

describe("the demo job's tickets on a worksheet", () => {
  const made = job(demoRuns);
  const sheet = layOut(made);
  const height = (first: number, end: number) =>
    sheet.lines.slice(first, end).reduce((sum, line) => sum + line.height, 0);

  test("each piece begins a page", () => {
    const firstLines = pagesOf(sheet).map(({ first }) => textOf(sheet)[first]!);
    for (const { run, piece } of made.tickets) {
      expect(firstLines.filter((line) => line.startsWith(`${run.name} piece ${piece} of`))).not.toEqual([]);
    }
    const others = firstLines.filter((line) => !/piece \d+ of \d+, make \d+$/.test(line));
    expect(others).toEqual(["Runs without tickets"]);
  });

  test("no page is higher than Letter, no row wider than A4", () => {
    for (const { first, end } of pagesOf(sheet)) {
      expect(height(0, sheet.titleLines) + height(first, end)).toBeLessThanOrEqual(LETTER_HEIGHT);
    }
    for (const { width } of sheet.pictures) expect(width).toBeLessThanOrEqual(A4_WIDTH);
  });

  test("each piece has its code and a drawing of its stick, each bent one its shape, each bend how it lies at the shoe", () => {
    const bends = made.tickets.reduce((sum, ticket) => sum + ticket.bends.length, 0);
    const bent = made.tickets.filter((ticket) => ticket.bends.length > 0).length;
    expect(sheet.pictures).toHaveLength(2 * made.tickets.length + bent + bends);
    expect(sheet.pictures.filter(({ scene }) => /at the shoe in step/.test(scene.title))).toHaveLength(bends);
    const codes = sheet.pictures.filter(({ scene }) => scene.title.startsWith("Code of "));
    expect(codes.map(({ scene }) => scene.description)).toEqual(made.tickets.map((each) => labelText(labelOf(each))));
  });

  test("every drawing is whole on its page, in its columns, clear of words and of other drawings", () => {
    const edge = (column: number) => sheet.columns.slice(0, column).reduce((sum, width) => sum + width, 0);
    const boxes = sheet.pictures.map(({ line, column, width, height: tall }) => {
      const { end } = pagesOf(sheet).find((page) => line >= page.first && line < page.end)!;
      expect(height(line, end)).toBeGreaterThanOrEqual(tall);
      const box = {
        left: edge(column),
        right: edge(column) + width,
        top: height(0, line),
        bottom: height(0, line) + tall,
      };
      expect(box.right).toBeLessThanOrEqual(edge(sheet.columns.length));
      for (let row = line; height(line, row) < tall; row++) {
        sheet.lines[row]!.cells.forEach(({ text }, place) => {
          if (text !== "" && place >= column) expect(edge(place)).toBeGreaterThan(box.right);
          // Words from further left stand in their own cell, or are parted before the drawing.
          if (text !== "" && place < column && place > 0) expect(edge(place + 1)).toBeLessThanOrEqual(box.left);
        });
      }
      return box;
    });
    const near = (at: number) => boxes.slice(Math.max(0, at - 20), at);
    boxes.forEach((box, at) => {
      const over = near(at).filter(
        (other) => other.left < box.right && box.left < other.right && other.top < box.bottom && box.top < other.bottom,
      );
      expect(over).toEqual([]);
    });
  });

  test("a run without a ticket is named with its reason at the end", () => {
    const text = textOf(sheet).join(" ").replace(/\|+/g, "");
    expect(made.problems.map(({ run }) => run)).toEqual(["PR-09"]);
    expect(text.slice(text.indexOf("Runs without tickets"))).toMatch(/PR-09: steps 2 and 3.* 5\.5 in\. short\.$/);
  });
});

test("ten bends that turn every way stand on one page", () => {
  const route =
    "up 20, east 20, offset 6 up at 30, ahead 20, offset 5 north at 45, ahead 20, north 24, offset 4 up at 22.5, ahead 20, up 30, west 20";
  const rows = [
    ["Run", "Raceway", "Size", "Route", "Quantity", "Conductors", "Stick"],
    ["Z-10", "EMT", "1/2", route, 12, "3 #12 THHN", 240],
  ];
  const made = job(rows);
  expect(made.tickets.map(({ bends }) => bends.length)).toEqual([10]);
  expect(layOut(made).pageStarts).toEqual([]);
});

test("the cutting sheet follows the tickets, with a box before each cut; the title says what stands there", () => {
  const made = runs(["P-1", "EMT", "1/2", "up 20, east 40"]);
  const stick = { length: 120, count: 2, remnant: 19.875, pieces: [{ length: 50, count: 2, label: "A/1 ×4" }] };
  const lot = { title: "EMT 1/2", proof: "2 sticks, the least", problem: "", kerf: 0.125, sticks: [stick] };
  const cuts = { lots: [lot], total: { proof: "2 sticks" }, problems: ["A-9: not read"] };
  const sheet = ticketSheet(made.tickets, { style: "feet", title: "Quay", issue: "Rev B", straight: 1, cuts });
  const text = textOf(sheet);
  expect(text.slice(0, sheet.titleLines - 1).join(" ")).toBe(
    "Quay. Issue Rev B. Made from Runs as it stood. When a run changes, make the tickets again. " +
      "1 straight piece has no ticket: the cutting sheet at the end has it.",
  );
  const saw = text.slice(sheet.pageStarts[0]);
  expect(saw.join(" ")).toContain(
    'order saves settings of the stop. The saw takes 1/8" with each cut; it is allowed for.',
  );
  expect(saw.slice(saw.indexOf("All together: 2 sticks"))).toEqual([
    "All together: 2 sticks",
    ...["", "EMT 1/2", "2 sticks, the least", ""],
    "Take 2 sticks of 10' 0\"; from each:",
    "\u2610 cut 2 at 4' 2\": A/1 ×4",
    "left over 1' 7-7/8\"",
    ...["", "Not in the plan", "A-9: not read"],
  ]);
});

test("a ticket says job, raceway, cut length, ends, shoe, bends, checks and cautions", () => {
  const rows = [
    ["Run", "Job", "Area", "Raceway", "Size", "Route", "Quantity", "From", "To"],
    ["P-1", "Quay", "Hall", "EMT", "1/2", "stub 10 up, east 5'", 3, "Panel A", "Box 7"],
  ];
  // Published: Modern Residential Wiring (2021), p. 144: a 10 in. stub with a deduct of 5 is marked at 5.
  const shoes = [
    ["Raceway", "Size", "Radius", "Deduct"],
    ["EMT", "1/2", 4, 5],
  ];
  const { lines } = ticketSheet(jobTickets(buildJob({ runs: rows, shoes })).tickets, { style: "feet", title: "Quay" });
  const text = lines.map(({ cells }) => cells.map((cell) => cell.text).join("|"));
  expect(text).toEqual(
    expect.arrayContaining([
      "P-1 piece 1 of 1, make 3",
      // By hand: corners 9.647 and 60, less the gain 8 − 2π: 67.930.
      `Cut 5' 7-15/16" (67.93 in.)`,
      expect.stringMatching(/^P-1\/1 {3}\S{4}-\S{4}$/),
      "Tick each when it is made: \u2610 \u2610 \u2610   By ________   Date ________",
      "Step|Mark|Line up|Hook|Dial|Turn before it",
      `1|5"|arrow|D end|90°|first bend; stub-up`,
      `From the datum end to the back of bend 1: 10"`,
      "Disconnect the power before changing a shoe or clearing a jam.",
    ]),
  );
  expect(text.join(" ")).toContain(
    "Quay, Hall, EMT 1/2. Datum end: Panel A. Far end: Box 7. Sawn ends: ream them. Shoe, NOT MEASURED: radius 4 in., " +
      "deduct 5 in., outside diameter 0.706 in.",
  );
  expect(text.join(" ")).toContain("Put every mark on the straight stick first; measure each from D.");
});

test("a dial that stands for another angle is followed by the finished one", () => {
  const shoes = [
    ["Raceway", "Size", "Radius", "Deduct", "Springback"],
    ["EMT", "1/2", 4, 5, 3],
  ];
  const { tickets } = jobTickets(
    buildJob({
      runs: [
        ["Run", "Raceway", "Size", "Route"],
        ["P-1", "EMT", "1/2", "up 20, east 40"],
      ],
      shoes,
    }),
  );
  const { lines } = ticketSheet(tickets, { style: "feet", title: "" });
  expect(lines.map(({ cells }) => cells.map(({ text }) => text).join("|")).join("\n")).toMatch(
    /\|93°\|first bend; .*; finished 90°/,
  );
});

test("a name too long for a row goes on in the next, to its last letter", () => {
  const name = "Q".repeat(200);
  const text = textOf(layOut(runs([name, "EMT", "1/2", "up 20, east 40"]))).slice(2);
  expect(text[0]!.length).toBeLessThan(60);
  expect(text.join("").replace(/\|+/g, "")).toMatch(/^Q{200} ?piece 1 of 1, ?make 1Cut/);
});

test("a ticket longer than a page goes on under its name, and no bend is left out", () => {
  const offsets = Array.from({ length: 9 }, () => "offset 1 up at 10, ahead 2, offset 1 down at 10, ahead 2").join(
    ", ",
  );
  const shoes = [
    ["Raceway", "Size", "Radius", "Deduct", "Stick"],
    ["EMT", "1/2", 4, 5, 240],
  ];
  const { tickets, problems } = jobTickets(
    buildJob({
      runs: [
        ["Run", "Raceway", "Size", "Route", "Stick"],
        ["P-1", "EMT", "1/2", `east 20, ${offsets}`, 400],
      ],
      shoes,
    }),
  );
  expect(problems).toEqual([]);
  const sheet = ticketSheet(tickets, { style: "feet", title: "", pictures: true });
  const text = textOf(sheet);
  for (const row of sheet.pageStarts) expect(text[row]).toMatch(/^P-1 piece \d+ of \d+, (continued|make 1)$/);
  const numbers = text.flatMap((line) => /^(\d+)\|/.exec(line)?.[1] ?? []).map(Number);
  expect(numbers).toHaveLength(36);
  expect(sheet.pageStarts.length).toBeGreaterThan(tickets.length - 1);
});

test("with a wide font in place of the usual one, a ticket still keeps to its page's width", () => {
  // A column is counted in digits: 0.556 of the height in Arial (Adobe's Helvetica AFM), 0.636 in DejaVu Sans and Verdana
  // (measured), the widest of the common ones.
  expect(TICKET_WIDTH * (0.636 / 0.556) * PRINT_SCALE).toBeLessThanOrEqual(A4_WIDTH * PRINT_SCALE);
});

test("a further sheet begins before Excel's 1,023 page breaks, and no ticket is lost between them", () => {
  // Microsoft, "Excel specifications and limits": 1,026 horizontal page breaks; 1,023 in the notes of page breaks.
  const MOST = 1000;
  const { tickets } = runs(...Array.from({ length: 2000 }, (_, at) => [`P${at + 1}`, "EMT", "1/2", "up 20, east 40"]));
  const sheets = ticketSheets(tickets, { style: "feet", title: "Quay" });
  expect(sheets).toHaveLength(3);
  for (const { pageStarts } of sheets) expect(pageStarts.length).toBeLessThan(MOST);
  const titles = sheets.flatMap((sheet) => textOf(sheet).filter((line) => /^P\d+ piece 1 of 1, make 1\b/.test(line)));
  expect(titles.map((line) => line.split(" ")[0])).toEqual(tickets.map(({ run }) => run.name));
});
