import { drawShoe } from "../../../src/drawing/bench/drawShoe";
import { inches, labelFaults, middleOf, readBack } from "../measure";

const EMT = { radius: 4, deduct: 5, outsideDiameter: 0.706 };
const scene = drawShoe(EMT, { name: "EMT 1/2", width: 450, show: inches });
const drawn = readBack(scene);

test("star and notches stand to scale from the arrow, along straight conduit", () => {
  // Derived by hand for R 4, deduct 5, OD 0.706: lead 0.647; star 5 − (8.706 − 2π) = 2.57719; notches 0.647 + 2·A.
  const ticks = drawn
    .lines("mark")
    .filter((line) => line.length === 2)
    .map((line) => middleOf(line)[0])
    .sort((a, b) => a - b);
  const outline = drawn.lines("conduit")[0]!;
  const ys = outline.map(([, y]) => y);
  const scale = (Math.max(...ys) - Math.min(...ys)) / 0.706;
  const expected = [0, 0.647 + Math.PI / 3, 0.647 + Math.PI / 2, 5 - 8.706 + 2 * Math.PI, 0.647 + (2 * Math.PI) / 3];
  expect(ticks).toHaveLength(5);
  ticks.forEach((tick, index) => expect((tick - ticks[0]!) / scale).toBeCloseTo(expected[index]!, 2));
});

test("the arrow stands 0.647 in. before the start of the bend, which is over the center of the arc", () => {
  const arrow = Math.min(
    ...drawn
      .lines("mark")
      .filter((line) => line.length === 2)
      .map((line) => middleOf(line)[0]),
  );
  const center = drawn.circles("solid")[0]!.center;
  const ys = drawn.lines("conduit")[0]!.map(([, y]) => y);
  const scale = (Math.max(...ys) - Math.min(...ys)) / 0.706;
  expect((center[0] - arrow) / scale).toBeCloseTo(0.647, 2);
});

test("each is named with its distance, in the drawing and in the description", () => {
  const texts = drawn.texts.map(({ text }) => text);
  for (const text of [
    "arrow",
    "hook",
    "star 2.5625 in.",
    "45° notch 2.1875 in.",
    "30° notch 1.6875 in.",
    "60° notch 2.75 in.",
  ]) {
    expect(texts).toContain(text);
  }
  expect(scene.title).toBe("Shoe for EMT 1/2");
  expect(scene.description).toContain("star 2.5625 in. from the arrow");
});

test.each([
  [
    "deduct less than radius and half the diameter",
    { radius: 4.5, deduct: 4.6, outsideDiameter: 0.922 },
    "before the arrow",
  ],
  ["a large shoe", { radius: 5.75, deduct: 8, outsideDiameter: 1.163 }, "past the arrow"],
])("%s: labels clear, and the start of the bend told", (_, shoe, words) => {
  for (const width of [320, 450]) {
    const each = drawShoe(shoe, { name: "x", width, show: inches });
    expect(labelFaults(each)).toEqual([]);
    expect(each.description).toContain(words);
  }
});
