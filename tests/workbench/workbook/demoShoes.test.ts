/** The demo's shoes: one measured by two test bends, the others as they are built in, and every place says which. */
import { jobChecks, jobSchedule } from "../../../functions/job/jobs";
import { buildJob } from "../../../src/shop/job/job";
import { jobTickets } from "../../../src/shop/ticket/jobTickets";
import { ticketText } from "../../../src/shop/ticket/ticketText";
import { DEMO_ROWS } from "../../../workbench/demo/demoBook";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";

const rows = DEMO_ROWS.Shoes!;
const headers = [...new Set(rows.flatMap((row) => Object.keys(row)))];
const shoes = [headers, ...rows.map((row) => headers.map((header) => row[header] ?? null))];
const runs = demoRuns as unknown[][];

test("one shoe is measured, with its second test; the others are not", () => {
  expect(rows[0]).toMatchObject({ Raceway: "EMT", Size: "1/2", Springback: 3, "Second test": "30 at 31" });
  expect(rows.filter(({ Measured }) => Measured !== undefined)).toHaveLength(1);
});

test("Checks name every shoe in use but the measured one as NOT MEASURED", () => {
  const told = jobChecks(runs, shoes)
    .map((row) => String(row[3]))
    .filter((words) => words.includes("NOT MEASURED"));
  expect(told.some((words) => words.startsWith("EMT 3/4 is NOT MEASURED"))).toBe(true);
  expect(told.filter((words) => words.startsWith("EMT 1/2 "))).toEqual([]);
});

test("its dial follows both tests: 93 for a 90 and 31 for a 30; tickets say MEASURED with the date, or NOT MEASURED", () => {
  const [names, ...lines] = jobSchedule(runs, shoes);
  const cell = (line: unknown[], name: string) => line[names!.indexOf(name)];
  const dials = lines
    .filter(
      (line) =>
        String(cell(line, "Run")).startsWith("TH-0") && cell(line, "Raceway") === "EMT" && cell(line, "Size") === "1/2",
    )
    .map((line) => [cell(line, "Angle"), cell(line, "Dial")]);
  expect(dials).toContainEqual([90, expect.closeTo(93, 9)]);
  expect(dials).toContainEqual([30, expect.closeTo(31, 9)]);
  const { tickets } = jobTickets(buildJob({ runs, shoes }));
  const texts = tickets.map((ticket) => ticketText(ticket));
  expect(texts.find((text) => text.includes("TH-01"))).toContain("MEASURED 2026-10-30");
  expect(texts.find((text) => text.includes("TH-04"))).toContain("NOT MEASURED");
});
