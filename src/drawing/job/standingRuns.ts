import type { MadeBook } from "../../made/records/madeTable";
import { tallyJob } from "../../made/counts/tally";
import { builtRows, type BuiltRow, type Job } from "../../shop/job/job";
import { placedPulls } from "../../shop/run/placed";
import { compareCells } from "../../takeoff/amounts/groupBy";
import { MOST_KINDS, type StandingRun } from "./drawWhole";

/** What runs are told apart by in the picture of a job. */
export type ToldBy = "Size" | "State";

/** Where a run has come to. */
const STATES = ["not begun", "begun", "made"] as const;

/** The runs of a picture, and what is not in it. */
export interface StandingRuns {
  readonly runs: readonly StandingRun[];
  readonly kinds: readonly string[];
  /** Areas there are to choose from. */
  readonly areas: readonly string[];
  /** Names of the runs of that area that do not say where they begin. */
  readonly nowhere: readonly string[];
  /** Runs that are left out because there are more than {@link MOST_RUNS}. */
  readonly leftOut: number;
}

/** Most runs of a picture: with more there is nothing to be seen. */
export const MOST_RUNS = 2000;

/** Sizes that found no color of their own. */
const OTHER = "other sizes";

/**
 * The runs of a job that say where they begin, for its picture.
 *
 * @param area only that one; empty for all @param made what was made, for their state
 */
export function standingRuns(job: Job, by: ToldBy, area: string, made: MadeBook | undefined): StandingRuns {
  const rows = builtRows(job);
  const areas = [...new Set(rows.map(({ run }) => run.area))]
    .filter(Boolean)
    .sort((a, b) => compareCells("Area", a, b));
  const chosen = rows.filter(({ run }) => area === "" || run.area === area);
  const standing = chosen.filter(({ run }) => run.start);
  const placed = standing.slice(0, MOST_RUNS);
  const kindOf = by === "State" ? stateOf(job, made) : sizeOf(placed);
  const runs = placed.map((row): StandingRun => ({
    // The range begins with its headers.
    ...{ name: row.name, row: row.rowNumber - 1, kind: kindOf(row) },
    ...{ paths: placedPulls(row.built), outsideDiameter: row.built.shoe.outsideDiameter },
  }));
  const there = new Set(runs.map(({ kind }) => kind));
  const order = by === "State" ? [...STATES] : [...[...there].filter((kind) => kind !== OTHER).sort(bySize), OTHER];
  return {
    ...{ runs, areas, kinds: order.filter((kind) => there.has(kind)) },
    leftOut: standing.length - placed.length,
    nowhere: chosen.flatMap(({ name, run }) => (run.start ? [] : [name])),
  };
}

const bySize = (a: string, b: string): number => compareCells("Size", a, b);

/** Each size by itself, as far as there are looks; the largest of too many go together. */
function sizeOf(rows: readonly BuiltRow[]): (row: BuiltRow) => string {
  const sizes = [...new Set(rows.map(({ run }): string => run.size))].sort(bySize);
  const own = new Set(sizes.length > MOST_KINDS ? sizes.slice(0, MOST_KINDS - 1) : sizes);
  return ({ run }) => (own.has(run.size) ? run.size : OTHER);
}

/** How much of a run is made: none of its pieces, some, all. */
function stateOf(job: Job, made: MadeBook | undefined): (row: BuiltRow) => string {
  const pieces = made ? tallyJob(job, made).pieces : [];
  return (row) => {
    const own = pieces.filter((piece) => piece.row === row);
    if (own.every((piece) => piece.made === 0)) return STATES[0];
    return own.every(({ left }) => left === 0) ? STATES[2] : STATES[1];
  };
}
