import { showMoney } from "../../src/units/money";

test.each([
  [1155.4, "1,155.40"],
  [0, "0.00"],
  [7.125, "7.125"],
  [-20.5, "-20.50"],
])("%p is %s", (amount, words) => expect(showMoney(amount)).toBe(words));
