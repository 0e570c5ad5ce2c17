import type { BuiltRun } from "../shop/buildRun";
import type { Run } from "../shop/runsTable";
import { runLength } from "../shop/runTotals";
import { someOf, type Amount } from "./amount";
import { conductorAmounts } from "./conductorAmounts";
import { couplingItem, endAmounts } from "./endAmounts";
import { expansionAmounts } from "./expansionFittings";
import { elbowAngles } from "./factoryElbows";
import { readFittingStyle } from "./fittingStyle";
import { sizedItem } from "./item";
import { bentMaterial, elbowMaterial, type PullMaterial, type ShopBend } from "./pullMaterial";
import type { RuleBook } from "./rules";
import { strapAmounts } from "./strapAmounts";

/** What one run takes, before its Quantity multiplies it. */
export interface RunWork {
  readonly run: Run;
  readonly amounts: readonly Amount[];
  /** Cut lengths [in]. */
  readonly pieces: readonly number[];
  readonly bends: readonly ShopBend[];
  /** Couplings at its joints, and whether the ones that come with a stick serve for them. */
  readonly joints: number;
  readonly coupling: Amount["item"];
  readonly stickCouplingFits: boolean;
}

/**
 * Everything a run takes, by rule.
 * @throws InputError when a cell of the run cannot be read
 */
export function runWork(built: BuiltRun, rules: RuleBook): RunWork {
  const { run } = built;
  const style = readFittingStyle(run.fittings, run.raceway);
  const materials = pullMaterials(built, rules);
  const pieces = materials.flatMap((material) => material.pieces);
  const bends = materials.flatMap((material) => material.bends);
  const elbows = materials.flatMap((material) => material.elbows);
  return {
    run,
    pieces,
    bends,
    joints: materials.reduce((sum, material) => sum + material.joints, 0),
    coupling: couplingItem(run, style),
    stickCouplingFits: style === "threaded" || style === "cement",
    amounts: [
      { item: sizedItem(run, "conduit"), each: pieces.reduce((sum, piece) => sum + piece, 0) / 12 },
      ...elbows.map((angle) => elbowAmount(run, angle)),
      ...expansionAmounts(built, rules),
      ...endAmounts(run, built.pulls.length, style, rules),
      ...strapAmounts(built, rules),
      ...someOf([{ item: sizedItem(run, "pull box"), each: built.pulls.length - 1 }]),
      ...bends.map((bend) => ({ item: sizedItem(run, "bend"), each: 1, operation: bend.kind })),
      ...conductorAmounts(run, runLength(built), built.pulls.length, rules),
    ],
  };
}

/** The pulls of a run, with factory elbows where the rules ask for them. */
function pullMaterials(built: BuiltRun, rules: RuleBook): PullMaterial[] {
  const angles = elbowAngles(built.run.size, rules);
  return built.pulls.map((pull) =>
    angles.length > 0 ? elbowMaterial(pull, angles, built.run.stick) : bentMaterial(pull),
  );
}

const elbowAmount = (run: Run, angle: number): Amount => ({
  item: sizedItem(run, "elbow", `${Number(angle.toFixed(4))}° elbow`),
  each: 1,
  note: "laid out at the shoe's radius",
});
