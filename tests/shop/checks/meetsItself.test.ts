/** A run that crosses or touches itself is stopped; one that only comes near is not. [in] */
import { runCheck } from "../../../functions/job/runs";
import { nearestOf } from "../../../src/geometry/nearest";

const meets = (route: string) => /the run comes within/.test(runCheck(route, "EMT", "1/2"));

test.each([
  ["a loop that crosses its first leg", "east 60, north 40, west 30, south 60", true],
  ["the same, passing over it a foot higher", "east 60, north 40, up 12, west 30, south 60", false],
  ["two parallel legs closer than the conduit is thick", "east 60, north 20, west 30, south 19.4, east 20", true],
  ["an offset back beside itself, far enough", "east 60, north 20, west 30, south 12, west 30", false],
  [
    "a plain 90, an offset, a saddle",
    "up 40, east 60, offset 6 up at 30, ahead 40, saddle 3 up at 45, ahead 60",
    false,
  ],
  ["a sweep", "up 60, sweep 24, east 60", false],
  ["pulls that meet at a box", "east 60, box, west 60", false],
  ["a third pull that crosses the first", "east 60, box, north 30, box, west 30, south 60", true],
])("%s", (_name, route, found) => expect(meets(route)).toBe(found));

test("it is told where, how near and how thick", () => {
  // Legs by hand: gain of a 90 of 4 in. is 1.7168; the crossing is 30 in. along the first leg.
  const words = runCheck("east 60, north 40, west 30, south 60", "EMT", "1/2");
  expect(words).toContain(`at 2' 6"`);
  expect(words).toContain("comes within 0 in. of itself, center to center; the conduit is 0.706 in. thick.");
});

test.each([
  [
    "crossing",
    [
      [0, 0, 0],
      [10, 0, 0],
    ],
    [
      [4, -3, 2],
      [4, 3, 2],
    ],
    4,
    3,
    2,
  ],
  [
    "parallel",
    [
      [0, 0, 0],
      [10, 0, 0],
    ],
    [
      [20, 1, 0],
      [12, 1, 0],
    ],
    10,
    8,
    Math.hypot(2, 1),
  ],
  [
    "end to end",
    [
      [0, 0, 0],
      [10, 0, 0],
    ],
    [
      [13, 4, 0],
      [13, 9, 0],
    ],
    10,
    0,
    5,
  ],
] as const)("nearest places of two lines: %s", (_name, first, second, onFirst, onSecond, apart) => {
  const found = nearestOf(first as never, second as never);
  expect([found.onFirst, found.onSecond]).toEqual([onFirst, onSecond]);
  expect(found.apart).toBeCloseTo(apart, 12);
});
