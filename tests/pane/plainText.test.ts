import { plainText } from "../../taskpane/workbook/plainText";

test.each(["=1+1", "@SUM(A1)", "+cmd", "-cmd", "\tx", "\rx"])("%j is written so that it stays text", (text) => {
  expect(plainText(text)).toBe(`'${text}`);
});

test.each(["TH-01", "up 4', east 30", "-5", "+2.5", "", 7, true])("%j is written as it is", (cell) => {
  expect(plainText(cell)).toBe(cell);
});
