import { readBench } from "../../src/shop/bench/bench";
import { readEdition } from "../../src/raceway/code/rules";
import { checkJob } from "../../src/shop/checks/checks";
import { findingsTable } from "../../src/shop/checks/findings";
import { buildJob } from "../../src/shop/job/job";
import { jobScheduleTable } from "../../src/shop/schedule/schedule";
import { circuitTable } from "../../src/shop/circuits/circuitTable";
import { setupTable } from "../../src/shop/bench/setupTable";
import { answer } from "../cell/answer";

/**
 * Bend schedule of a whole job, piece by piece in bending order; spills with a header row.
 *
 * Lines come in bending order (Step), a three-bend saddle from its center where dial and shoe allow it; Bend counts along
 * the piece. A run that cannot be read or built has one line that says why, and hides no other. A bend that is bought as
 * a factory elbow (PVC, unless a rule says otherwise) has a line of its own between the pieces: no mark, no cut length.
 * Example: =CONDUIT.JOB.SCHEDULE(Runs[#All], Shoes[#All]) //=> Run, Piece, Cut length, Bend, …
 * Source: derived from the shoe and true arcs.
 * @customfunction JOB.SCHEDULE
 * @helpurl https://raceway-ledger.example/help/job.schedule.html
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route and more
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; those of factory elbows count here
 * @returns {any[][]} schedule with a header row
 */
export function jobSchedule(runs: any[][], shoes?: any[][], rules?: any[][]): any[][] {
  return answer([runs, shoes, rules], (runs, shoes, rules) => jobScheduleTable(buildJob({ runs, shoes, rules })));
}

/**
 * Everything in a job that breaks a rule or cannot be built, in words with a fix; spills with a header row.
 *
 * Factory elbows need no shoe, and nothing of the bench is asked of them; their degrees count. Conductors, Where, Cover, Ambient,
 * Breaker and Check pull say what is looked at besides; runs with a Start are held against each other: two that take the same
 * place are named, with where and by how much. The adopted code and those licensed to apply it decide, not these lines.
 * Example: =CONDUIT.JOB.CHECKS(Runs[#All], Shoes[#All]) //=> Run, Weight, Rule, Finding, Fix
 * Source: each line names its rule.
 * @customfunction JOB.CHECKS
 * @helpurl https://raceway-ledger.example/help/job.checks.html
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route and more
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; those of elbows, air, terminals, expansion and pulling count here
 * @returns {any[][]} findings with a header row
 */
export function jobChecks(runs: any[][], shoes?: any[][], edition?: any, rules?: any[][]): any[][] {
  return answer([runs, shoes, edition, rules], (runs, shoes, edition, rules) => {
    const job = buildJob({ runs, shoes, rules, which: "as written" });
    return findingsTable(checkJob(job, readEdition(edition)), job.rows.length);
  });
}

/**
 * How each piece is set up on the bench: order of bends, end to hook, room the swing takes, and what is in the way.
 *
 * The usual order is kept when it clears the floor, the room and the table; else every order and both ends are tried.
 * Straight pieces and factory elbows need no bench and have no line.
 * Example: =CONDUIT.JOB.SETUP(Runs[#All], Shoes[#All], Bench[#All]) //=> Run, Piece, Step, Bend, Mark, …
 * Source: derived, the bent conduit carried round the shoe.
 * @customfunction JOB.SETUP
 * @helpurl https://raceway-ledger.example/help/job.setup.html
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route and more
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any[][]} [bench] Bench table with its header row: Setting, Value; omitted: a usual bench
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; those of factory elbows count here
 * @returns {any[][]} set-up steps with a header row
 */
export function jobSetup(runs: any[][], shoes?: any[][], bench?: any[][], rules?: any[][]): any[][] {
  return answer([runs, shoes, bench, rules], (runs, shoes, bench, rules) =>
    setupTable(buildJob({ runs, shoes, rules }), readBench(bench)),
  );
}

/**
 * What each run's conductors may carry, the ground its breaker asks for, how full it is and how hard it pulls; spills with a header row.
 *
 * A line for each run with Conductors: its largest ones, made less for their number and the air, at the terminals, against Breaker
 * (AMPACITY, GROUND.SIZE, FILL); of its pulls the one nearest to a limit, fed from its better end (PULL.TENSION, PULL.LIMIT). JOB.CHECKS
 * says what breaks a rule. A planning aid: the adopted code, the cable's maker and those licensed to apply them decide.
 * Example: =CONDUIT.JOB.CIRCUITS(Runs[#All], Shoes[#All]) //=> Run, Conductors, Carrying, Base A, …
 * Source: NEC 240.4, 250.122, 310.15 and table 310.16; chapter 9; pulls: see PULL.TENSION and PULL.LIMIT.
 * @customfunction JOB.CIRCUITS
 * @helpurl https://raceway-ledger.example/help/job.circuits.html
 * @param {any[][]} runs Runs table with its header row, at most 20,000 rows: Run, Raceway, Size, Route, Conductors and more
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any} [edition] code edition, 2020 or 2023; omitted: 2023
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; those of elbows, air, terminals and pulling count here
 * @returns {any[][]} a line for each run with conductors, with a header row
 */
export function jobCircuits(runs: any[][], shoes?: any[][], edition?: any, rules?: any[][]): any[][] {
  return answer([runs, shoes, edition, rules], (runs, shoes, edition, rules) =>
    circuitTable(buildJob({ runs, shoes, rules }), readEdition(edition)),
  );
}
