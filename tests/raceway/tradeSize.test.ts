import { InputError, NotListedError } from "../../src/units/errors";
import { nextTradeSize, readTradeSize, TRADE_SIZES } from "../../src/raceway/tradeSize";

test.each([
  ["1/2", "1/2"],
  [0.5, "1/2"],
  [".5", "1/2"],
  ['1/2"', "1/2"],
  ["½", "1/2"],
  ["3/4 in.", "3/4"],
  ["¾", "3/4"],
  [1, "1"],
  ["1", "1"],
  ["1 1/4", "1-1/4"],
  ["1-1/4", "1-1/4"],
  [1.25, "1-1/4"],
  ['1½"', "1-1/2"],
  [2.5, "2-1/2"],
  ["6", "6"],
])("%p is %s", (value, size) => {
  expect(readTradeSize(value)).toBe(size);
});

test("every size reads itself", () => {
  expect(TRADE_SIZES.map((size) => readTradeSize(size))).toEqual(TRADE_SIZES);
});

test("a fraction that Excel took for a date is told so", () => {
  // 2 January 2026 as Excel counts days; 45658 is 1 January 2025.
  for (const serial of [46024, 45658]) {
    expect(() => readTradeSize(serial)).toThrow(
      new InputError(
        `size must be a trade size; got ${serial}, a date: Excel takes 1/2 for one. ` +
          "Format the cell as Text and type the size again, or write '1/2 or 0.5.",
      ),
    );
  }
});

const SIZES = "1/2, 3/4, 1, 1-1/4, 1-1/2, 2, 2-1/2, 3, 3-1/2, 4, 5 or 6, or a metric designator, 16 to 155";

test.each([
  [7, `size must be ${SIZES}; got 7.`],
  ["5/8", `size must be ${SIZES}; got "5/8".`],
  [0, `size must be ${SIZES}; got 0.`],
  [-0.5, `size must be ${SIZES}; got -0.5.`],
  [NaN, `size must be ${SIZES}; got NaN.`],
  ["", `size must be ${SIZES}; got an empty cell.`],
  [null, `size must be ${SIZES}; got an empty cell.`],
  [true, `size must be ${SIZES}; got TRUE.`],
  ["big", `size must be ${SIZES}; got "big".`],
  ["1/2 EMT", `size must be ${SIZES}; got "1/2 EMT".`],
  ["11/4", "size: the fraction 11/4 must be below 1; write whole and fraction apart, like 4-1/2."],
])("%p is refused", (value, message) => {
  expect(() => readTradeSize(value)).toThrow(new InputError(message));
});

test("sizes come one after the other, and none after 6", () => {
  expect(nextTradeSize("1/2")).toBe("3/4");
  expect(nextTradeSize("1")).toBe("1-1/4");
  expect(nextTradeSize("4")).toBe("5");
  expect(() => nextTradeSize("6")).toThrow(new NotListedError("There is no trade size above 6."));
});

/** NEC 2023, table 300.1(C): the metric designator of each trade size. */
test.each([
  [16, "1/2"],
  [21, "3/4"],
  [27, "1"],
  [35, "1-1/4"],
  [41, "1-1/2"],
  [53, "2"],
  [63, "2-1/2"],
  [78, "3"],
  [91, "3-1/2"],
  [103, "4"],
  [129, "5"],
  [155, "6"],
] as const)("the metric designator %p is the trade size %s, as a number and as text", (designator, size) => {
  expect([readTradeSize(designator), readTradeSize(String(designator)), readTradeSize(` ${designator} `)]).toEqual([
    ...[size, size, size],
  ]);
});

test("a trade size is still what it was: no designator stands where a size does", () => {
  expect([1, 2, 3, 4, 5, 6].map((number) => readTradeSize(number))).toEqual(["1", "2", "3", "4", "5", "6"]);
  expect(() => readTradeSize(15)).toThrow("or a metric designator, 16 to 155; got 15.");
});
