import { plainText } from "../../taskpane/workbook/plainText";
import { RUN_HEADERS, runRowCells } from "../../taskpane/workbook/runRow";

test.each(["=1+1", "@SUM(A1)", "+cmd", "-cmd", "\tx", "\rx"])("%j is written so that it stays text", (text) => {
  expect(plainText(text)).toBe(`'${text}`);
});

test.each(["TH-01", "up 4', east 30", "-5", "+2.5", "", 7, true])("%j is written as it is", (cell) => {
  expect(plainText(cell)).toBe(cell);
});

test("a run named like a formula does not become one, and our own formulas stay formulas", () => {
  const cells = runRowCells(RUN_HEADERS, 3, 0, { Run: "=HYPERLINK(1)", Route: "up 20" }, "Shoes");
  expect(cells[0]).toBe("'=HYPERLINK(1)");
  expect(cells[RUN_HEADERS.indexOf("Length")]).toMatch(/^=IF\(F4="",/);
});
