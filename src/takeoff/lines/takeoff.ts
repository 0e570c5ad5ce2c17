import { readRuns } from "../../shop/run/runsTable";
import { readShoes } from "../../shop/shoe/shoeBook";
import { jobWork } from "../amounts/jobWork";
import { readLabor } from "../lists/labor";
import { notRead } from "../lists/notRead";
import { readOrder } from "./order";
import { readPrices } from "../lists/prices";
import { readRules } from "../../rules/rules";
import { takeoffLines } from "./takeoffLines";
import { takeoffTable } from "./takeoffTable";
import { listIn } from "../lists/valueList";

/** What a take-off may be given besides the runs. */
export interface TakeoffRanges {
  readonly prices?: unknown;
  readonly shoes?: unknown;
  readonly by?: unknown;
  readonly labor?: unknown;
  readonly rules?: unknown;
  readonly stock?: unknown;
}

/**
 * Take-off of a Runs range as a table with a header row.
 * @throws InputError when a range lacks a needed column, `by` names none, or stock comes with groups
 */
export function takeoff(runs: unknown, ranges: TakeoffRanges = {}): (string | number)[][] {
  const { by, stock } = readOrder(ranges);
  const rules = readRules(ranges.rules);
  const shoes = readShoes(ranges.shoes);
  const prices = listIn(ranges.prices, readPrices);
  const labor = listIn(ranges.labor, readLabor);
  const rows = readRuns(runs);
  const job = jobWork(rows, shoes, rules);
  const problems = notRead(rows, shoes, rules, stock, prices, labor);
  return takeoffTable(takeoffLines(job.works, by, rules, stock), job, { by, prices, labor, problems });
}
