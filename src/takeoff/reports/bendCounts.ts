import { buildJob } from "../../shop/job/job";
import type { Run } from "../../shop/run/runsTable";
import { compareGroups, groupCell, readBy, RUN_GROUP_NAMES } from "../amounts/groupBy";
import { sizedItem } from "../amounts/item";
import { jobWork, type RowWork } from "../amounts/jobWork";
import { readLabor, type LaborBook } from "../lists/labor";
import { labelKey } from "../amounts/lineBook";
import { notRead } from "../lists/notRead";
import type { ShopBend } from "../amounts/pullMaterial";
import { listIn } from "../lists/valueList";

type Cell = string | number;

/** Bends of one line of the count. */
interface BendLine {
  readonly group: readonly Cell[];
  bends: number;
  minutes: number;
  /** Kinds of bend the user has no minutes for. */
  readonly noMinutes: Set<string>;
}

/** What bend counts may be given besides the runs. */
export interface BendCountRanges {
  readonly by?: unknown;
  readonly shoes?: unknown;
  readonly labor?: unknown;
  readonly rules?: unknown;
}

const BY_DEFAULT = ["Job", "Raceway", "Size", "Kind"];

/** Angles are told apart to this many decimals [°]. */
const ANGLE_DECIMALS = 2;

/**
 * Bends the shop makes, counted by columns of Runs, kind and angle, as a table with a header row and a totals row. An
 * offset counts two bends, a saddle three or four, a sweep its shots; Quantity multiplies. With a Labor range, hours.
 *
 * @throws InputError when a range lacks a needed column or `by` names none
 */
export function bendCounts(runs: unknown, ranges: BendCountRanges = {}): Cell[][] {
  const by = readBy(ranges.by, [...RUN_GROUP_NAMES, "Kind", "Angle"], BY_DEFAULT);
  const job = buildJob({ runs, ...ranges });
  const labor = listIn(ranges.labor, readLabor);
  const work = jobWork(job);
  const total: BendLine = { group: by.map((_, index) => (index === 0 ? "Total" : "")), ...nothingYet() };
  const lines = bendLines(work.works, by, (line, run, bend) => {
    countBend(line, run, bend, labor);
    countBend(total, run, bend, labor);
  });
  const problems = [
    ...work.problems.flatMap(({ name, part, message }) => (part === "run" ? `not counted: ${name}: ${message}` : [])),
    ...notRead(job, job.rules, labor),
  ];
  const sorted = lines.sort((a, b) => compareGroups(by, a.group, b.group));
  const headers = [...by, "Bends", ...(labor ? ["Hours"] : []), "Note"];
  const blank = headers.slice(1).map(() => "");
  return [
    headers,
    ...[...(by.length > 0 ? sorted : []), total].map((line) => lineCells(line, labor)),
    ...problems.map((problem) => [...blank, problem]),
  ];
}

/** Columns that tell the bends of one run apart. */
const OF_BEND = ["Kind", "Angle"];

/** The lines of all bends; a job has many bends, so the cells of a run are read once for all of its. */
function bendLines(
  works: readonly RowWork[],
  by: readonly string[],
  count: (line: BendLine, run: Run, bend: ShopBend) => void,
): BendLine[] {
  const ofBend = by.filter((column) => OF_BEND.includes(column));
  const ofRun = by.filter((column) => !OF_BEND.includes(column));
  const runs = new Map<string, Map<string, BendLine>>();
  for (const { run, bends } of works) {
    const runKey = labelKey(ofRun.map((column) => groupCell(run, column)));
    const lines = runs.get(runKey) ?? new Map<string, BendLine>();
    runs.set(runKey, lines);
    for (const bend of bends) {
      const key = labelKey(ofBend.map((column) => String(bendCell(run, bend, column))));
      const line = lines.get(key) ?? { group: by.map((column) => bendCell(run, bend, column)), ...nothingYet() };
      lines.set(key, line);
      count(line, run, bend);
    }
  }
  return [...runs.values()].flatMap((lines) => [...lines.values()]);
}

const nothingYet = () => ({ bends: 0, minutes: 0, noMinutes: new Set<string>() });

function bendCell(run: Run, bend: ShopBend, column: string): Cell {
  if (column === "Kind") return bend.kind;
  if (column === "Angle") return Number(bend.angle.toFixed(ANGLE_DECIMALS));
  return groupCell(run, column);
}

function countBend(line: BendLine, run: Run, { kind }: ShopBend, labor: LaborBook | undefined): void {
  line.bends += run.quantity;
  if (!labor) return;
  const minutes = labor.minutesFor(sizedItem(run, "bend"), kind);
  if (minutes === undefined) line.noMinutes.add(kind);
  else line.minutes += minutes * run.quantity;
}

function lineCells({ group, bends, minutes, noMinutes }: BendLine, labor: LaborBook | undefined): Cell[] {
  if (!labor) return [...group, bends, ""];
  const hours = minutes === 0 && noMinutes.size > 0 ? "" : minutes / 60;
  return [...group, bends, hours, noMinutes.size > 0 ? `no minutes for ${[...noMinutes].sort().join(", ")}` : ""];
}
