import fc from "fast-check";
import { toInches } from "../../src/units/length";
import { DENOMINATORS, formatLength, LENGTH_STYLES } from "../../src/units/formatLength";

/** Written forms and what they mean in inches, worked out by hand. */
const FORMS: readonly [text: string, inches: number][] = [
  [`3' 4-1/2"`, 40.5],
  [`3'4 1/2"`, 40.5],
  [`3'-4 1/2"`, 40.5],
  [`3' - 4-1/2"`, 40.5],
  [`3′ 4½″`, 40.5],
  [`3’ 4 ½”`, 40.5],
  [`3’-4⅜”`, 40.375],
  [`3 ft 4 in`, 40],
  [`3 feet 4 inches`, 40],
  [`1 foot 1 inch`, 13],
  [`3 ft. 4 in.`, 40],
  [`3' 4`, 40],
  [`3'`, 36],
  [`2.5'`, 30],
  [`2-1/4 ft`, 27],
  [`3' 4.25"`, 40.25],
  [`40.5`, 40.5],
  [`.5`, 0.5],
  [`5.`, 5],
  [`7"`, 7],
  [`7''`, 7],
  [`7 in`, 7],
  [`7 INCHES`, 7],
  [`3/8`, 0.375],
  [`⅞"`, 0.875],
  [`5⅝`, 5.625],
  [`6 3/8"`, 6.375],
  [`6-3/8 in`, 6.375],
  [`6–3⁄8`, 6.375],
  [`0' 3/4"`, 0.75],
  [`-3' 4-1/2"`, -40.5],
  [`−2½`, -2.5],
  [`–2`, -2],
  [`- 5 in`, -5],
  [`+5`, 5],
  [`  12  `, 12],
  [`3'\u00a04"`, 40],
  [`254 mm`, 10],
  [`25.4cm`, 10],
  [`1.27 m`, 50],
  [`-127MM`, -5],
  [`0`, 0],
];

test.each(FORMS)("%s is read as %d in.", (text, inches) => {
  expect(toInches(text, "rise")).toBeCloseTo(inches, 12);
});

test("a number is taken as inches", () => {
  expect(toInches(40.5, "rise")).toBe(40.5);
  expect(Object.is(toInches(-0, "rise"), 0)).toBe(true);
  expect(Object.is(toInches("-0", "rise"), 0)).toBe(true);
});

const NOT_A_LENGTH = `rise must be a length: a number of inches, or text like 3' 4-1/2", 40.5 or 1028 mm; got `;

test.each<[unknown, string]>([
  ["abc", `${NOT_A_LENGTH}"abc".`],
  ["", `${NOT_A_LENGTH}an empty cell.`],
  ["   ", `${NOT_A_LENGTH}"   ".`],
  [null, `${NOT_A_LENGTH}an empty cell.`],
  [undefined, `${NOT_A_LENGTH}an empty cell.`],
  [true, `${NOT_A_LENGTH}TRUE.`],
  [NaN, `${NOT_A_LENGTH}NaN.`],
  [Infinity, `${NOT_A_LENGTH}Infinity.`],
  ["5 3", `${NOT_A_LENGTH}"5 3".`],
  ["4.5 1/2", `${NOT_A_LENGTH}"4.5 1/2".`],
  ["3' 4'", `${NOT_A_LENGTH}"3' 4'".`],
  [`4" 3'`, `${NOT_A_LENGTH}"4" 3'".`],
  [`3.5' 4"`, `${NOT_A_LENGTH}"3.5' 4"".`],
  ["3--4", `${NOT_A_LENGTH}"3--4".`],
  ["1,028", `${NOT_A_LENGTH}"1,028".`],
  ["1e3", `${NOT_A_LENGTH}"1e3".`],
  ["5 km", `${NOT_A_LENGTH}"5 km".`],
  ["'", `${NOT_A_LENGTH}"'".`],
  ["1/", `${NOT_A_LENGTH}"1/".`],
  ["--5", `${NOT_A_LENGTH}"--5".`],
  ["1".repeat(10000), `${NOT_A_LENGTH}"${"1".repeat(40)}…".`],
  [`3' 14"`, `rise: inches after feet must be below 12; got "3' 14"".`],
  [`3' 12`, `rise: inches after feet must be below 12; got "3' 12".`],
  [`41/2"`, `rise: the fraction 41/2 must be below 1; write whole and fraction apart, like 4-1/2.`],
  [`1/0`, `rise: the fraction 1/0 must be below 1; write whole and fraction apart, like 4-1/2.`],
  [`3' 4-8/8"`, `rise: the fraction 8/8 must be below 1; write whole and fraction apart, like 4-1/2.`],
])("%p is refused in words", (value, message) => {
  expect(() => toInches(value, "rise")).toThrow(message);
});

