import { readEdition } from "../../src/raceway/code/rules";
import { readRules } from "../../src/rules/rules";
import { checkCells } from "../../src/shop/checks/checkCells";
import { checkRow } from "../../src/shop/checks/checks";
import { findingsText, rowText } from "../../src/shop/checks/findings";
import { buildOneRow } from "../../src/shop/job/job";
import { buildOneRun, oneRun } from "../../src/shop/run/oneRun";
import { runBends, runDegrees, runLength, runPoints } from "../../src/shop/run/runTotals";
import { scheduleRun, scheduleTable } from "../../src/shop/schedule/schedule";
import { answer } from "../cell/answer";

/**
 * Developed length of a run's conduit in inches: corner-to-corner legs less the gain of each bend.
 *
 * PVC is laid out with factory elbows at the code's radius for one-shot bends (or the rule's, or the route's: elbow 24), and
 * needs no shoe.
 * Example: =CONDUIT.RUN.LENGTH("up 36, east 60", "EMT", "1/2") //=> 94.2832
 * Source: derived, Σ legs − Σ(2R·tan(A/2) − R·A); factory elbows: NEC chapter 9, table 2, one-shot.
 * @customfunction RUN.LENGTH
 * @helpurl https://raceway-ledger.example/help/run.length.html
 * @param {any} route where the conduit goes, for example: up 4', east 12' 6"
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; those of factory elbows count here
 * @returns {number} developed length [in]
 */
export function runLengthOf(route: any, raceway: any, size: any, shoes?: any[][], rules?: any[][]): number {
  return answer([route, raceway, size, shoes, rules], (route, raceway, size, shoes, rules) =>
    runLength(buildOneRun(route, raceway, size, shoes, rules)),
  );
}

/**
 * How many bends the bender makes for a run; an offset counts two, a sweep its shots, a factory elbow none.
 *
 * Example: =CONDUIT.RUN.BENDS("up 36, east 60, offset 6 up at 30, ahead 40", "EMT", "1/2") //=> 3
 * Source: derived from the route.
 * @customfunction RUN.BENDS
 * @helpurl https://raceway-ledger.example/help/run.bends.html
 * @param {any} route where the conduit goes, for example: up 4', east 12' 6"
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; those of factory elbows count here
 * @returns {number} bends
 */
export function runBendsOf(route: any, raceway: any, size: any, shoes?: any[][], rules?: any[][]): number {
  return answer([route, raceway, size, shoes, rules], (route, raceway, size, shoes, rules) =>
    runBends(buildOneRun(route, raceway, size, shoes, rules)),
  );
}

/**
 * Degrees of bend between pull points: the most in any stretch of the run from box to box.
 *
 * Example: =CONDUIT.RUN.DEGREES("up 36, east 60, down 36", "EMT", "1/2") //=> 180
 * Source: derived from the route.
 * @customfunction RUN.DEGREES
 * @helpurl https://raceway-ledger.example/help/run.degrees.html
 * @param {any} route where the conduit goes, for example: up 4', east 12' 6"
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; those of factory elbows count here
 * @returns {number} degrees
 */
export function runDegreesOf(route: any, raceway: any, size: any, shoes?: any[][], rules?: any[][]): number {
  return answer([route, raceway, size, shoes, rules], (route, raceway, size, shoes, rules) =>
    runDegrees(buildOneRun(route, raceway, size, shoes, rules)),
  );
}

/**
 * Every rule the run breaks, in words; "OK" when none was found.
 *
 * With headers and row every cell of the run counts, quantity, conductors and straps as well, and the answer is short: the
 * finding of JOB.CHECKS that weighs most, and how many more it has. What takes other rows to see, such as a name that stands
 * twice, stands in JOB.CHECKS alone.
 * Example: =CONDUIT.RUN.CHECK("up 36, east 60", "EMT", "1/2") //=> OK
 * Source: each finding names its rule.
 * @customfunction RUN.CHECK
 * @helpurl https://raceway-ledger.example/help/run.check.html
 * @param {any} route where the conduit goes, for example: up 4', east 12' 6"
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; those of elbows, air, terminals, expansion and pulling count here
 * @param {any[][]} [headers] header row of the Runs table, where all of the run's cells are to be checked
 * @param {any[][]} [row] the run's row under those headers; then route, raceway and size are read from it
 * @returns {string} the findings, or OK
 */
export function runCheck(
  route: any,
  raceway: any,
  size: any,
  shoes?: any[][],
  edition?: any,
  rules?: any[][],
  headers?: any[][],
  row?: any[][],
): string {
  return answer(
    [route, raceway, size, shoes, edition, rules, headers, row],
    (route, raceway, size, shoes, edition, rules, headers, row) => {
      const codeEdition = readEdition(edition);
      if (headers && row) return rowText(checkCells(headers, row, { shoes, rules }, codeEdition));
      const alone = buildOneRow(oneRun(route, raceway, size), shoes, rules);
      return findingsText(checkRow(alone, codeEdition, readRules(rules)));
    },
  );
}

/**
 * Corner points of a run in inches east, north and up of its datum end; spills with a header row.
 *
 * Example: =CONDUIT.RUN.POINTS("up 36, east 60", "EMT", "1/2") //=> Point, East, North, Up, At
 * Source: derived from the route.
 * @customfunction RUN.POINTS
 * @helpurl https://raceway-ledger.example/help/run.points.html
 * @param {any} route where the conduit goes, for example: up 4', east 12' 6"
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; those of factory elbows count here
 * @returns {any[][]} points with a header row
 */
export function runPointsOf(route: any, raceway: any, size: any, shoes?: any[][], rules?: any[][]): any[][] {
  return answer([route, raceway, size, shoes, rules], (route, raceway, size, shoes, rules) =>
    runPoints(buildOneRun(route, raceway, size, shoes, rules)),
  );
}

/**
 * Bend schedule of one run: cut lengths, marks, what to line up, dial and turn; spills with a header row.
 *
 * Lines come in bending order (Step), a three-bend saddle from its center where dial and shoe allow it; Bend counts along
 * the piece. A factory elbow (PVC) has a line of its own between the pieces: no mark, no cut length.
 * Example: =CONDUIT.RUN.MARKS("up 36, east 60", "EMT", "1/2") //=> Run, Piece, Cut length, Bend, …
 * Source: derived from the shoe, GAIN and SETBACK of true arcs; factory elbows: NEC chapter 9, table 2, one-shot; their straight ends: DATA.
 * @customfunction RUN.MARKS
 * @helpurl https://raceway-ledger.example/help/run.marks.html
 * @param {any} route where the conduit goes, for example: up 4', east 12' 6"
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; those of factory elbows count here
 * @returns {any[][]} schedule with a header row
 */
export function runMarks(route: any, raceway: any, size: any, shoes?: any[][], rules?: any[][]): any[][] {
  return answer([route, raceway, size, shoes, rules], (route, raceway, size, shoes, rules) =>
    scheduleTable(scheduleRun(buildOneRun(route, raceway, size, shoes, rules))),
  );
}
