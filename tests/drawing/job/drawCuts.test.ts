import { drawCuts, type DrawnStick } from "../../../src/drawing/job/drawCuts";
import { inches, labelFaults, readBack } from "../measure";

const STICKS: DrawnStick[] = [
  {
    length: 120,
    count: 3,
    label: "EMT 1/2",
    pieces: [
      { length: 48.5, count: 1, label: "A-1" },
      { length: 22.25, count: 2 },
    ],
    remnant: 26.8125,
  },
  { length: 60, count: 1, pieces: [{ length: 59.9, count: 1 }], remnant: 0 },
];
const options = { title: "Cutting plan", width: 408, show: inches, kerf: 0.0625 };
const drawn = readBack(drawCuts(STICKS, options));

test("pieces and what is left lie to one scale, kerfs between", () => {
  // 408 less two edges of 4 is 400 page units for the longest stick of 120 in.
  const scale = 400 / 120;
  const bars = drawn.lines("conduit").map((bar) => [bar[0]![0], bar[1]![0]]);
  const at = (from: number, length: number) => [
    expect.closeTo(4 + from * scale, 2),
    expect.closeTo(4 + (from + length) * scale, 2),
  ];
  expect(bars).toEqual([at(0, 48.5), at(48.5625, 22.25), at(70.875, 22.25), at(0, 59.9)]);
  const [left] = drawn.lines("shape");
  expect([left![0]![0], left![1]![0]]).toEqual(at(93.1875, 26.8125));
});

test("what is left is hatched inside its own bar, and nothing is where nothing is left", () => {
  expect(drawn.lines("shape")).toHaveLength(1);
  const [low, high] = [4 + (93.1875 * 400) / 120, 404];
  for (const [x] of drawn.lines("faint").flat()) {
    expect(x).toBeGreaterThanOrEqual(low - 0.01);
    expect(x).toBeLessThanOrEqual(high + 0.01);
  }
});

test("every cut is told in words under its stick", () => {
  const words = drawn.texts.map(({ text }) => text).join(" ");
  expect(words).toContain("3 × 120 in. EMT 1/2");
  expect(words).toContain("1 × 48.5 in. (A-1), 2 × 22.25 in.; left 26.8125 in.");
});

test("labels lie clear of each other", () => {
  for (const width of [320, 450]) expect(labelFaults(drawCuts(STICKS, { ...options, width }))).toEqual([]);
});

test("an empty plan says so", () => {
  const empty = drawCuts([], options);
  expect(readBack(empty).texts.map(({ text }) => text)).toEqual(["Nothing to cut."]);
  expect(empty.description).toBe("Nothing to cut.");
});
