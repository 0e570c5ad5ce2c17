import { showMoney, toCent } from "../../src/units/money";

test.each([
  [1155.4, "1,155.40"],
  [0, "0.00"],
  [7.125, "7.125"],
  [-20.5, "-20.50"],
])("%p is %s", (amount, words) => expect(showMoney(amount)).toBe(words));

// By hand: halves away from zero, 1.005 and 0.285 included, which no double holds exactly.
test.each([
  [13.962, 13.96],
  [1.005, 1.01],
  [0.285, 0.29],
  [-1.005, -1.01],
  [0.994999, 0.99],
  [123456789.125, 123456789.13],
  [0, 0],
])("%p is %p to the cent", (amount, cents) => expect(toCent(amount)).toBe(cents));
