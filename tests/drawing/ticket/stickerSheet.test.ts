/** Stickers on a worksheet: one for each piece to make, three beside each other. */
import { stickerCount, stickerSheet } from "../../../src/drawing/ticket/stickerSheet";
import { buildJob } from "../../../src/shop/job/job";
import { jobTickets } from "../../../src/shop/ticket/jobTickets";

const HEADERS = ["Run", "Job", "Area", "Raceway", "Size", "Route", "Quantity", "From", "To"];
const tickets = (...rows: unknown[][]) => jobTickets(buildJob({ runs: [HEADERS, ...rows] })).tickets;
const two = tickets(
  ["P-1", "Quay", "Hall", "EMT", "1/2", "up 20, east 40", 4, "Panel A", "Box 7"],
  ["P-2", "Quay", "", "EMT", "3/4", "east 50", 1, "", ""],
);

test("a row of words for each, its code beside it, each copy with its own number", () => {
  const sheet = stickerSheet(two, { style: "feet", pictures: true });
  expect(stickerCount(two)).toBe(5);
  const words = (column: number) => sheet.lines.map(({ cells }) => cells[column]?.text ?? "");
  // By hand: 20 + 40 less the gain of a 4 in. radius, 8 − 2π: 58.283, to the sixteenth 4' 10-5/16".
  const first = ["P-1/1", "Quay · Hall", `EMT 1/2 · 4' 10-5/16"`, "1 of 4 · 1 bend", "Panel A → Box 7"];
  expect(words(1).slice(0, 5)).toEqual(first);
  expect(words(3).slice(0, 5)).toEqual(first.map((line) => line.replace("1 of 4", "2 of 4")));
  expect(words(3).slice(7, 11)).toEqual(["P-2/1", "Quay", `EMT 3/4 · 4' 2"`, "1 of 1 · straight"]);
  expect(sheet.pictures.map(({ line, column }) => [line, column])).toEqual([[0, 0], [0, 2], [0, 4], [7, 0], [7, 2]]); // prettier-ignore
  expect(sheet.pictures.map(({ scene }) => scene.description.split("\n")[0])).toEqual([
    ...Array.from({ length: 4 }, () => "Piece: P-1/1"),
    "Piece: P-2/1",
  ]);
});

test("none is cut by the end of a page, and no code is larger than its cells", () => {
  const many = tickets(["P-1", "Quay", "Hall", "EMT", "1/2", "up 20, east 40", 70, "Panel A", "Box 7"]);
  const { lines, pageStarts, pictures, columns } = stickerSheet(many, { style: "mm", pictures: true });
  expect(lines).toHaveLength(7 * 24);
  expect(pageStarts.length).toBeGreaterThan(1);
  for (const row of pageStarts) expect(row % 7).toBe(0);
  const height = lines.slice(0, 7).reduce((sum, line) => sum + line.height, 0);
  for (const picture of pictures) {
    expect(picture.width).toBeLessThanOrEqual(columns[picture.column]!);
    expect(picture.height).toBeLessThanOrEqual(height);
  }
});

test("what is longer than a sticker ends in an ellipsis", () => {
  const long = tickets(["P-1", "Quay ".repeat(60), "Hall", "EMT", "1/2", "up 20, east 40", 1, "Panel A", "Box 7"]);
  const { lines } = stickerSheet(long, { style: "feet" });
  expect(lines).toHaveLength(7);
  expect(lines[5]!.cells[1]!.text).toMatch(/…$/);
});
