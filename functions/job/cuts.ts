import { cutList } from "../../src/takeoff/cuts/cutList";
import { jobCuts } from "../../src/takeoff/reports/jobCuts";
import { leftToMake } from "../../src/made/counts/leftToMake";
import { answerInSlices } from "../cell/inSlices";

/**
 * Cutting plans of a whole job, one for each raceway and size, with the proven least number of sticks; spills with a header row.
 *
 * Pieces are cut to the nearest 1/16 in., as JOB.SCHEDULE shows them. The answer comes within a set amount of work.
 * Of plans that cost the same one with a long rest is shown. The longest rest is looked for on every stick, bought or on hand;
 * proven means that no plan of that cost, taking no more sticks without a price from what is on hand, leaves a longer one.
 * Lines stand in the order of sawing: all sticks of a line together, length after length, so that the stop is set seldom.
 * Drop names what is left of each stick and is kept, through the whole job; Drop to says whether it goes to Stock or is scrap.
 * With prices, a line under a plan tells where more couplings would take sticks away that cost more than they do, at these prices.
 * Example: =CONDUIT.JOB.CUTS(Runs[#All], Stock[#All], Shoes[#All]) //=> Raceway, Size, Sticks, Stick, Cut, Left over, For, Note, Drop, Drop to
 * Source: derived; the bound is proven in whole numbers and checked a second time.
 * @customfunction JOB.CUTS
 * @helpurl https://raceway-ledger.example/help/job.cuts.html
 * @cancelable
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route and more
 * @param {any[][]} [stock] Stock table with its header row: Raceway, Size, Length, On hand (empty or buy: to be bought), Price; omitted: 10 ft sticks, or the runs' Stick column
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any} [kerf] width of the saw cut [in], 0 to 1; omitted: 1/16, or the rule's
 * @param {any} [keep] shortest offcut worth keeping [in]; omitted: 12, or the rule's
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @param {any[][]} [made] Made table with its header row: what is made is not cut again
 * @param {any[][]} [prices] Prices table with its header row: couplings that would save sticks are told
 * @param invocation lets a newer edit end it
 * @returns {any[][]} cutting plans with a header row
 */
export function jobCutsOf(
  runs: any[][],
  stock?: any[][],
  shoes?: any[][],
  kerf?: any,
  keep?: any,
  rules?: any[][],
  made?: any[][],
  prices?: any[][],
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [runs, stock, shoes, kerf, keep, rules, made, prices],
    invocation,
    (runs, stock, shoes, kerf, keep, rules, made, prices) =>
      jobCuts(runs, { stock, shoes, kerf, keep, rules, left: leftToMake(made), prices }),
  );
}

/**
 * Cutting plan for any list of lengths, with the proven least number of sticks; spills with a header row.
 *
 * Lengths are cut as written, never rounded: all in 1/32 in., or all in 0.1 mm.
 * Of plans that cost the same one with a long rest is shown. The longest rest is looked for on every stick, bought or on hand;
 * proven means that no plan of that cost, taking no more sticks without a price from what is on hand, leaves a longer one.
 * Lines stand in the order of sawing: all sticks of a line together, length after length, so that the stop is set seldom.
 * Drop names what is left of each stick and is kept; Drop to says whether it goes to Stock or is scrap.
 * Example: =CONDUIT.CUT.PLAN(A2:A9, B2:B9, 120, 0.0625) //=> Sticks, Stick, Cut, Left over, Note, Drop, Drop to
 * Source: derived; the bound is proven in whole numbers and checked a second time.
 * @customfunction CUT.PLAN
 * @helpurl https://raceway-ledger.example/help/cut.plan.html
 * @cancelable
 * @param {any[][]} lengths lengths of the pieces [in], numbers or text, each above 0
 * @param {any[][]} [quantities] how many of each, as many cells as lengths; omitted: one of each
 * @param {any[][]} [stock] length of a stick [in], or a Stock table with its header row: Length, On hand, Price; omitted: 120
 * @param {any} [kerf] width of the saw cut [in], 0 to 1; omitted: 0
 * @param {any} [keep] shortest offcut worth keeping [in]; omitted: 12
 * @param invocation lets a newer edit end it
 * @returns {any[][]} cutting plan with a header row
 */
export function cutPlanOf(
  lengths: any[][],
  quantities?: any[][],
  stock?: any[][],
  kerf?: any,
  keep?: any,
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [lengths, quantities, stock, kerf, keep],
    invocation,
    (lengths, quantities, stock, kerf, keep) => cutList(lengths, quantities, stock, kerf, keep),
  );
}
