import { toAngle } from "../../src/units/angle";
import { toNumber } from "../../src/units/number";
import { readDenominator, readLengthStyle } from "../../src/units/formatLength";

test.each<[unknown, number]>([
  [30, 30],
  ["30", 30],
  ["22.5°", 22.5],
  ["22½°", 22.5],
  ["22-1/2", 22.5],
  ["22 1/2 deg", 22.5],
  ["45 Degrees", 45],
  [179.999, 179.999],
])("%p is read as an angle of %d°", (value, angle) => {
  expect(toAngle(value, "angle")).toBe(angle);
});

test.each<[unknown, string]>([
  [0, "angle must be above 0° and below 180°; got 0°."],
  [180, "angle must be above 0° and below 180°; got 180°."],
  [190, "angle must be above 0° and below 180°; got 190°."],
  ["-30", "angle must be above 0° and below 180°; got -30°."],
  [-1e-9, "angle must be above 0° and below 180°; got -1e-9°."],
  ["forty", `angle must be an angle in degrees; got "forty".`],
  ["", "angle must be an angle in degrees; got an empty cell."],
  [null, "angle must be an angle in degrees; got an empty cell."],
  [NaN, "angle must be an angle in degrees; got NaN."],
  [false, "angle must be an angle in degrees; got FALSE."],
  ["30 in", `angle must be an angle in degrees; got "30 in".`],
  ["1".repeat(5000), `angle must be an angle in degrees; got "${"1".repeat(40)}…".`],
  ["45/2", "angle: the fraction 45/2 must be below 1; write whole and fraction apart, like 4-1/2."],
])("angle %p is refused in words", (value, message) => {
  expect(() => toAngle(value, "angle")).toThrow(message);
});

test("given limits take the place of the usual ones", () => {
  expect(toAngle(-5, "dial start", { min: -10, max: 0 })).toBe(-5);
  expect(() => toAngle(91, "angle", { above: 0, max: 90 })).toThrow("angle must be above 0° and at most 90°; got 91°.");
});

test.each<[unknown, number]>([
  [3, 3],
  ["3", 3],
  [" −2.5 ", -2.5],
  ["+.5", 0.5],
])("%p is read as the number %d", (value, number) => {
  expect(toNumber(value, "shots")).toBe(number);
});

test.each<[unknown, object | undefined, string]>([
  ["3/4", undefined, `shots must be a number; got "3/4".`],
  ["12 apples", undefined, `shots must be a number; got "12 apples".`],
  ["", undefined, "shots must be a number; got an empty cell."],
  [Infinity, undefined, "shots must be a number; got Infinity."],
  [true, undefined, "shots must be a number; got TRUE."],
  [2.5, { integer: true }, "shots must be a whole number; got 2.5."],
  [1, { integer: true, min: 2, max: 90 }, "shots must be a whole number at least 2 and at most 90; got 1."],
  ["1".repeat(9000), undefined, `shots must be a number; got "${"1".repeat(40)}…".`],
])("number %p with %p is refused in words", (value, limits, message) => {
  expect(() => toNumber(value, "shots", limits)).toThrow(message);
});

test("denominator and style have defaults and refuse what is not listed", () => {
  expect(readDenominator(null)).toBe(16);
  expect(readDenominator("32")).toBe(32);
  expect(() => readDenominator(10)).toThrow("denominator must be one of 2, 4, 8, 16, 32, 64; got 10.");
  expect(() => readDenominator(true)).toThrow("denominator must be one of 2, 4, 8, 16, 32, 64; got TRUE.");
  expect(readLengthStyle(undefined)).toBe("feet");
  expect(readLengthStyle(" MM ")).toBe("mm");
  expect(() => readLengthStyle("yards")).toThrow(`style must be one of feet, inches, mm; got "yards".`);
});
