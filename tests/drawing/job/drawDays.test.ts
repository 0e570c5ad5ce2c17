import { drawDays } from "../../../src/drawing/job/drawDays";
import type { LineItem, Scene } from "../../../src/drawing/paper/scene";

const DAYS = [
  { label: "2026-11-02 Ida", made: 10, scrapped: 0, left: 30 },
  { label: "2026-11-02 Olu", made: 9, scrapped: 1, left: 21 },
  { label: "2026-11-03 a crew with a long name", made: 0, scrapped: 2, left: 21 },
];
const widthOf = ({ points }: LineItem) => Math.max(...points.map(([x]) => x)) - Math.min(...points.map(([x]) => x));
const bars = ({ items }: Scene, style: string) =>
  items.flatMap((item) => (item.kind === "line" && item.style === style ? [widthOf(item)] : []));

test.each([320, 620])("at %i px bars are as long as what they count, made filled and scrapped open", (width) => {
  const scene = drawDays(DAYS, { title: "Days", width });
  const [ten, nine] = bars(scene, "solid");
  const [one, two] = bars(scene, "shape");
  expect(ten! / nine!).toBeCloseTo(10 / 9, 6);
  expect(nine! / one!).toBeCloseTo(9, 6);
  expect(two! / one!).toBeCloseTo(2, 6);
  expect([bars(scene, "solid").length, bars(scene, "shape").length]).toEqual([2, 2]);
});

test("no text leaves the page or lies on another", () => {
  const { items, width } = drawDays(DAYS, { title: "Days", width: 320 });
  const boxes = items.flatMap((item) => (item.kind === "text" ? [item.box] : []));
  expect(boxes.length).toBeGreaterThan(8);
  boxes.forEach((box, index) => {
    expect(box.left).toBeGreaterThanOrEqual(0);
    expect(box.right).toBeLessThanOrEqual(width);
    for (const other of boxes.slice(index + 1)) {
      const apart =
        box.right <= other.left ||
        other.right <= box.left ||
        box.bottom <= other.top + 4 ||
        other.bottom <= box.top + 4;
      expect(apart).toBe(true);
    }
  });
});

test("its words say every number; without a record they say so", () => {
  expect(drawDays(DAYS.slice(1, 2), { title: "Days" }).description).toBe(
    "2026-11-02 Olu: 9 made, 1 scrapped, 21 left.",
  );
  expect(drawDays([], { title: "Days" }).description).toBe("Nothing was made yet.");
});
