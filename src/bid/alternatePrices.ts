import { readRules } from "../rules/rules";
import { withRule } from "../rules/withRule";
import { readRuns } from "../shop/run/runsTable";
import { isLeftOutByAlternate, WITHOUT } from "../shop/job/alternates";
import { readCounts } from "../takeoff/amounts/counts";
import { rowCell } from "../takeoff/amounts/lineBook";
import { lookUpKey } from "../units/names/lookUpKey";
import { naturalOrder } from "../units/names/naturalOrder";
import { moneyOf, sumOf } from "./amounts";
import { readCosts } from "./costs";
import { recap, type RecapRanges } from "./recap";

type Cell = string | number;

const RULE = "Alternates in the job";

/**
 * What each alternate of a job adds to its base bid or takes off it, alone, and what those that the rules name come to
 * together, as a table with a header row. Each is the difference of two recaps to the cent. Last, what no recap has in it.
 *
 * @throws InputError when a range lacks a needed column
 */
export function alternatePrices(runs: unknown, bid: unknown, ranges: Omit<RecapRanges, "by"> = {}): Cell[][] {
  const priced = (chosen: string) => recap(runs, bid, { ...ranges, rules: withRule(ranges.rules, RULE, chosen) });
  const cents = ({ total }: ReturnType<typeof priced>) => sumOf(total);
  const base = priced("none");
  const alternates = alternatesOf(runs, ranges).map((name) => ({ name, with: priced(name) }));
  const inJob = readRules(ranges.rules).text(RULE);
  const asChosen = recap(runs, bid, ranges);
  const states = [base, asChosen, ...alternates.map((each) => each.with)];
  const lacksOf = ({ problems }: typeof base) => problems.filter((words) => !isLeftOutByAlternate(words));
  const problems = [...new Set(states.flatMap(lacksOf))];
  const row = (name: string, state: typeof base, note = ""): Cell[] => [
    ...[name, state === base ? "" : moneyOf(cents(state) - cents(base)), moneyOf(cents(state))],
    [lacksOf(state).length > 0 ? "without what stands below" : "", note].filter(Boolean).join("; "),
  ];
  return [
    ["Alternate", "Adds or deducts", "Total with it", "Note"],
    row("Base bid", base, alternates.length === 0 ? "no row of Runs, Counts or Costs names an alternate" : ""),
    ...alternates.map((each) => row(each.name, each.with, "alone")),
    ...(alternates.length > 0
      ? [row(`In the job: ${inJob}`, asChosen, "as the rule Alternates in the job has it")]
      : []),
    ...problems.map((words): Cell[] => ["note", "", "", words]),
  ];
}

/** The alternates that rows name, each once, in their natural order. */
function alternatesOf(runs: unknown, { counts, costs }: RecapRanges): string[] {
  const cells = [
    ...readRuns(runs).map(({ run }) => run?.alternate ?? ""),
    ...readCounts(counts).counts.map(({ row }) => rowCell(row, "Alternate")),
    ...readCosts(costs).costs.map(({ cell }) => cell("Alternate")),
  ];
  const names = cells.map((cell) => cell.replace(WITHOUT, "").trim()).filter((name) => name !== "");
  const once = new Map(names.reverse().map((name) => [lookUpKey(name), name]));
  return [...once.values()].sort(naturalOrder);
}
