import { textBox, textWidth, wrapText } from "../../../src/drawing/paper/textBox";

// Recorded: widths at 12 px in DejaVu Sans 2.37, a wide font, as measured by Chromium 143.
const MEASURED: [string, number][] = [
  ['6"', 13.16],
  ['10"', 20.8],
  ['11-5/16"', 52.08],
  ['1/2"', 24.84],
  ['(<B> & "C"); left 8-1/2".', 145.83],
  ["N", 8.98],
  ["Up", 16.41],
  ["kick", 23.88],
  ["90° in 6 shots of 15°.", 127.73],
];

test.each(MEASURED)("%s takes no more room than is kept for it, and not much less", (text, width) => {
  expect(textWidth(text)).toBeGreaterThanOrEqual(width);
  expect(textWidth(text)).toBeLessThan(width * 1.25 + 1);
});

test("a box stands where its anchor says", () => {
  const width = textWidth("12 in.");
  expect(textBox("12 in.", [100, 50], "start")).toMatchObject({ left: 100, right: expect.closeTo(100 + width, 9) });
  expect(textBox("12 in.", [100, 50], "end")).toMatchObject({
    left: expect.closeTo(100 - width, 9),
    right: expect.closeTo(100, 9),
  });
  expect(textBox("12 in.", [100, 50], "middle")).toMatchObject({
    left: expect.closeTo(100 - width / 2, 9),
    right: expect.closeTo(100 + width / 2, 9),
  });
});

test("wrapping keeps every word, in order, and parts no word", () => {
  const text = "Mark 1: 17 5/8 in. from the datum end, at the unbelievablylongwordthatfitsnowhere arrow.";
  const lines = wrapText(text, 80);
  expect(lines.join(" ")).toBe(text);
  expect(lines.filter((line) => textWidth(line) > 80)).toEqual(["unbelievablylongwordthatfitsnowhere"]);
});
