import { outsideDiameter } from "../raceway/dimensions";
import { minimumRadius } from "../raceway/minimumRadius";
import { TRADE_SIZES, type TradeSize } from "../raceway/tradeSize";
import { buildRun, buildRunWith, type BuiltRun } from "../shop/buildRun";
import type { Run } from "../shop/runsTable";
import type { Shoe } from "../shop/shoe";
import type { ShoeBook } from "../shop/shoeBook";
import type { RuleBook } from "./rules";
import { ALL_SIZES } from "./ruleValue";

const SAME_ANGLE = 1e-6;

/** A run worked out for the take-off, and the angles [°] at which it has factory elbows. */
export interface RunWithElbows {
  readonly built: BuiltRun;
  readonly elbows: readonly number[];
}

/**
 * Works a run out for the take-off. Where the rules ask for factory elbows and there is one for each of its bends, no
 * shoe is needed: the elbows have the code's radius for one-shot bends, as steel elbows do (common practice). A run with
 * other bends too is laid out at the radius of the shop's shoe.
 *
 * @throws InputError or NotListedError when the run cannot be built
 */
export function buildWithElbows(run: Run, shoes: ShoeBook, rules: RuleBook): RunWithElbows {
  const elbows = elbowAngles(run, rules);
  if (elbows.length > 0) {
    // Elbows join by themselves: the run is not parted into sticks here.
    const built = buildRun({ ...run, stick: Infinity }, elbowShoe(run));
    const bends = built.pulls.flatMap((pull) => pull.parts.bends);
    if (bends.every(({ angle }) => isElbow(angle, elbows))) return { built: { ...built, run }, elbows };
  }
  return { built: buildRunWith(run, shoes), elbows };
}

/** True when one of the factory elbows has this angle. */
export const isElbow = (angle: number, elbows: readonly number[]): boolean =>
  elbows.some((listed) => Math.abs(listed - angle) < SAME_ANGLE);

/** Angles of the factory elbows for a run [°]; none when the shop bends its size. */
function elbowAngles({ raceway, size }: Run, rules: RuleBook): number[] {
  const family = raceway === "PVC 40" || raceway === "PVC 80" ? "PVC" : "metal";
  const above = rules.text(`Factory elbows above size, ${family}`);
  const largestBent = TRADE_SIZES.indexOf(above as TradeSize);
  const bought = above === ALL_SIZES || (largestBent >= 0 && TRADE_SIZES.indexOf(size) > largestBent);
  return bought ? rules.text("Factory elbow angles").split(/[,;]/).map(Number) : [];
}

function elbowShoe({ raceway, size }: Run): Shoe {
  const radius = minimumRadius(size, "one-shot");
  const outside = outsideDiameter(raceway, size);
  return {
    ...{ raceway, size, radius, outsideDiameter: outside, deduct: radius + outside / 2, springback: 0 },
    ...{ dialFrom: 0, dialTo: 90, dialStart: 0, shortestTail: 0, source: "factory elbow" },
  };
}
