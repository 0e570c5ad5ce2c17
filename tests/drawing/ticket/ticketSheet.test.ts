import { buildJob } from "../../../src/shop/job/job";
import { TICKET_WIDTH } from "../../../src/drawing/ticket/ticketLines";
import { PRINT_SCALE, ticketSheet, type TicketSheet } from "../../../src/drawing/ticket/ticketSheet";
import { jobTickets } from "../../../src/shop/ticket/jobTickets";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";

const job = (rows: readonly (readonly unknown[])[]) => jobTickets(buildJob({ runs: rows }));
const runs = (...rows: string[][]) => job([["Run", "Raceway", "Size", "Route"], ...rows]);
const layOut = (made: ReturnType<typeof job>, pictures = true): TicketSheet =>
  ticketSheet(made.tickets, { style: "feet", title: "Quay", pictures, problems: made.problems });

const textOf = ({ lines }: TicketSheet): string[] => lines.map(({ cells }) => cells.map(({ text }) => text).join("|"));

/** The rows of each page, the title's not among them. */
function pagesOf({ lines, titleLines, pageStarts }: TicketSheet): { first: number; end: number }[] {
  const starts = [titleLines, ...pageStarts];
  return starts.map((first, page) => ({ first, end: starts[page + 1] ?? lines.length }));
}

/** ANSI/ASME Y14.1: Letter is 11 in. high; ISO 216: A4 is 210 mm wide. Margins as workbooks are printed with [in]. */
const LETTER_HEIGHT = ((11 - 0.5 - 0.6) * 72) / PRINT_SCALE;
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
    expect(others).toEqual(["PR-04 piece 1 of 2, continued", "Runs without tickets"]);
  });

  test("no page is higher than Letter, no row wider than A4", () => {
    for (const { first, end } of pagesOf(sheet)) {
      expect(height(0, sheet.titleLines) + height(first, end)).toBeLessThanOrEqual(LETTER_HEIGHT);
    }
    for (const { width } of sheet.pictures) expect(width).toBeLessThanOrEqual(A4_WIDTH);
  });

  test("a drawing for each stick and each bent piece, whole on its page, clear of words", () => {
    expect(sheet.pictures).toHaveLength(
      made.tickets.length + made.tickets.filter(({ bends }) => bends.length > 0).length,
    );
    const leftOf = (cells: TicketSheet["lines"][number]["cells"]) =>
      [34, 100, 56, 62, 54, 204]
        .slice(
          0,
          Math.max(
            0,
            cells.findIndex(({ text }) => text !== ""),
          ),
        )
        .reduce((a, b) => a + b, 0);
    for (const { line, width, height: tall } of sheet.pictures) {
      const { end } = pagesOf(sheet).find((page) => line >= page.first && line < page.end)!;
      expect(height(line, end)).toBeGreaterThanOrEqual(tall);
      for (let row = line; height(line, row) < tall; row++) {
        const { cells } = sheet.lines[row]!;
        if (cells.some(({ text }) => text !== "")) expect(leftOf(cells)).toBeGreaterThan(width);
      }
    }
  });

  test("a run without a ticket is named with its reason at the end", () => {
    const text = textOf(sheet).join(" ").replace(/\|+/g, "");
    expect(made.problems.map(({ run }) => run)).toEqual(["PR-09"]);
    expect(text.slice(text.indexOf("Runs without tickets"))).toMatch(/PR-09: steps 2 and 3.* 5\.5 in\. short\.$/);
  });
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
      expect.stringMatching(/^Cut 5' 7-15\/16" \(67.93 in.\) {3}P-1\/1 {3}\S{4}-\S{4}$/),
      "Tick each when it is made: \u2610 \u2610 \u2610   By ________   Date ________",
      ,
      "Quay, Hall, EMT 1/2. Datum end: Panel A. Far end: Box 7. Sawn ends: ream them. Shoe, NOT",
      "Step|Mark|Line up|Hook|Dial|Turn before it",
      `1|5"|arrow|D end|90°|first bend; stub-up`,
      `From the datum end to the back of bend 1: 10"`,
      "Disconnect the power before changing a shoe or clearing a jam.",
    ]),
  );
  expect(text.join("\n")).toContain("deduct 5 in., outside diameter 0.706 in.");
  expect(text.join("\n")).toContain("Put every mark on the straight stick first; measure each");
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
  expect(text.join("").replace(/\|+/g, "")).toMatch(/^Q{200} ?piece ?1 of 1, make 1Cut/);
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
