import type { RuleBook } from "../../rules/rules";
import { isUserError } from "../../units/errors";
import { show } from "../../units/show";
import { mayJam, weightCorrection } from "../../wiring/pulling";
import type { Finding } from "../code/finding";
import { runConductors } from "../code/runConductors";
import { builtRows, type Job } from "../job/job";
import type { BuiltRun } from "../run/builtRun";
import { isPullAsked, isPullChecked, pullEndName, pullingOf, pullWays, type Pulling } from "./pulling";
import type { Way } from "./pullTension";

const RULE = "will it pull? A planning aid: the cable maker's limits decide";

/**
 * Pulls of a run that come near a limit or pass one, both ways, from real radii and slopes: from which end to feed, and where a box
 * would help. Looked at from 1/0 up; where the run's Check pull asks, each pull is told, however easy.
 */
export function willPull(built: BuiltRun, rules: RuleBook): Finding[] {
  const { run } = built;
  if (!isPullChecked(built)) return [];
  try {
    const pulling = pullingOf(built, runConductors(run), rules);
    const from = rules.number("Pull finding from") / 100;
    const each = pullWays(built, pulling).flatMap((ways, index) =>
      isPullAsked(built) || ways[0].past >= 0 || ways[0].share >= from ? findingOf(built, index, ways, pulling) : [],
    );
    return [...each, ...jams(built, pulling)];
  } catch (error) {
    if (!isUserError(error)) throw error;
    const fix = "Use a larger raceway, or write no under Check pull.";
    return [{ run: run.name, weight: "look", rule: RULE, finding: error.message, fix }];
  }
}

/** Pulls that are looked at with a friction that nobody on the job set: said once. */
export function assumedFriction({ rules, ...job }: Job): Finding[] {
  if (rules.isOwn("Pulling friction")) return [];
  const assumed = builtRows({ rules, ...job }).filter(
    ({ built }) => isPullChecked(built) && typeof built.run.pull !== "number",
  );
  if (assumed.length === 0) return [];
  return [
    {
      run: "Rules",
      weight: "look",
      rule: RULE,
      finding:
        `${assumed.length === 1 ? `the pull of ${assumed[0]!.name} is` : `pulls of ${assumed.length} runs are`} looked at with a general friction, ` +
        `${show(rules.number("Pulling friction"), 2)}, and general limits: ${rules.text("Pulled by")}, ${show(rules.number("Most sidewall pressure"), 0)} lb/ft. ` +
        `Those below ${show(rules.number("Pull finding from"), 0)} % of a limit are not told here.`,
      fix: "Write your cable maker's values, and where they are from, into Rules: Pulling friction, Pulled by, Most sidewall pressure. JOB.CIRCUITS tells each pull.",
    },
  ];
}

function findingOf(built: BuiltRun, place: number, ways: readonly [Way, Way], { cables, limits }: Pulling): Finding {
  const { run, pulls } = built;
  const [best, other] = ways;
  const end = (way: Way) => pullEndName(built, place, way.from);
  const pull = pulls.length > 1 ? `pull ${place + 1}: ` : "";
  const stated =
    `Limits ${show(limits.tension, 0)} lb and ${show(limits.sidewall, 0)} lb/ft; friction ${show(cables.friction, 2)}, ` +
    `${show(cables.weight, 2)} lb/ft, ${cables.lay} ${show(weightCorrection(cables.lay, cables.ratio), 2)}.`;
  const common = { run: run.name, rule: RULE };
  const finding = `${pull}fed from ${end(best)} ${wayInWords(best)}; from ${end(other)} ${wayInWords(other)}. ${stated}`;
  if (best.past < 0) return { ...common, weight: "look", finding, fix: `Feed it from ${end(best)}.` };
  const { box } = best.steps[best.past]!;
  const where = box ? `in the leg ${box.side} the bend of step ${box.step}` : "part way along the run";
  return {
    ...common,
    weight: "stop",
    finding: `${finding} Neither way keeps to the limits.`,
    fix: `Put a box ${where}, feeding from ${end(best)}; or widen the bends, use a lubricant (Check pull 0.35), pull by an eye.`,
    ...(box && { step: box.step }),
  };
}

const wayInWords = ({ tension, sidewall }: Way): string =>
  `${show(tension, 0)} lb${sidewall > 0 ? `, ${show(sidewall, 0)} lb/ft at a bend` : ""}`;

function jams({ run, pulls, lengths }: BuiltRun, { count, diameter, cables }: Pulling): Finding[] {
  const bends = pulls.some(({ parts }) => parts.bends.length > 0);
  if (!bends || !mayJam(count, cables.ratio)) return [];
  return [
    {
      run: run.name,
      weight: "look",
      rule: "three cables may jam at a bend where the bore is 2.8 to 3.2 times one of them",
      finding: `${run.conductors}: ${run.raceway} ${run.size} has ${show(cables.ratio, 2)} times their ${lengths.show(diameter, 3)}.`,
      fix: "Use another size, or have the three bound together.",
    },
  ];
}
