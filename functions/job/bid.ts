import { alternatePrices } from "../../src/bid/alternatePrices";
import { changeOrder } from "../../src/bid/change/changeOrder";
import { standing } from "../../src/made/standing/standing";
import { hoursTable } from "../../src/bid/hoursTable";
import { crewRate } from "../../src/bid/labor/crews";
import { recapTable } from "../../src/bid/recap";
import { overviewTable } from "../../src/overview/overview";
import { answer } from "../cell/answer";
import { answerInSlices } from "../cell/inSlices";

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
 * @param {any[][]} [labor] Labor table with its header row: Operation, Minutes or Hours, Unit
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @param {any[][]} [stock] Stock table the take-off starts from
 * @param {any} [by] columns to tell the bid apart by, for example: Area; omitted: no groups
 * @param {any[][]} [costs] Costs table with its header row: Job cost, Quantity, Unit, Price, Area
 * @param {any[][]} [factors] Factors table with its header row: Column, Is, Percent; they make the labor harder
 * @param {any[][]} [counts] Counts table with its header row: Item, Quantity, Unit, Area; what hangs on no run
 * @param {any[][]} [allowances] Allowances table with its header row: Allowance, Of, Value, Unit (%, minimum, lump sum)
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
  factors?: any[][],
  counts?: any[][],
  allowances?: any[][],
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [runs, bid, prices, labor, shoes, rules, stock, by, costs, factors, counts, allowances],
    invocation,
    (runs, bid, prices, labor, shoes, rules, stock, by, costs, factors, counts, allowances) =>
      recapTable(runs, bid, { prices, labor, shoes, rules, stock, by, costs, factors, counts, allowances }),
  );
}

/**
 * What each alternate adds to the base bid or takes off it, alone, and what those that are in the job come to together; spills with a header row.
 *
 * Alternates are the names in the column Alternate of Runs, Counts and Costs. Each line is the difference of two JOB.RECAPs to the cent.
 * Example: =CONDUIT.JOB.ALTERNATES(Runs[#All], Bid[#All], Prices[#All], Labor[#All]) //=> Alternate, Adds or deducts, Total with it, Note
 * Source: derived, as JOB.RECAP.
 * @customfunction JOB.ALTERNATES
 * @helpurl https://raceway-ledger.example/help/job.alternates.html
 * @cancelable
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route, Alternate and more
 * @param {any[][]} bid Bid table with its header row: Line, Value, Unit, Of
 * @param {any[][]} [prices] Prices table with its header row: Item, Unit (each, ft, C, M), Price
 * @param {any[][]} [labor] Labor table with its header row: Operation, Minutes or Hours, Unit
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; Alternates in the job says what the last line has in it
 * @param {any[][]} [stock] Stock table the take-off starts from
 * @param {any[][]} [costs] Costs table with its header row: Job cost, Quantity, Unit, Price, Alternate
 * @param {any[][]} [factors] Factors table with its header row: Column, Is, Percent; they make the labor harder
 * @param {any[][]} [counts] Counts table with its header row: Item, Quantity, Unit, Alternate; what hangs on no run
 * @param {any[][]} [allowances] Allowances table with its header row: Allowance, Of, Value, Unit (%, minimum, lump sum)
 * @param invocation lets a newer edit end it
 * @returns {any[][]} a line for each alternate with a header row
 */
export function jobAlternates(
  runs: any[][],
  bid: any[][],
  prices?: any[][],
  labor?: any[][],
  shoes?: any[][],
  rules?: any[][],
  stock?: any[][],
  costs?: any[][],
  factors?: any[][],
  counts?: any[][],
  allowances?: any[][],
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [runs, bid, prices, labor, shoes, rules, stock, costs, factors, counts, allowances],
    invocation,
    (runs, bid, prices, labor, shoes, rules, stock, costs, factors, counts, allowances) =>
      alternatePrices(runs, bid, { prices, labor, shoes, rules, stock, costs, factors, counts, allowances }),
  );
}

