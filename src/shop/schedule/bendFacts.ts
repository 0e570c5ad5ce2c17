import { gain } from "../../geometry/arc";
import { dot, subtract, unit, type Vec3 } from "../../geometry/vector";
import { InputError } from "../../units/errors";
import { showDegrees } from "../../units/show";
import { runPieces, type BuiltPull, type BuiltRun } from "../run/builtRun";
import { isElbowRow, scheduleRun, type ScheduleRow } from "./schedule";
import { laidOutAt } from "./scheduleNotes";

/** All that can be said of one bend of a run; an offset, a saddle or a sweep is one bend with several marks. */
export interface BendFacts {
  /** The bend and its marks in one line, for a cell. */
  readonly words: string;
  readonly kind: string;
  /** Its lines of the schedule, in their order: bends to make and factory elbows. */
  readonly rows: readonly ScheduleRow[];
  /** What its arcs save against the lengths to their corners [in]. */
  readonly gain: number;
  /** By how much the conduit is longer than the ground it covers [in]; undefined for a bend that changes direction. */
  readonly shrink: number | undefined;
}

/** A place among the corners of a pull. */
interface Corners {
  readonly pull: BuiltPull;
  readonly from: number;
  readonly to: number;
}

/**
 * The facts of one bend.
 *
 * @param which 1 for the run's first bend
 * @throws InputError when the run has no such bend
 */
export function bendFacts(built: BuiltRun, which: number): BendFacts {
  const all = built.pulls.flatMap(bendsOf);
  const found = all[which - 1];
  if (!found) {
    const most = all.length === 0 ? "the run has none" : `the run has ${all.length}`;
    throw new InputError(`bend must be the number of a bend of the run, and ${most}; got ${which}.`);
  }
  const before = all.slice(0, which - 1).reduce((sum, { from, to }) => sum + to - from + 1, 0);
  const bent = scheduleRun(built).filter(({ Angle }) => Angle !== "");
  const rows = bent.slice(before, before + found.to - found.from + 1);
  const saved = found.pull.parts.bends
    .slice(found.from, found.to + 1)
    .reduce((sum, { angle, radius }) => sum + gain(angle, radius), 0);
  const kind = String((rows.find((row) => !isElbowRow(row)) ?? rows[0])?.Kind);
  const { radius } = found.pull.parts.bends[found.from]!;
  return { words: inWords(built, kind, rows, radius), kind, rows, gain: saved, shrink: shrinkOf(found, saved) };
}

/** Corners that belong together, as the places of their first and last. */
function bendsOf(pull: BuiltPull): Corners[] {
  const { corners } = pull.pull;
  return corners.flatMap((corner, to) =>
    corners[to + 1]?.group === corner.group
      ? []
      : [{ pull, from: corners.findIndex(({ group }) => group === corner.group), to }],
  );
}

/**
 * Derived: along the corners from the first to the last, less the advance in the direction before the bend, less what
 * the arcs save. For an offset that is rise·tan(A/2) − 2g.
 */
function shrinkOf({ pull, from, to }: Corners, saved: number): number | undefined {
  const points = pull.pull.points;
  const way = (index: number): Vec3 => unit(subtract(points[index + 1]!, points[index]!));
  // Straight on after the bend, but for rounding.
  if (to === from || dot(way(from), way(to + 1)) < 1 - 1e-9) return undefined;
  const along = Array.from({ length: to - from }, (_, index) => pull.parts.legs[from + 1 + index]!);
  const advance = dot(subtract(points[to + 1]!, points[from + 1]!), way(from));
  return along.reduce((sum, leg) => sum + leg, 0) - advance - saved;
}

/** @param radius of its first bend [in] */
function inWords(built: BuiltRun, kind: string, rows: readonly ScheduleRow[], radius: number): string {
  const angles = rows.map(({ Angle }) => Number(Angle));
  const bought = rows.every(isElbowRow);
  const times = kind === "sweep" || (bought && rows.length > 1) ? `${angles.length} × ` : "";
  const several = runPieces(built).length > 1;
  const marks = rows.map((row) => {
    if (isElbowRow(row)) return `${row.Kind} ${showDegrees(Number(row.Angle))}`;
    const mark = built.lengths.tape(Number(row.Mark));
    return several ? `${mark} on piece ${row.Piece}` : mark;
  });
  const where = bought ? `bought, ${laidOutAt(radius, built.lengths)}` : marks.join(", ");
  return `${kind} ${times}${showDegrees(Math.max(...angles))}: ${where}`;
}
