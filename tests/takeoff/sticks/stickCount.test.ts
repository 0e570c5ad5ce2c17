import { countSticks } from "../../../src/takeoff/sticks/stickCount";

const pieces = (...inches: number[]) => inches.map((length) => ({ length: length * 16, quantity: 1 }));
/** 25 + 25 + 70 and 53 + 40 + 27 fill two sticks of 120; longest first, 70 goes with 40 and a third is opened. */
const TWO_STICKS = pieces(25, 25, 70, 53, 40, 27);
const ENOUGH = 1e7;

test("fewer than best fit finds, where a plan does", () => {
  expect(countSticks(TWO_STICKS, 120, 0, ENOUGH)).toMatchObject({ sticks: 2, least: 2 });
});

test("without work to plan with, best fit and how far it may be off", () => {
  expect(countSticks(TWO_STICKS, 120, 0, 0)).toMatchObject({ sticks: 3, least: 2 });
});

test("a saw cut to each piece but the last: two of 59-15/16 and 1/16 between", () => {
  const half = [{ length: 59 * 16 + 15, quantity: 2 }];
  expect(countSticks(half, 120, 1 / 16, ENOUGH).sticks).toBe(1);
  expect(countSticks(half, 120, 3 / 16, ENOUGH).sticks).toBe(2);
});

test("more pieces than are planned for are still counted", () => {
  // One to a stick; by length alone 150000 x 1905 / 1921 sixteenths would be fewer, but 1905 twice are none.
  const many = countSticks([{ length: 119 * 16, quantity: 150_000 }], 120, 1 / 16, ENOUGH);
  expect(many).toEqual({ sticks: 150_000, least: 150_000 });
});

test("a cut that ends the stick is none", () => {
  // 59-1/2 in. twice and a cut of 1 in. fill 120 in.
  expect(countSticks([{ length: 952, quantity: 2 }], 120, 1, ENOUGH)).toEqual({ sticks: 1, least: 1 });
});

test("a plan may prove more than the length of the pieces does", () => {
  // 210 in. could be on two sticks, were there two of the three on one.
  expect(countSticks(pieces(70, 70, 70), 120, 0, ENOUGH)).toMatchObject({ sticks: 3, least: 3 });
});
