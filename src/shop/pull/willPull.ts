import { dimension } from "../../raceway/dimensions";
import type { RuleBook } from "../../rules/rules";
import { isUserError } from "../../units/errors";
import { show, showInches } from "../../units/show";
import type { Conductors } from "../../wiring/conductors";
import { conductorsWeight } from "../../wiring/cableWeight";
import { gripLimit, mayJam, pullingLimit, usualLay, weightCorrection } from "../../wiring/pulling";
import { circularMils } from "../../wiring/wireSizes";
import type { BuiltRun } from "../run/builtRun";
import { bodyOf } from "../run/pullEnds";
import type { Finding } from "../code/finding";
import { waysToPull, type PulledCables, type PullLimits, type Way } from "./pullTension";
import { runConductors } from "../code/runConductors";

/** Pulls of conductors from this size on are checked unasked. */
const FROM = circularMils("1/0");
const RULE = "will it pull? A planning aid: the cable maker's limits decide";

/** What is pulled in, and its limits. */
interface Pulling {
  readonly cables: PulledCables;
  readonly limits: Required<PullLimits>;
  readonly count: number;
  /** Of the largest [in]. */
  readonly diameter: number;
}

/**
 * Both ways of each pull of a run, from its real radii and slopes: from which end to feed it, and where a box would help. From 1/0 up,
 * or where the run's Check pull asks for it.
 */
export function willPull(built: BuiltRun, rules: RuleBook): Finding[] {
  const { run, pulls } = built;
  const conductors = runConductors(run);
  const large = conductors.some(({ role, size }) => role !== "ground" && circularMils(size) >= FROM);
  if (conductors.length === 0 || run.pull === false || (run.pull === undefined && !large)) return [];
  try {
    const pulling = pullingOf(built, conductors, rules);
    const each = pulls.map((pull, index) =>
      findingOf(built, index, waysToPull(pull, pulling.cables, pulling.limits), pulling),
    );
    return [...each, ...jams(built, pulling)];
  } catch (error) {
    if (!isUserError(error)) throw error;
    const fix = "Use a larger raceway, or write no under Check pull.";
    return [{ run: run.name, weight: "look", rule: RULE, finding: error.message, fix }];
  }
}

function pullingOf({ run }: BuiltRun, conductors: readonly Conductors[], rules: RuleBook): Pulling {
  const count = conductors.reduce((sum, kind) => sum + kind.count, 0);
  const [largest] = [...conductors].sort((a, b) => circularMils(b.size) - circularMils(a.size));
  const alike = conductors.filter(({ size, metal }) => size === largest!.size && metal === largest!.metal);
  const diameter = Math.max(...conductors.map(({ area }) => Math.sqrt((4 / Math.PI) * area)));
  const eye = pullingLimit(
    alike.reduce((sum, kind) => sum + kind.count, 0),
    largest!.size,
    largest!.metal,
  );
  return {
    count,
    diameter,
    cables: {
      weight: conductorsWeight(conductors),
      friction: typeof run.pull === "number" ? run.pull : rules.number("Pulling friction"),
      lay: usualLay(count),
      ratio: dimension(run.raceway, run.size, "insideDiameter").value / diameter,
    },
    limits: {
      tension: rules.text("Pulled by") === "eye" ? eye : Math.min(eye, gripLimit(count)),
      sidewall: rules.number("Most sidewall pressure"),
    },
  };
}

function findingOf(built: BuiltRun, place: number, ways: readonly [Way, Way], { cables, limits }: Pulling): Finding {
  const { run, pulls } = built;
  const [best, other] = ways;
  const end = (way: Way) => endName(built, place, way.from);
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

/** An end of a pull by its name, where the run's cells name it. */
function endName({ run, pulls }: BuiltRun, place: number, from: Way["from"]): string {
  const named = (before: number): string => bodyOf(pulls[before]!.pull.end) ?? `box ${before + 1}`;
  if (from === "datum") return place === 0 ? run.from || "the datum end" : named(place - 1);
  return place === pulls.length - 1 ? run.to || "the far end" : named(place);
}

function jams({ run, pulls }: BuiltRun, { count, diameter, cables }: Pulling): Finding[] {
  const bends = pulls.some(({ parts }) => parts.bends.length > 0);
  if (!bends || !mayJam(count, cables.ratio)) return [];
  return [
    {
      run: run.name,
      weight: "look",
      rule: "three cables may jam at a bend where the bore is 2.8 to 3.2 times one of them",
      finding: `${run.conductors}: ${run.raceway} ${run.size} has ${show(cables.ratio, 2)} times their ${showInches(diameter, 3)}.`,
      fix: "Use another size, or have the three bound together.",
    },
  ];
}
