import { dimension } from "../../raceway/dimensions";
import type { RuleBook } from "../../rules/rules";
import type { Conductors } from "../../wiring/conductors";
import { conductorsWeight } from "../../wiring/cableWeight";
import { gripLimit, pullingLimit, usualLay } from "../../wiring/pulling";
import { circularMils } from "../../wiring/wireSizes";
import { runConductors } from "../code/runConductors";
import type { BuiltRun } from "../run/builtRun";
import { bodyOf } from "../run/pullEnds";
import { waysToPull, type PulledCables, type PullLimits, type Way } from "./pullTension";

/** What is pulled into a run, and its limits. */
export interface Pulling {
  readonly cables: PulledCables;
  readonly limits: Required<PullLimits>;
  readonly count: number;
  /** Of the largest [in]. */
  readonly diameter: number;
}

/** Pulls of conductors from this size on are checked unasked. */
const FROM = circularMils("1/0");

/** True where a run's Check pull asks for the check. */
export const isPullAsked = ({ run }: BuiltRun): boolean => run.pull === true || typeof run.pull === "number";

/** True where Checks looks at the pull of a run: it is asked for, or its conductors are 1/0 or larger and nobody said no. */
export function isPullChecked(built: BuiltRun): boolean {
  const conductors = runConductors(built.run);
  const large = conductors.some(({ role, size }) => role !== "ground" && circularMils(size) >= FROM);
  return conductors.length > 0 && built.run.pull !== false && (isPullAsked(built) || large);
}

/** True where a rule counts the cables' weight in level bends. */
export const countsBendWeight = (rules: RuleBook): boolean => rules.text("Weight of cable in bends") === "counted";

/** What is pulled into a run with conductors, by its cells and the rules. */
export function pullingOf({ run }: BuiltRun, conductors: readonly Conductors[], rules: RuleBook): Pulling {
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
      bendWeight: countsBendWeight(rules),
    },
    limits: {
      tension: rules.text("Pulled by") === "eye" ? eye : Math.min(eye, gripLimit(count)),
      sidewall: rules.number("Most sidewall pressure"),
    },
  };
}

/** Both ways to feed each pull of a run, in the pulls' order, the better way first. */
export const pullWays = ({ pulls }: BuiltRun, { cables, limits }: Pulling): (readonly [Way, Way])[] =>
  pulls.map((pull) => waysToPull(pull, cables, limits));

/** An end of a pull by its name, where the run's cells name it. */
export function pullEndName({ run, pulls }: BuiltRun, place: number, from: Way["from"]): string {
  const named = (before: number): string => bodyOf(pulls[before]!.pull.end) ?? `box ${before + 1}`;
  if (from === "datum") return place === 0 ? run.from || "the datum end" : named(place - 1);
  return place === pulls.length - 1 ? run.to || "the far end" : named(place);
}
