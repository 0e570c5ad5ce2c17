import { dayNumber, dayText } from "../units/day";
import { NONE, unnamed, type Bar, type OverviewPart } from "./part";

/** Labor hours of one group, what conditions add to them included. */
export interface GroupHours {
  readonly group: string;
  readonly hours: number;
}

const WHY_NONE = "no hours yet: Labor is where the minutes of the work stand";

/** Hours by the crews that the rows of the job name. */
export const hoursByCrew = (hours: readonly GroupHours[]): OverviewPart =>
  hoursPart("Hours by crew", hours, (group) => unnamed(group, "crew"));

/** Hours by the weeks of the rows' dates. */
export const hoursByWeek = (hours: readonly GroupHours[]): OverviewPart =>
  hoursPart("Hours by week", hours, (group) => unnamed(weekOf(group), "date"));

function hoursPart(name: string, hours: readonly GroupHours[], label: (group: string) => string): OverviewPart {
  const sums = new Map<string, number>();
  for (const { group, hours: amount } of hours) {
    if (amount > NONE) sums.set(label(group), (sums.get(label(group)) ?? 0) + amount);
  }
  const bars = [...sums].map(([group, amount]): Bar => ({ label: group, amount }));
  return { name, unit: "h", bars, note: bars.length > 0 ? "with what Factors add" : WHY_NONE };
}

/** Number of a Monday, as a workbook counts days; 7 days a week. */
const [MONDAY, WEEK] = [2, 7];

/**
 * The week a day is in, named by its Monday (ISO 8601: weeks begin on Monday); what is no day stays as it is written.
 * @example weekOf("2026-12-03") //=> "week of 2026-11-30"
 */
export function weekOf(day: string): string {
  const number = dayNumber(day);
  return number === undefined ? day : `week of ${dayText(number - ((number - MONDAY) % WEEK))}`;
}