/**
 * A priced change between two states of the runs: what was added and deducted, labor, every line of the recap that moved, what is made already and left over; spills with a header row.
 *
 * Only what moved is listed; the lines are the difference of two JOB.RECAPs to the cent, overhead and profit by the rules of the bid.
 * Example: =CONDUIT.JOB.CHANGE.ORDER(Issued[#All], Runs[#All], {"Line","Value","Unit";"Material","","material"}, Prices[#All]) //=> Change, Item or line, Unit, Before, After, Difference, Unit price, Amount, Hours, Note
 * Source: derived, as JOB.RECAP; what is made as JOB.STANDING.
 * @customfunction JOB.CHANGE.ORDER
 * @helpurl https://raceway-ledger.example/help/job.change.order.html
 * @cancelable
 * @param {any[][]} before Runs table as it was, with its header row, at most 20,000 rows
 * @param {any[][]} after Runs table as it is, with its header row, at most 20,000 rows
 * @param {any[][]} bid Bid table with its header row: Line, Value, Unit, Of; its words (job, number, date) stand on top
 * @param {any[][]} [prices] Prices table with its header row: Item, Unit (each, ft, C, M), Price
 * @param {any[][]} [labor] Labor table with its header row: Operation, Minutes or Hours, Unit
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @param {any[][]} [stock] Stock table both take-offs start from
 * @param {any[][]} [costs] Costs table with its header row: Job cost, Quantity, Unit, Price, Area
 * @param {any[][]} [factors] Factors table with its header row: Column, Is, Percent
 * @param {any[][]} [countsBefore] Counts table as it was; omitted: as it is
 * @param {any[][]} [counts] Counts table as it is, with its header row: Item, Quantity, Unit, Area
 * @param {any[][]} [allowances] Allowances table with its header row: Allowance, Of, Value, Unit
 * @param {any[][]} [made] Made table with its header row: what of it is left over stands with the change
 * @param invocation lets a newer edit end it
 * @returns {any[][]} change with a header row
 */
export function jobChangeOrder(
  before: any[][],
  after: any[][],
  bid: any[][],
  prices?: any[][],
  labor?: any[][],
  shoes?: any[][],
  rules?: any[][],
  stock?: any[][],
  costs?: any[][],
  factors?: any[][],
  countsBefore?: any[][],
  counts?: any[][],
  allowances?: any[][],
  made?: any[][],
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [before, after, bid, prices, labor, shoes, rules, stock, costs, factors, countsBefore, counts, allowances, made],
    invocation,
    (
      before,
      after,
      bid,
      prices,
      labor,
      shoes,
      rules,
      stock,
      costs,
      factors,
      countsBefore,
      counts,
      allowances,
      made,
    ) => {
      const lists = { prices, labor, shoes, rules, stock, costs, factors, countsBefore, counts, allowances };
      const left = made ? standing(after, made, { issued: before, shoes, rules }) : undefined;
      return changeOrder(before, after, bid, { ...lists, standing: left });
    },
  );
}

/**
 * Labor hours of a job, work by work, with what conditions add to them (height, floor, area, place); by groups, with totals; spills with a header row.
 *
 * Of a column's rows in Factors one holds: the word's, else the highest number reached. Columns are multiplied or added, as a rule says.
 * Example: =CONDUIT.JOB.HOURS(Runs[#All], Labor[#All], {"Column","Is","Percent";"Crew","B",10}, "Crew") //=> Crew, Work, Unit, Quantity, Hours, …
 * Source: derived; the Labor and Factors tables are yours, no labor units are built in.
 * @customfunction JOB.HOURS
 * @helpurl https://raceway-ledger.example/help/job.hours.html
 * @cancelable
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route and more
 * @param {any[][]} labor Labor table with its header row: Operation, Minutes or Hours, Unit (each, ft, C, M, C ft, M ft)
 * @param {any[][]} [factors] Factors table with its header row: Column (of Runs), Is, Percent
 * @param {any} [by] columns to group by, for example: Area, Phase; omitted: no groups
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @param {any[][]} [stock] Stock table the take-off starts from
 * @param {any[][]} [counts] Counts table with its header row: Item, Quantity, Unit, Area; what hangs on no run
 * @param invocation lets a newer edit end it
 * @returns {any[][]} hours with a header row
 */
