/** Last day that Excel counts, 9999-12-31. */
const LAST_DAY = 2958465;
/** Excel's number of 1970-01-01, from which JavaScript counts [days]. */
const EPOCH = 25569;
/** Excel counts a 29 February 1900 that there was not; before it the day is another one. */
const FIRST_RIGHT_DAY = 61;

const MILLISECONDS = 86_400_000;
const CALENDAR = new Intl.DateTimeFormat("en-US", {
  year: "numeric",
  month: "2-digit",
  day: "2-digit",
  timeZone: "UTC",
});

/**
 * A day as a workbook holds it: the number of a date as 2026-12-01, so that days sort; text as it is written. Excel
 * counts from 1900; a workbook that counts from 1904 should hold its days as text.
 *
 * @example dayText(39448) //=> "2008-01-01"
 */
export function dayText(cell: unknown): string {
  if (cell === null || cell === undefined) return "";
  if (typeof cell !== "number" || cell < FIRST_RIGHT_DAY || cell >= LAST_DAY + 1) return String(cell).trim();
  const parts = CALENDAR.formatToParts((Math.floor(cell) - EPOCH) * MILLISECONDS);
  return ["year", "month", "day"].map((wanted) => parts.find(({ type }) => type === wanted)?.value ?? "").join("-");
}

/** Days of a year before each month begins, 29 February not counted. */
const BEFORE_MONTH = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/**
 * The number of a day that is written as `dayText` writes one; undefined for any other text. The years are those of the
 * Gregorian calendar: of the full hundreds only each fourth has a 29 February.
 *
 * @example dayNumber("2008-01-01") //=> 39448
 */
export function dayNumber(text: string): number | undefined {
  const [, year = 0, month = 0, day = 0] = (/^(\d{4})-(\d\d)-(\d\d)$/.exec(text) ?? []).map(Number);
  const past = year - (month > 2 ? 0 : 1);
  const leapDays = Math.floor(past / 4) - Math.floor(past / 100) + Math.floor(past / 400);
  // 1970-01-01: 1969 years, 477 leap days among them.
  const number = EPOCH + (year - 1970) * 365 + leapDays - 477 + (BEFORE_MONTH[month - 1] ?? NaN) + day - 1;
  return number > 0 && dayText(number) === text ? number : undefined;
}

/**
 * Days from one day to a later one, each as 2026-12-01; undefined where one of them is no such day.
 *
 * @example daysBetween("2026-03-02", "2026-05-02") //=> 61
 */
export function daysBetween(from: string, to: string): number | undefined {
  const [first, last] = [from, to].map(dayNumber);
  return first === undefined || last === undefined ? undefined : last - first;
}

/** True for a day as 2026-12-01 that there is. */
export const isDay = (text: string): boolean => dayNumber(text) !== undefined;
