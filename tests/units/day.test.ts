import { dayText, daysBetween, isDay } from "../../src/units/day";

// Microsoft Support, "DATEVALUE function" and "DATE function": January 1, 2008 is serial number 39448; "Date systems in
// Excel": the last day is December 31, 9999, 2958465 (the last from memory).
test.each([
  [39448, "2008-01-01"],
  [39448.75, "2008-01-01"],
  [2958465, "9999-12-31"],
  // 366 days of 2008 later.
  [39448 + 366, "2009-01-01"],
  [61, "1900-03-01"],
])("the number of a date %p is %s", (cell, day) => expect(dayText(cell)).toBe(day));

test("text stays as it is, and numbers that are no day of Excel's", () => {
  expect(dayText(" week 49 ")).toBe("week 49");
  expect([null, undefined, ""].map(dayText)).toEqual(["", "", ""]);
  expect([-1, 49, 2958466].map(dayText)).toEqual(["-1", "49", "2958466"]);
});

test("days between two days, against the calendar of JavaScript, over leap years and a century without one", () => {
  for (const [from, to] of [
    ["1999-12-31", "2000-03-01"],
    ["2099-02-28", "2100-03-01"],
    ["2026-03-02", "2026-05-02"],
    ["1970-01-01", "1969-01-01"],
  ]) {
    // prettier-ignore
    expect(daysBetween(from!, to!)).toBe((Date.parse(to!) - Date.parse(from!)) / 86_400_000);
  }
  expect(["2100-02-29", "2026-04-31", "2026-00-10", "2026-1-1", "soon"].filter(isDay)).toEqual([]);
});