export function jobHours(
  runs: any[][],
  labor: any[][],
  factors?: any[][],
  by?: any,
  shoes?: any[][],
  rules?: any[][],
  stock?: any[][],
  counts?: any[][],
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [runs, labor, factors, by, shoes, rules, stock, counts],
    invocation,
    (runs, labor, factors, by, shoes, rules, stock, counts) =>
      hoursTable(runs, { labor, factors, by, shoes, rules, stock, counts }),
  );
}

/**
 * A job at a glance, to draw charts from: feet of conduit, material by class, the lines of the bid, hours, waste and progress; spills with a header row.
 *
 * Feet are told by size and by area, hours by crew and by week. Every number is that of JOB.TAKEOFF, JOB.RECAP, JOB.HOURS, JOB.CUTS and JOB.PROGRESS; a part with nothing in it says why. Weeks begin on Monday (ISO 8601).
 * Example: =CONDUIT.JOB.OVERVIEW(Runs[#All], Prices[#All]) //=> Part, What, Unit, Amount, Note
 * Source: derived, as the functions it adds up.
 * @customfunction JOB.OVERVIEW
 * @helpurl https://raceway-ledger.example/help/job.overview.html
 * @cancelable
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route and more
 * @param {any[][]} [prices] Prices table with its header row: Item, Unit (each, ft, C, M), Price
 * @param {any[][]} [labor] Labor table with its header row: Operation, Minutes or Hours, Unit
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @param {any[][]} [stock] Stock table the take-off starts from
 * @param {any[][]} [counts] Counts table with its header row: Item, Quantity, Unit, Area; what hangs on no run
 * @param {any[][]} [allowances] Allowances table with its header row: Allowance, Of, Value, Unit (%, minimum, lump sum)
 * @param {any[][]} [factors] Factors table with its header row: Column, Is, Percent
 * @param {any[][]} [made] Made table with its header row: Piece, Good and more
 * @param {any[][]} [bid] Bid table with its header row: Line, Value, Unit, Of
 * @param {any[][]} [costs] Costs table with its header row: Job cost, Quantity, Unit, Price, Area
 * @param invocation lets a newer edit end it
 * @returns {any[][]} overview with a header row
 */
export function jobOverview(
  runs: any[][],
  prices?: any[][],
  labor?: any[][],
  shoes?: any[][],
  rules?: any[][],
  stock?: any[][],
  counts?: any[][],
  allowances?: any[][],
  factors?: any[][],
  made?: any[][],
  bid?: any[][],
  costs?: any[][],
  invocation?: CustomFunctions.CancelableInvocation,
): any[][] {
  return answerInSlices(
    [runs, prices, labor, shoes, rules, stock, counts, allowances, factors, made, bid, costs],
    invocation,
    (runs, prices, labor, shoes, rules, stock, counts, allowances, factors, made, bid, costs) =>
      overviewTable(runs, { prices, labor, shoes, rules, stock, counts, allowances, factors, made, bid, costs }),
  );
}

/**
 * What an hour of one worker of a crew costs on average with fringes and burden on it, to the cent: straight time, overtime or double.
 *
 * The wage is multiplied; fringes are not; the burden is a percent of what is paid: wage and the fringes paid with it.
 * Example: =CONDUIT.CREW.RATE({"Crew","Worker","Base","Fringes","Of that paid","Burden";"A","Electrician",37.4,17.16,11.1,8.45}, "A", "overtime") //=> 78.94
 * Source: a public-works hourly labor rate worksheet, scribd.com/document/138050685.
 * @customfunction CREW.RATE
 * @helpurl https://raceway-ledger.example/help/crew.rate.html
 * @param {any[][]} crews Crews table with its header row: Crew, Worker, Number, Base, Fringes, Of that paid, Burden (percent)
 * @param {any} [crew] name of the crew; omitted: every row
 * @param {any} [time] straight, overtime (1.5), double (2) or the multiple, 1 to 5; omitted: straight
 * @returns {number} money an hour
 */
export function crewRateOf(crews: any[][], crew?: any, time?: any): number {
  return answer([crews, crew, time], crewRate);
}
