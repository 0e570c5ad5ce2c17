import { remember } from "../../memory/remember";
import { commonRule, nameRule, type Edition } from "../../raceway/code/rules";
import { lookUpKey } from "../../units/names/lookUpKey";
import { show } from "../../units/show";
import { SAME_COUNT } from "../../units/tolerances";
import { boxVolume, hasBoxVolume } from "../../wiring/boxes/boxFill";
import { boxVolumeOf } from "../../wiring/boxes/boxNames";
import { rolesOf } from "../../wiring/roles";
import type { WireCount } from "../../wiring/wireSizes";
import { builtRows, type Job } from "../job/job";
import type { Run } from "../run/runsTable";
import type { Finding } from "./finding";
import { runConductors } from "./runConductors";

interface BoxInUse {
  readonly name: string;
  readonly volume: number;
  readonly runs: Run[];
}

/**
 * Boxes whose name tells their volume, against the conductors of all runs that end there, each counted as ending there. Boxes with
 * conductors 4 AWG and larger are measured by 314.28 and left out.
 */
export function boxesTooFull(job: Job, edition: Edition): Finding[] {
  return boxesInUse(job).flatMap(({ name, volume, runs }): Finding[] => {
    const wires = runs.flatMap((run) => {
      const { circuit, neutrals, grounds } = rolesOf(runConductors(run));
      const of = (kinds: readonly WireCount[]) =>
        kinds.map(({ count, size }): WireCount => ({ count: count * run.quantity, size }));
      return [{ conductors: of([...circuit, ...neutrals]), grounds: of(grounds) }];
    });
    const conductors = wires.flatMap((each) => each.conductors);
    const grounds = wires.flatMap((each) => each.grounds);
    const all = [...conductors, ...grounds];
    if (all.length === 0 || !all.every(({ size }) => hasBoxVolume(size))) return [];
    const needed = boxVolume({ conductors, grounds, devices: [], clamps: false, supports: 0 });
    if (needed <= volume + SAME_COUNT) return [];
    return [
      {
        run: name,
        weight: "look",
        rule: nameRule(commonRule("boxFill", edition)),
        finding:
          `the conductors of ${runs.map((run) => run.name).join(", ")} take ${show(needed, 2)} in³ of its ${show(volume, 2)}, each counted ` +
          "as ending there; devices, clamps and fittings take more.",
        fix: "Use a larger box. A conductor that passes through unbroken counts once for both runs: see BOX.FILL.",
      },
    ];
  });
}

/** Boxes of known volume at the ends of runs; the same name in the same job is the same box. */
function boxesInUse(job: Job): BoxInUse[] {
  const boxes = new Map<string, BoxInUse>();
  for (const { run } of builtRows(job)) {
    for (const { key, name, volume } of namedBoxes(run)) {
      const box = boxes.get(key) ?? { name, volume, runs: [] };
      boxes.set(key, box);
      box.runs.push(run);
    }
  }
  return [...boxes.values()];
}

/** The ends of a run that are boxes of known volume, each with a key that its box has in every run of the job. */
const namedBoxes = remember(({ job, from, to }: Run) =>
  [from, to].flatMap((name) => {
    const volume = boxVolumeOf(name);
    return volume === undefined ? [] : [{ key: JSON.stringify([lookUpKey(job), lookUpKey(name)]), name, volume }];
  }),
);
