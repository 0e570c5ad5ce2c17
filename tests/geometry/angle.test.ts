import { arcAngle, asin, cos, isAngle, sin, tan, times, toDegrees, toRadians } from "../../src/geometry/angle";

test("degrees and radians are two types: the compiler refuses one for the other", () => {
  // @ts-expect-error a plain number is taken for degrees, and no degrees meet a sine
  expect(sin(90)).toBe(Math.sin(90));
  // @ts-expect-error radians are none
  expect(toRadians(toRadians(180))).not.toBe(Math.PI);
  // @ts-expect-error nor is a part of them, until it says so
  expect(tan(toRadians(90) / 2)).toBeCloseTo(1, 12);
});

test("sines of the school's angles", () => {
  expect([sin(toRadians(30)), cos(toRadians(60)), tan(toRadians(45))]).toEqual([
    ...[expect.closeTo(0.5, 12), expect.closeTo(0.5, 12), expect.closeTo(1, 12)],
  ]);
  expect(toDegrees(asin(0.5))).toBeCloseTo(30, 12);
  expect(toDegrees(times(toRadians(30), 3))).toBeCloseTo(90, 12);
});

test("an arc as long as its radius spans a radian", () => {
  expect(toDegrees(arcAngle(4, 4))).toBeCloseTo(57.29577951308232, 12);
});

test("angles are the same within a millionth of a degree", () => {
  expect([isAngle(90, 90 + 9e-7), isAngle(90, 90 + 2e-6)]).toEqual([true, false]);
});
