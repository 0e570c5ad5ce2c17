import { takeoffInGroups } from "../../src/bid/takeoffInGroups";
import { readYes } from "../cell/yesNo";
import { bendCounts } from "../../src/takeoff/reports/bendCounts";
import { changes } from "../../src/takeoff/reports/changes";
import { leftToMake } from "../../src/made/counts/leftToMake";
import { readRules, rulesTable } from "../../src/rules/rules";
import { missingTable } from "../../src/takeoff/reports/missing";
import { orderOfBid } from "../../src/bid/orderOfBid";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { trace } from "../../src/takeoff/reports/trace";
import { answer } from "../cell/answer";
import { answerInSlices } from "../cell/inSlices";

/**
 * Material take-off of a whole job: conduit, sticks, couplings, fittings, straps, boxes, conductors, bends; priced when prices are given; spills with a header row.
 *
 * Sticks are counted within each group; with subtotals they are bought for the whole job and shared, and the groups add up to it to the cent. A name under From or To is one box; with each before it, as each receptacle, one for every run of the row.
 * A run that cannot be counted and an item without a price are named, never zero.
 * Example: =CONDUIT.JOB.TAKEOFF(Runs[#All], Prices[#All], Shoes[#All], "Area") //=> Area, Item, Unit, Quantity, …
 * Source: derived from the routes; the rules and their sources stand in JOB.RULES.
 * @customfunction JOB.TAKEOFF
 * @helpurl https://raceway-ledger.example/help/job.takeoff.html
 * @cancelable
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route and more
 * @param {any[][]} [prices] Prices table with its header row: Item, Unit (each, ft, C, M), Price
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any} [by] columns to group by, for example: Job, Area; omitted: no grouping
 * @param {any[][]} [labor] Labor table with its header row: Operation, Minutes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value, named as in JOB.RULES
 * @param {any[][]} [stock] Stock table as for JOB.CUTS: sticks of its lengths are ordered, after what is on hand; with by, all are bought
 * @param {any[][]} [made] Made table with its header row: the conduit, cuts and bends of what is made are left out
 * @param {any[][]} [counts] Counts table with its header row: Item, Quantity, Unit, Area; what hangs on no run
 * @param {any} [subtotals] yes: one order for the whole job, told apart by groups, with a subtotal to each; omitted or no: each group has its own sticks
 * @param {any[][]} [allowances] Allowances table with its header row: Allowance, Of, Value, Unit (%, minimum, lump sum)
 * @param invocation lets a newer edit end it
 * @returns {any[][]} take-off with a header row
 */
export function jobTakeoff(
  runs: any[][],
  prices?: any[][],
  shoes?: any[][],
  by?: any,
  labor?: any[][],
  rules?: any[][],
  stock?: any[][],
  made?: any[][],
  counts?: any[][],
  subtotals?: any,
  allowances?: any[][],
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [runs, prices, shoes, by, labor, rules, stock, made, counts, subtotals, allowances],
    invocation,
    (runs, prices, shoes, by, labor, rules, stock, made, counts, subtotals, allowances) => {
      const takeOff = readYes(subtotals, "subtotals") ? takeoffInGroups : takeoff;
      return takeOff(runs, { prices, shoes, by, labor, rules, stock, counts, allowances, left: leftToMake(made) });
    },
  );
}

/**
 * What to order for a job, without prices: needed with its allowances, on hand, to buy, the packages that hold it and what is left over; spills with a header row.
 *
 * On hand and packages (500, 1000) of an item stand in Prices, sticks on hand in Stock. Of all packages that hold what to buy those that leave least are taken.
 * Example: =CONDUIT.JOB.ORDER(Runs[#All], {"Item","Price","Package","On hand";"EMT 1/2 strap",0.31,50,10}) //=> Item, Unit, Needed, On hand, To buy, Packages, Left over, Note
 * Source: derived, as JOB.TAKEOFF.
 * @customfunction JOB.ORDER
 * @helpurl https://raceway-ledger.example/help/job.order.html
 * @cancelable
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route and more
 * @param {any[][]} [prices] Prices table with its header row: Item, Price, Package, On hand; no price is shown
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @param {any[][]} [stock] Stock table the order starts from
 * @param {any[][]} [counts] Counts table with its header row: Item, Quantity, Unit, Area; what hangs on no run
 * @param {any[][]} [allowances] Allowances table with its header row: Allowance, Of, Value, Unit (%, minimum, lump sum)
 * @param {any[][]} [made] Made table with its header row: the conduit and cuts of what is made are left out
 * @param {any[][]} [bid] Bid table with its header row: its words (job, bidder, date, issue) stand on top
 * @param invocation lets a newer edit end it
 * @returns {any[][]} order with a header row
 */
export function jobOrder(
  runs: any[][],
  prices?: any[][],
  shoes?: any[][],
  rules?: any[][],
  stock?: any[][],
  counts?: any[][],
  allowances?: any[][],
  made?: any[][],
  bid?: any[][],
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [runs, prices, shoes, rules, stock, counts, allowances, made, bid],
    invocation,
    (runs, prices, shoes, rules, stock, counts, allowances, made, bid) =>
      orderOfBid(runs, bid, { prices, shoes, rules, stock, counts, allowances, left: leftToMake(made) }),
  );
}

/**
 * The runs behind one item of the take-off, with what each takes and their sum; spills with a header row.
 *
 * Example: =CONDUIT.JOB.TRACE(Runs[#All], "EMT 1/2 strap") //=> Run, Row, Each, Times, Amount, Note
 * Source: derived, as JOB.TAKEOFF.
 * @customfunction JOB.TRACE
 * @helpurl https://raceway-ledger.example/help/job.trace.html
 * @cancelable
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route and more
 * @param {any} item name of the item as JOB.TAKEOFF shows it
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @param {any} [by] columns the take-off is grouped by, for example: Job, Area; omitted: no grouping
 * @param {any[][]} [stock] Stock table the take-off starts from
 * @param {any[][]} [counts] Counts table with its header row: Item, Quantity, Unit, Area; what hangs on no run
 * @param invocation lets a newer edit end it
 * @returns {any[][]} runs and amounts with a header row
 */
