import { orderForm, type OrderFormRanges } from "../takeoff/reports/orderForm";
import { readBid } from "./bidTable";

/**
 * An order form under the words of a bid (job, bidder, date, issue), each a row of its own below the headers.
 * @throws InputError when a range lacks a needed column
 */
export function orderOfBid(runs: unknown, bid: unknown, ranges: OrderFormRanges = {}): (string | number)[][] {
  const [headers = [], ...rows] = orderForm(runs, ranges);
  const { lines, problems } = bid === null || bid === undefined ? { lines: [], problems: [] } : readBid(bid);
  const blank = headers.slice(2).map(() => "");
  return [
    headers,
    ...lines.filter(({ words }) => words !== "").map(({ name, words }) => [`${name}: ${words}`, "", ...blank]),
    ...rows,
    ...problems.map((problem) => ["not read", "", ...blank.slice(1), problem]),
  ];
}
