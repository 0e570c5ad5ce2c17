import { remember } from "../../memory/remember";
import type { BuiltRun, FactoryElbow } from "../../shop/run/builtRun";
import type { Run } from "../../shop/run/runsTable";
import { runLength } from "../../shop/run/runTotals";
import { standardElbowRadius } from "../../raceway/elbows";
import { laidOutAt } from "../../shop/schedule/scheduleNotes";
import { isUserError } from "../../units/errors";
import { showInches } from "../../units/show";
import { ROUNDING } from "../../units/tolerances";
import { someOf, type Amount } from "./amount";
import { conductorAmounts } from "./conductorAmounts";
import { couplingItem, endAmounts } from "./endAmounts";
import { hangingSupports } from "../../shop/pull/riserChecks";
import { readFittingStyle } from "../../shop/code/fittingStyle";
import { innerBoxes, runWhips } from "../../shop/run/pullEnds";
import { expansionAmounts, notCoupled, routeFittings } from "./routeFittings";
import { sizedItem } from "./item";
import { labelKey } from "./lineBook";
import { pullMaterial, type ShopBend } from "./pullMaterial";
import type { RuleBook } from "../../rules/rules";
import { strapAmounts, supportsOf } from "./strapAmounts";
import { endAndSupportWork, sawnAmounts } from "./operationAmounts";

/** What one run takes, before its Quantity multiplies it. */
export interface RunWork {
  readonly run: Run;
  /** Its raceway and size in one text. */
  readonly sizeKey: string;
  /** What is of its raceway and size. */
  readonly amounts: readonly Amount[];
  readonly conductors: readonly Amount[];
  /** Cut lengths [in]. */
  readonly pieces: readonly number[];
  /** Cuts, threads and reams of each piece. */
  readonly sawn: readonly (readonly Amount[])[];
  readonly bends: readonly ShopBend[];
  /** Couplings at its joints, and whether the ones that come with a stick serve for them. */
  readonly joints: number;
  readonly coupling: Amount["item"];
  readonly stickCouplingFits: boolean;
  /** Why the conductors are not counted, when their cell cannot be read. */
  readonly noConductors?: string;
}

/**
 * Everything a run takes, by rule. Conductors that cannot be read are told, and leave the conduit counted.
 * @throws InputError when another cell of the run cannot be read
 */
export const runWork: (built: BuiltRun, rules: RuleBook) => RunWork = remember((built, rules) => {
  const { run } = built;
  const style = readFittingStyle(run.fittings, run.raceway);
  const materials = built.pulls.map(pullMaterial);
  const pieces = materials.flatMap((material) => material.pieces);
  const bends = materials.flatMap((material) => material.bends);
  const elbows = materials.flatMap((material) => material.elbows);
  const conductors = readableConductors(built, rules);
  const fittings = routeFittings(built);
  const sawn = pieces.map((piece) => sawnAmounts(run, piece, rules));
  return {
    run,
    sizeKey: labelKey([run.raceway, run.size]),
    pieces,
    sawn,
    bends,
    joints: materials.reduce((sum, material) => sum + material.joints, 0) - notCoupled(built),
    coupling: couplingItem(run, style),
    stickCouplingFits: style === "threaded" || style === "cement",
    amounts: [
      { item: sizedItem(run, "conduit"), each: pieces.reduce((sum, piece) => sum + piece, 0) / 12 },
      ...elbows.map((elbow) => elbowAmount(built, elbow)),
      ...expansionAmounts(built, rules),
      ...fittings,
      ...endAmounts(built, style, rules),
      ...strapAmounts(built, rules),
      ...someOf([
        { item: sizedItem(run, "pull box"), each: pullBoxes(built) },
        { item: sizedItem(run, "conductor support"), each: hangingSupports(built), note: HANGING },
      ]),
      ...bends.map((bend) => ({ item: sizedItem(run, "bend"), each: 1, operation: bend.kind })),
      ...sawn.flat(),
      ...endAndSupportWork(built, fittings, supportsOf(built, rules), rules),
    ],
    conductors: typeof conductors === "string" ? [] : conductors,
    ...(typeof conductors === "string" ? { noConductors: conductors } : {}),
  };
});

const HANGING = "in vertical raceway, where the conductors would hang farther than the code lets them";

/** The conductors of a run, or why they cannot be read. */
function readableConductors(built: BuiltRun, rules: RuleBook): Amount[] | string {
  try {
    const whips = runWhips(built).reduce((sum, { length }) => sum + length, 0);
    return conductorAmounts(built.run, runLength(built) + whips, innerBoxes(built), rules);
  } catch (error) {
    if (!isUserError(error)) throw error;
    return error.message;
  }
}

/** Boxes between pulls, and one at the end of a route that says so, unless To names it; a rack's are counted with its first conduit. */
const pullBoxes = (built: BuiltRun): number =>
  (built.run.rack?.place ?? 1) > 1 ? 0 : innerBoxes(built) + (built.run.to === "" && built.endsInBox ? 1 : 0);

/** An elbow of another radius than the standard one is an item of its own. */
function elbowAmount({ run, lengths }: BuiltRun, { angle, radius }: FactoryElbow): Amount {
  const isStandard = Math.abs(radius - standardElbowRadius(run.size).value) < ROUNDING;
  const special = isStandard ? "" : `, ${showInches(radius)} radius`;
  return {
    item: sizedItem(run, "elbow", `${Number(angle.toFixed(4))}° elbow${special}`),
    each: 1,
    note: laidOutAt(radius, lengths),
  };
}