export function jobTrace(
  runs: any[][],
  item: any,
  shoes?: any[][],
  rules?: any[][],
  by?: any,
  stock?: any[][],
  counts?: any[][],
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [runs, item, shoes, rules, by, stock, counts],
    invocation,
    (runs, item, shoes, rules, by, stock, counts) => trace(runs, item, { shoes, rules, by, stock, counts }),
  );
}

/**
 * Everything the job needs that has no price or no minutes yet, under the names to write into Prices and Labor; then rows of theirs that match nothing; spills with a header row.
 *
 * A price or minutes that are empty or 0 wait to be filled in; what costs nothing is free or by others, what takes no time none.
 * With the rule Quotes as of it names quotes older than Oldest quote; with Work counted besides, cuts, threads, reams and more.
 * Example: =CONDUIT.JOB.MISSING(Runs[#All], Prices[#All]) //=> List, Name, Unit, Quantity, Finding, Near
 * Source: derived, as JOB.TAKEOFF.
 * @customfunction JOB.MISSING
 * @helpurl https://raceway-ledger.example/help/job.missing.html
 * @cancelable
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route and more
 * @param {any[][]} [prices] Prices table with its header row: Item, Unit (each, ft, C, M), Price
 * @param {any[][]} [labor] Labor table with its header row: Operation, Minutes
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @param {any[][]} [stock] Stock table the take-off starts from
 * @param {any[][]} [counts] Counts table with its header row: Item, Quantity, Unit, Area; what hangs on no run
 * @param invocation lets a newer edit end it
 * @returns {any[][]} what is missing with a header row
 */
export function jobMissing(
  runs: any[][],
  prices?: any[][],
  labor?: any[][],
  shoes?: any[][],
  rules?: any[][],
  stock?: any[][],
  counts?: any[][],
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [runs, prices, labor, shoes, rules, stock, counts],
    invocation,
    (runs, prices, labor, shoes, rules, stock, counts) =>
      missingTable(runs, { prices, labor, shoes, rules, stock, counts }),
  );
}

/**
 * The rules a take-off counts by, each with its value, unit and source; spills with a header row.
 *
 * Copy the table, change values, and give it to JOB.TAKEOFF as rules. Rows of your own place typicals: Typical ROOM-A, North with
 * the Value 3 has the rows of Runs and Counts with that Typical three times there.
 * Example: =CONDUIT.JOB.RULES() //=> Rule, Value, Unit, Source
 * Source: named in each row; many are common practice without a published source.
 * @customfunction JOB.RULES
 * @helpurl https://raceway-ledger.example/help/job.rules.html
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; they take the place of the built-in values
 * @returns {any[][]} rules with a header row
 */
export function jobRules(rules?: any[][]): any[][] {
  return answer([rules], (rules) => rulesTable(readRules(rules)));
}

/**
 * Bends the shop makes, counted by job, raceway, size, kind or what you name; hours when labor is given; spills with a header row.
 *
 * Example: =CONDUIT.JOB.BENDS(Runs[#All], "Crew, Kind, Angle") //=> Crew, Kind, Angle, Bends, Note
 * Source: derived from the routes.
 * @customfunction JOB.BENDS
 * @helpurl https://raceway-ledger.example/help/job.bends.html
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route and more
 * @param {any} [by] columns to count by: Job, Area, Raceway, Size, Run, From, To, Date, Crew, Phase, Floor, Height, Where, Kind, Angle; omitted: Job, Raceway, Size, Kind
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [labor] Labor table with its header row: Operation (kind of bend, or bend), Minutes for one bend
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @returns {any[][]} bend counts with a header row and a total
 */
export function jobBends(runs: any[][], by?: any, shoes?: any[][], labor?: any[][], rules?: any[][]): any[][] {
  return answer([runs, by, shoes, labor, rules], (runs, by, shoes, labor, rules) =>
    bendCounts(runs, { by, shoes, labor, rules }),
  );
}

/**
 * What changed between two Runs tables: runs added, gone and changed, and the difference in every line of the take-off; spills with a header row.
 *
 * Example: =CONDUIT.JOB.CHANGES(Issued[#All], Runs[#All]) //=> Change, Run or item, Column or unit, Before, After, Difference
 * Source: derived, as JOB.TAKEOFF.
 * @customfunction JOB.CHANGES
 * @helpurl https://raceway-ledger.example/help/job.changes.html
 * @cancelable
 * @param {any[][]} before Runs table as it was, with its header row, at most 20,000 rows
 * @param {any[][]} after Runs table as it is, with its header row, at most 20,000 rows
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @param {any[][]} [stock] Stock table both take-offs start from
 * @param {any[][]} [countsBefore] Counts table as it was, with its header row: Item, Quantity, Unit, Area
 * @param {any[][]} [counts] Counts table as it is, with its header row
 * @param invocation lets a newer edit end it
 * @returns {any[][]} changes with a header row
 */
export function jobChanges(
  before: any[][],
  after: any[][],
  shoes?: any[][],
  rules?: any[][],
  stock?: any[][],
  countsBefore?: any[][],
  counts?: any[][],
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [before, after, shoes, rules, stock, countsBefore, counts],
    invocation,
    (before, after, shoes, rules, stock, countsBefore, counts) =>
      changes(before, after, { shoes, rules, stock, countsBefore, counts }),
  );
}
