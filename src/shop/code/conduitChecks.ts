import { ROUNDING } from "../../units/tolerances";
import { readConductors } from "../../wiring/readConductors";
import { fillOf, fillSize } from "../../wiring/fill";
import { minimumRadius } from "../../raceway/minimumRadius";
import { degreesLimitRule, nameRule, radiusRule, type Edition } from "../../raceway/code/rules";
import { isFlexible } from "../../raceway/raceway";
import { countSupports, supportRule } from "../../raceway/code/supports";
import { isUserError } from "../../units/errors";
import { show, showDegrees } from "../../units/show";
import { runPieces, type BuiltRun } from "../run/builtRun";
import { standsFree } from "../../wiring/place";
import type { Finding } from "./finding";

/** Degrees of bend between pull points. */
export function tooManyDegrees(built: BuiltRun, edition: Edition): Finding[] {
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

/** Least radius of a curve that is laid by hand. */
function curvesTooTight({ run, pulls, lengths }: BuiltRun, edition: Edition): Finding[] {
  const least = minimumRadius(run.size, "other");
  return pulls.flatMap(({ pull }) =>
    pull.corners.flatMap(({ radius, step }): Finding[] => {
      if (radius >= least - ROUNDING) return [];
      return [
        {
          run: run.name,
          weight: "stop",
          rule: nameRule(radiusRule(run.raceway, edition)),
          finding: `step ${step}: a curve of ${lengths.show(radius)} radius; ${run.raceway} ${run.size} needs at least ${lengths.show(least)}.`,
          fix: "Give the sweep a larger radius, or leave it out.",
          step,
        },
      ];
    }),
  );
}

/** Least radius of a bend the shop makes. */
export function tooTight(built: BuiltRun, edition: Edition): Finding[] {
  const { run } = built;
  if (isFlexible(run.raceway)) return curvesTooTight(built, edition);
  const least = minimumRadius(run.size, "one-shot");
  const radius = Math.min(...runPieces(built).flatMap(({ bends }) => bends.map((bend) => bend.radius)));
  if (radius >= least - ROUNDING) return [];
  return [
    {
      run: run.name,
      weight: "stop",
      rule: nameRule(radiusRule(run.raceway, edition)),
      finding: `the shoe bends to ${built.lengths.show(radius)} radius; ${run.raceway} ${run.size} needs at least ${built.lengths.show(least)}.`,
      fix: "Use a shoe with a larger radius, or correct Radius in the Shoes table.",
    },
  ];
}

/** Conductor fill, when the Conductors cell is filled. A run no longer than a nipple may be filled more. */
export function tooFull(built: BuiltRun, edition: Edition): Finding[] {
  const { run } = built;
  if (run.conductors === "") return [];
  try {
    const conductors = readConductors(run.conductors, "Conductors");
    const longest = Math.max(...built.pulls.map((pull) => pull.parts.developed));
    const fill = fillOf(run.raceway, run.size, conductors, edition, longest);
    if (fill.fits) return [];
    return [
      {
        run: run.name,
        weight: "stop",
        rule: nameRule(fill.rule),
        finding:
          `${run.conductors} fill ${show(fill.ratio * 100, 1)} % of ${run.raceway} ${run.size}; ` +
          `the limit is ${show(fill.rule.limit * 100, 1)} %.`,
        fix: biggerSize(built, edition),
      },
    ];
  } catch (error) {
    if (!isUserError(error)) throw error;
    return [
      {
        run: run.name,
        weight: "look",
        rule: "conductors must be readable to check the fill",
        finding: error.message,
        fix: 'Write them as in "3 #10 THHN, 1 #12 THHN", or leave the cell empty.',
      },
    ];
  }
}

function biggerSize({ run }: BuiltRun, edition: Edition): string {
  try {
    const size = fillSize(run.raceway, readConductors(run.conductors, "Conductors"), edition);
    return `Use ${run.raceway} ${size}, or part the conductors between two runs.`;
  } catch (error) {
    if (!isUserError(error)) throw error;
    return "Part the conductors between several runs.";
  }
}

/** Straps that are planned (column Straps) against the fewest that the code allows. */
export function tooFewStraps(built: BuiltRun, edition: Edition): Finding[] {
  const { run } = built;
  if (run.straps === undefined || !standsFree(run.place)) return [];
  const rule = supportRule(run.raceway, run.size, edition);
  const needed = built.pulls.reduce((sum, pull) => sum + countSupports(pull.parts.developed, rule), 0);
  if (run.straps >= needed) return [];
  return [
    {
      run: run.name,
      weight: "stop",
      rule: nameRule(rule),
      finding:
        `${run.straps} straps are planned${run.straps === 0 ? " (or the cell is empty)" : ""}; the run needs at least ${needed}: one within ` +
        `${built.lengths.show(rule.fromEnd)} of each box and no more than ${built.lengths.show(rule.limit)} apart.`,
      fix: `Plan ${needed} straps or more.`,
    },
  ];
}
