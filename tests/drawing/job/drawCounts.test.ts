import { drawCounts } from "../../../src/drawing/job/drawCounts";
import { labelFaults, readBack } from "../measure";

const COUNTS = [
  { label: "stub-up", count: 14 },
  { label: "three-bend saddle", count: 56 },
  { label: "kick", count: 0 },
];
const scene = drawCounts(COUNTS, { title: "Bends by kind" });

test("bars start at nothing and are as long as their counts", () => {
  const bars = readBack(scene)
    .lines("solid")
    .map((bar) => bar[1]![0] - bar[0]![0]);
  expect(bars).toHaveLength(2);
  expect(bars[1]! / bars[0]!).toBeCloseTo(4, 3);
});

test("a label and a number to each, none left out for being 0", () => {
  expect(readBack(scene).texts.map(({ text }) => text)).toEqual([
    "stub-up",
    "14",
    "three-bend saddle",
    "56",
    "kick",
    "0",
  ]);
  expect(scene.description).toBe("stub-up: 14; three-bend saddle: 56; kick: 0.");
});

test("long labels go on in another line and stay on the page", () => {
  const long = [...COUNTS, { label: "four-bend saddle in the corridor north of the mechanical room", count: 120000 }];
  for (const width of [320, 450]) expect(labelFaults(drawCounts(long, { title: "t", width }))).toEqual([]);
});

test("nothing to count says so", () => {
  expect(drawCounts([], { title: "t" }).description).toBe("Nothing to count.");
});