test.each<[number | string, object, string]>([
  [0, { above: 0 }, "rise must be above 0 in.; got 0 in."],
  [`-1'`, { min: 0 }, "rise must be at least 0 in.; got -12 in."],
  [25, { above: 0, max: 24 }, "rise must be above 0 in. and at most 24 in.; got 25 in."],
  [24, { below: 24 }, "rise must be below 24 in.; got 24 in."],
])("%p against %p is refused with the limit", (value, limits, message) => {
  expect(() => toInches(value, "rise", limits)).toThrow(message);
});

test.each<[number, string]>([
  [0, `0"`],
  [40.5, `3' 4-1/2"`],
  [12, `1' 0"`],
  [12.375, `1' 0-3/8"`],
  [0.375, `3/8"`],
  [11 + 31 / 32, `1' 0"`],
  [11.9375, `11-15/16"`],
  [35.99, `3' 0"`],
  [-40.5, `-3' 4-1/2"`],
  [-0.01, `0"`],
  [-0, `0"`],
  [-11.99, `-1' 0"`],
  [1 / 32, `1/16"`],
  [-1 / 32, `-1/16"`],
])("%d in. is written %s", (inches, text) => {
  expect(formatLength(inches)).toBe(text);
});

test("the denominator and the style are kept to", () => {
  expect(formatLength(40.4375, 2)).toBe(`3' 4-1/2"`);
  expect(formatLength(40.4375, 4)).toBe(`3' 4-1/2"`);
  expect(formatLength(40.4375, 8)).toBe(`3' 4-1/2"`);
  expect(formatLength(40.4375, 16)).toBe(`3' 4-7/16"`);
  expect(formatLength(40.46875, 32)).toBe(`3' 4-15/32"`);
  expect(formatLength(40.484375, 64)).toBe(`3' 4-31/64"`);
  expect(formatLength(40.5, 16, "inches")).toBe(`40-1/2"`);
  expect(formatLength(-40.5, 16, "inches")).toBe(`-40-1/2"`);
  expect(formatLength(40.5, 16, "mm")).toBe("1029 mm");
  expect(formatLength(-0.001, 16, "mm")).toBe("0 mm");
});

test.each([NaN, Infinity, -Infinity, 1e10])("%d is not written but refused", (inches) => {
  expect(() => formatLength(inches)).toThrow("length must be at least -1000000000 in. and at most 1000000000 in.; got");
});

const onGrid = fc.tuple(fc.integer({ min: -640000, max: 640000 }), fc.constantFrom(...DENOMINATORS));

test("what is written on the grid reads back the same", () => {
  fc.assert(
    fc.property(onGrid, fc.constantFrom("feet" as const, "inches" as const), ([parts, denominator], style) => {
      expect(toInches(formatLength(parts / denominator, denominator, style), "x")).toBe(parts / denominator + 0);
    }),
  );
});

test("what is written is at most half a part off and never has a bare minus or a full denominator", () => {
  const anyLength = fc.double({ min: -10000, max: 10000, noNaN: true });
  fc.assert(
    fc.property(anyLength, fc.constantFrom(...DENOMINATORS), fc.constantFrom(...LENGTH_STYLES), (x, parts, style) => {
      const text = formatLength(x, parts, style);
      const half = style === "mm" ? 0.5 / 25.4 : 0.5 / parts;
      expect(Math.abs(toInches(text, "x") - x)).toBeLessThanOrEqual(half + 1e-9);
      expect(text).not.toMatch(/^-0("| mm)/);
      expect(text).not.toMatch(new RegExp(`(^|[ -])${parts}/${parts}"`));
    }),
  );
});

test("at least and at most take their limit in; above and below leave it out", () => {
  expect(toInches(24, "rise", { min: 24, max: 24 })).toBe(24);
  expect(() => toInches(24, "rise", { above: 24 })).toThrow("rise must be above 24 in.; got 24 in.");
});
