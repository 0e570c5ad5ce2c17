import { dayText } from "../../../src/units/day";
import { dayNumber } from "../../../workbench/workbook/csv/dayNumber";

// Microsoft, DATEVALUE function: DATEVALUE("1/1/2008") is 39448.
test("a day as it is written becomes the number a workbook has for it, and back", () => {
  expect(dayNumber("2008-01-01")).toBe(39448);
  for (const text of ["2026-11-30", "2024-02-29", "1999-12-31"]) expect(dayText(dayNumber(text))).toBe(text);
  for (const text of ["2026-02-30", "2026-13-01", "", "tomorrow", "46146", "2026-1-1"]) {
    expect(dayNumber(text)).toBeUndefined();
  }
});
