import { chart } from "../../src/made/learning/chart";
import { daily } from "../../src/made/counts/daily";
import { learn } from "../../src/made/learning/learn";
import { progress } from "../../src/made/counts/progress";
import { standing } from "../../src/made/standing/standing";
import { answer } from "../cell/answer";

/**
 * What a job needs, what was made of it and what is left, pieces and bends; spills with a header row and a totals row.
 *
 * Example: =CONDUIT.JOB.PROGRESS(Runs[#All], Made[#All]) //=> Job, Raceway, Size, Pieces needed, Pieces made, Pieces left, Pieces scrapped, Bends needed, Bends made, Bends left, Note
 * Source: the records, counted for the pieces of the schedule.
 * @customfunction JOB.PROGRESS
 * @helpurl https://raceway-ledger.example/help/job.progress.html
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows
 * @param {any[][]} made Made table with its header row: Piece, Good, and as you like Date, Scrapped, By, Crew, Bend, Dial reached, Angle measured, Shape, Note, Id
 * @param {any} [by] columns to count by, parted by commas: Job, Area, Raceway, Size, Run, From, To, Date, Crew, Kind, By, or none; omitted: Job, Raceway, Size
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @param {any[][]} [labor] Labor table with its header row: Operation, Minutes; then the hours that the bends left will take
 * @returns {any[][]} a table with a header row
 */
export function jobProgress(
  runs: any[][],
  made: any[][],
  by?: any,
  shoes?: any[][],
  rules?: any[][],
  labor?: any[][],
): any[][] {
  return answer([runs, made, by, shoes, rules, labor], (runs, made, by, shoes, rules, labor) =>
    progress(runs, made, { by, shoes, rules, labor }),
  );
}

/**
 * What each crew made and scrapped each day, and how many pieces were left after it; spills with a header row.
 *
 * Example: =CONDUIT.JOB.DAILY(Runs[#All], Made[#All]) //=> Date, Crew, Pieces made, Pieces scrapped, Bends made, Pieces left
 * Source: the records, counted for the pieces of the schedule.
 * @customfunction JOB.DAILY
 * @helpurl https://raceway-ledger.example/help/job.daily.html
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows
 * @param {any[][]} made Made table with its header row
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @returns {any[][]} a table with a header row
 */
export function jobDaily(runs: any[][], made: any[][], shoes?: any[][], rules?: any[][]): any[][] {
  return answer([runs, made, shoes, rules], (runs, made, shoes, rules) => daily(runs, made, { shoes, rules }));
}

/**
 * What a change of the runs leaves standing of all that was made, and the fewest pieces to make again, proven; spills with a header row.
 *
 * Example: =CONDUIT.JOB.STANDING(Runs[#All], Made[#All], Issued[#All]) //=> Made, Shape, Pieces, Standing, For, To do, Straight
 * Source: a matching of greatest worth, proven by its prices (weak duality).
 * @customfunction JOB.STANDING
 * @helpurl https://raceway-ledger.example/help/job.standing.html
 * @param {any[][]} runs Runs table as it is now, with its header row, at most 20,000 rows
 * @param {any[][]} made Made table with its header row
 * @param {any[][]} [issued] Runs table as it was when the pieces were made; omitted: the runs as they are now
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @returns {any[][]} a table with a header row
 */
export function jobStanding(runs: any[][], made: any[][], issued?: any[][], shoes?: any[][], rules?: any[][]): any[][] {
  return answer([runs, made, issued, shoes, rules], (runs, made, issued, shoes, rules) =>
    standing(runs, made, { issued, shoes, rules }),
  );
}

/**
 * What measured bends say of each shoe's springback, with its limits, and whether the shoe in use lies inside; spills with a header row.
 *
 * Example: =CONDUIT.SHOE.LEARN(Made[#All], Shoes[#All], Runs[#All]) //=> Raceway, Size, Bends measured, Model, Springback at 90, Plus or minus, Intercept, Slope, Scatter, In use, Verdict
 * Source: least squares with the uncertainty of the line (NIST/SEMATECH e-Handbook 4.1.4.1), 95 % limits by Student's t.
 * @customfunction SHOE.LEARN
 * @helpurl https://raceway-ledger.example/help/shoe.learn.html
 * @param {any[][]} made Made table with its header row: Piece, Good, Bend, Dial reached, Angle measured; Raceway and Size where no runs are given
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [runs] Runs table with its header row, to know on which shoe a piece was made
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @returns {any[][]} a table with a header row
 */
export function shoeLearn(made: any[][], shoes?: any[][], runs?: any[][], rules?: any[][]): any[][] {
  return answer([made, shoes, runs, rules], (made, shoes, runs, rules) => learn(made, { shoes, runs, rules }));
}

/**
 * A control chart of angle errors for each shoe: measured less wanted, with the limits of single bends and of the step between two; spills with a header row.
 *
 * Example: =CONDUIT.SHOE.CHART(Made[#All], Runs[#All]) //=> Raceway, Size, Date, Piece, Bend, Error, Mean, Lower, Upper, Step, Largest step, Verdict
 * Source: individuals and moving-range chart (NIST/SEMATECH e-Handbook 6.3.2.2).
 * @customfunction SHOE.CHART
 * @helpurl https://raceway-ledger.example/help/shoe.chart.html
 * @param {any[][]} made Made table with its header row: Piece, Good, Bend, Dial reached, Angle measured
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value
 * @returns {any[][]} a table with a header row
 */
export function shoeChart(made: any[][], runs: any[][], shoes?: any[][], rules?: any[][]): any[][] {
  return answer([made, runs, shoes, rules], (made, runs, shoes, rules) => chart(made, runs, { shoes, rules }));
}
