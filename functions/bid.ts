import { recapTable } from "../src/bid/recap";
import { answerInSlices } from "./inSlices";

/**
 * The recap of a bid: material, labor, job costs and whatever the Bid table adds, line by line to the total; by groups that add up to it to the cent; spills with a header row.
 *
 * Each row of Bid is a line, worked out in its order; its Unit says how: material, costs, per hour, %, margin %, lump sum, subtotal, total, words.
 * A % is a markup on what Of names, or on all above; a margin % is that share of the price. What is not in the total is said below it.
 * Example: =CONDUIT.JOB.RECAP(Runs[#All], Bid[#All], Prices[#All], Labor[#All]) //=> Line, Basis, Amount
 * Source: common practice; M. Holt, newsletters 36 to 43 (order of the recap), as tests/published/estimating.test.ts names them.
 * @customfunction JOB.RECAP
 * @helpurl https://raceway-ledger.example/help/job.recap.html
 * @cancelable
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route and more
 * @param {any[][]} bid Bid table with its header row: Line, Value, Unit, Of
 * @param {any[][]} [prices] Prices table with its header row: Item, Unit (each, ft, C, M), Price
 * @param {any[][]} [labor] Labor table with its header row: Operation, Minutes
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @param {any[][]} [stock] Stock table the take-off starts from
 * @param {any} [by] columns to tell the bid apart by, for example: Area; omitted: no groups
 * @param {any[][]} [costs] Job costs table with its header row: Job cost, Quantity, Unit, Price, Area
 * @param invocation lets a newer edit end it
 * @returns {any[][]} recap with a header row
 */
export function jobRecap(
  runs: any[][],
  bid: any[][],
  prices?: any[][],
  labor?: any[][],
  shoes?: any[][],
  rules?: any[][],
  stock?: any[][],
  by?: any,
  costs?: any[][],
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [runs, bid, prices, labor, shoes, rules, stock, by, costs],
    invocation,
    (runs, bid, prices, labor, shoes, rules, stock, by, costs) =>
      recapTable(runs, bid, { prices, labor, shoes, rules, stock, by, costs }),
  );
}
