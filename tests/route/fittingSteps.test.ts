/** Bodies, unions and flexible pieces in a route's text, and where they stand. Points by hand. */
import { readRoute } from "../../src/route/text/readRoute";
import { writeRoute } from "../../src/route/text/writeRoute";
import { resolveRoute } from "../../src/route/resolveRoute";

const at = (text: string) => resolveRoute(readRoute(text), 4).pulls;

test.each([
  ["up 40, lb, east 60", "up 40, LB, east 60"],
  ["UP 40; Union ; UP 12", "up 40, union, up 12"],
  ["up 40, expansion fitting, up 12", "up 40, expansion, up 12"],
  ["up 40, flex 3' up 12 east 8", "up 40, flex 36 up 12 east 8"],
  ["up 40, liquidtight 40 to 10 -5 60", "up 40, liquidtight 40 to 10 -5 60"],
])("%s is read and written again", (text, written) => {
  expect(writeRoute(readRoute(text))).toBe(written);
  expect(readRoute(written)).toEqual(readRoute(text));
});

test("a body parts the run at the crossing of its centerlines", () => {
  const [first, second] = at("up 40, LB, east 60, C, ahead 24, T, north 10");
  expect(first).toMatchObject({
    end: "LB",
    points: [
      [0, 0, 0],
      [0, 0, 40],
    ],
    corners: [],
  });
  expect(second).toMatchObject({
    end: "C",
    points: [
      [0, 0, 40],
      [60, 0, 40],
    ],
  });
});

test("a flexible piece goes on where its far end is", () => {
  const [first, second, third] = at("up 40, flex 36 up 12 east 8, north 20, box, flex 30 down 10, box, west 5");
  expect(first).toMatchObject({ end: "whip", whip: { from: [0, 0, 40], to: [8, 0, 52], length: 36, toBox: false } });
  expect(second).toMatchObject({
    end: "box",
    points: [
      [8, 0, 52],
      [8, 20, 52],
    ],
    whip: { to: [8, 20, 42], toBox: true },
  });
  expect(third!.points).toEqual([
    [8, 20, 42],
    [3, 20, 42],
  ]);
});

test("a union stands where the run stands, past an offset too", () => {
  const [pull] = at("east 20, offset 6 up at 30, ahead 40, union, ahead 10");
  expect(pull!.joints).toEqual([
    { point: [expect.closeTo(60 + 6 / Math.tan(Math.PI / 6), 9), 0, 6], fitting: "union", step: 4 },
  ]);
});

test.each([
  ["up 40, LB, up 20", 'step 3: got "up 20"; expected the run to go on by 90° from the LB of step 2, not turned by 0°'],
  ["up 40, C, east 20", "from the C of step 2, not turned by 90°"],
  ["up 40, LB, bend 30 north", "a leg first after the LB"],
  ["LB, up 40", "a leg first after the start"],
  ["up 40, flex 12 up 12 east 8", "a length of at least 14.4222 in."],
  ["up 40, flex 12", "a length and where it goes"],
  ["up 40, flex 24 up 12, ahead 10", "a leg with a direction first"],
  ["up 40, flex 24 up 12, flex 24 up 12", "a leg first after the flexible piece"],
  ["up 40, offset 6 north at 30, union", "a leg first after step 2"],
])("%s is told", (text, words) => {
  expect(() => at(text)).toThrow(words);
});
