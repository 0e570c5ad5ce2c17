import { isFlexible } from "../../raceway/raceway";
import { remember } from "../../memory/remember";
import { runPieces } from "../../shop/run/builtRun";
import type { BuiltRow, Job } from "../../shop/job/job";
import type { Amount } from "./amount";
import type { JobWork, RowWork } from "./jobWork";
import { sizedItem, type ItemKind } from "./item";
import { shopBends } from "./pullMaterial";

/** A line that says something in words. */
export interface Told {
  readonly what: string;
  readonly words: string;
}

/** What of a job is still to be made, asked once the job is built. */
export type LeftToMake = (job: Job) => {
  /** How many of each piece are left, row by row. */
  readonly left: ReadonlyMap<BuiltRow, readonly number[]>;
  readonly told: readonly Told[];
};

/** True where a piece of it is still to be cut from a stick. */
export const isToCut = ({ left, run }: RowWork): boolean =>
  !isFlexible(run.raceway) && (left === undefined || left.some((count) => count > 0));

/**
 * The work of a job without the conduit, the bends and the cuts of what is made. What goes onto the finished pieces
 * (couplings, fittings, straps, boxes, conductors) stays whole: making a piece takes none of it.
 */
export function leaveOutMade(
  job: Job,
  work: JobWork,
  leftToMake?: LeftToMake,
): { work: JobWork; told: readonly Told[] } {
  if (!leftToMake) return { work, told: [] };
  const { left, told } = leftToMake(job);
  return { work: withoutMade(work, left), told };
}

const withoutMade = remember((work: JobWork, left: ReadonlyMap<BuiltRow, readonly number[]>): JobWork => {
  const works = work.works.map((each) => {
    const counts = left.get(each.row);
    return counts ? workLeft(each, counts) : each;
  });
  return { ...work, works };
});

/** What making a piece takes. */
const OF_PIECES: readonly ItemKind[] = ["conduit", "bend", "cut", "thread", "ream"];

function workLeft(work: RowWork, left: readonly number[]): RowWork {
  const { run, row } = work;
  const pieces = runPieces(row.built);
  const amounts = [
    ...pieces.map(({ cutLength }, index) => ({
      item: sizedItem(run, "conduit"),
      each: cutLength / 12,
      times: left[index]!,
    })),
    ...work.amounts.filter(({ item: { kind } }) => !OF_PIECES.includes(kind)),
    ...work.sawn.flatMap((amounts, index) => amounts.map((amount): Amount => ({ ...amount, times: left[index]! }))),
    ...pieces.flatMap((piece, index) =>
      shopBends(piece).map(({ kind }): Amount => ({
        item: sizedItem(run, "bend"),
        each: 1,
        times: left[index]!,
        operation: kind,
      })),
    ),
  ];
  return { ...work, left, amounts };
}
