import { minimumRadius } from "../raceway/minimumRadius";
import { degreesLimitRule, nameRule, radiusRule, type Edition } from "../raceway/rules";
import { isUserError } from "../units/errors";
import { showDegrees, showInches } from "../units/show";
import { buildRunWith, type BuiltRun, type Piece } from "./buildRun";
import { dialOrWords } from "./dialOrWords";
import type { Finding } from "./findings";
import type { RunRow } from "./runsTable";
import { shortTail } from "./scheduleNotes";
import type { ShoeBook } from "./shoeBook";

/** Rounding allowed when degrees are added up [°]. */
const ROUNDING = 1e-6;

/** Every finding of a job: shoes first, then the runs in their order. */
export function checkJob(rows: readonly RunRow[], shoes: ShoeBook, edition: Edition): Finding[] {
  const shoeFindings = shoes.problems.map(({ message }): Finding => ({
    run: "Shoes",
    weight: "stop",
    rule: "a shoe must be readable",
    finding: message,
    fix: "Correct the row, or delete it to use the built-in shoe.",
  }));
  return [...shoeFindings, ...repeatedNames(rows), ...rows.flatMap((row) => checkRow(row, shoes, edition))];
}

function checkRow(row: RunRow, shoes: ShoeBook, edition: Edition): Finding[] {
  if ("problem" in row) return [notBuilt(row.name, row.problem)];
  try {
    return checkBuiltRun(buildRunWith(row.run, shoes), edition);
  } catch (error) {
    if (!isUserError(error)) throw error;
    return [notBuilt(row.run.name, error.message)];
  }
}

/** The finding for a run that cannot be read or built. */
export const notBuilt = (run: string, message: string): Finding => ({
  run,
  weight: "stop",
  rule: "a run must be readable and fit its bends",
  finding: message,
  fix: "Correct the row; its other cells are untouched.",
});

/** Every finding of one run that can be built. */
export function checkBuiltRun(built: BuiltRun, edition: Edition): Finding[] {
  const pieces = built.pulls.flatMap((pull) => pull.pieces);
  return [
    ...tooManyDegrees(built, edition),
    ...tooTight(built, edition),
    ...pastTheDial(built),
    ...pieces.flatMap((piece) => shortTails(built, piece)),
  ];
}

function repeatedNames(rows: readonly RunRow[]): Finding[] {
  const count = new Map<string, number>();
  for (const row of rows) {
    const name = "run" in row ? row.run.name : row.name;
    count.set(name, (count.get(name) ?? 0) + 1);
  }
  return [...count].flatMap(([run, times]): Finding[] =>
    times === 1
      ? []
      : [
          {
            run,
            weight: "look",
            rule: "a run's name stands once",
            finding: `${times} rows are named ${run}; their pieces cannot be told apart on the bench.`,
            fix: "Give each row a name of its own, or use Quantity for equal runs.",
          },
        ],
  );
}

function tooManyDegrees(built: BuiltRun, edition: Edition): Finding[] {
  const rule = degreesLimitRule(built.run.raceway, edition);
  return built.pulls.flatMap((pull, index): Finding[] => {
    const degrees = pull.parts.bends.reduce((sum, bend) => sum + bend.angle, 0);
    if (degrees <= rule.limit + ROUNDING) return [];
    const where = built.pulls.length > 1 ? `pull ${index + 1} turns` : "the run turns";
    return [
      {
        run: built.run.name,
        weight: "stop",
        rule: nameRule(rule),
        finding: `${where} ${showDegrees(degrees)} between pull points; the limit is ${showDegrees(rule.limit)}.`,
        fix: 'Put a "box" step into the route, or make it with fewer bends.',
      },
    ];
  });
}

function tooTight(built: BuiltRun, edition: Edition): Finding[] {
  const { run, shoe } = built;
  const least = minimumRadius(run.size, "one-shot");
  if (shoe.radius >= least - ROUNDING || built.pulls.every((pull) => pull.parts.bends.length === 0)) return [];
  return [
    {
      run: run.name,
      weight: "stop",
      rule: nameRule(radiusRule(run.raceway, edition)),
      finding: `the shoe bends to ${showInches(shoe.radius)} radius; ${run.raceway} ${run.size} needs at least ${showInches(least)}.`,
      fix: "Use a shoe with a larger radius, or correct Radius in the Shoes table.",
    },
  ];
}

function pastTheDial(built: BuiltRun): Finding[] {
  const angles = built.pulls.flatMap((pull) => pull.parts.bends.map((bend) => bend.angle));
  const beyond = [...new Set(angles.filter((angle) => typeof dialOrWords(built.shoe, angle) === "string"))];
  return beyond.map((angle): Finding => ({
    run: built.run.name,
    weight: "stop",
    rule: "the dial must reach the angle and its springback",
    finding:
      `a bend of ${showDegrees(angle)} with ${showDegrees(built.shoe.springback)} springback passes the dial's end at ` +
      `${showDegrees(built.shoe.dialTo)}.`,
    fix: "Start the dial below zero by the springback (Dial start), or make the bend in two.",
  }));
}

function shortTails(built: BuiltRun, piece: Piece): Finding[] {
  return piece.bends.flatMap((_, index): Finding[] => {
    const finding = shortTail(built, piece, index);
    if (finding === undefined) return [];
    return [
      {
        run: built.run.name,
        weight: "look",
        rule: "the shoe must be able to hold the conduit",
        finding: `piece ${piece.number}, bend ${index + 1}: ${finding}.`,
        fix: "Cut the piece longer and trim it after bending, or lengthen the leg.",
      },
    ];
  });
}
