import { buildJob } from "../../shop/job/job";
import { InputError, NotListedError, quoteValue } from "../../units/errors";
import { countsIn } from "../amounts/counts";
import { jobWork } from "../amounts/jobWork";
import type { Source, TakeoffLine } from "../amounts/lineBook";
import { lookUpKey } from "../../units/names/lookUpKey";
import { naturalOrder } from "../../units/names/naturalOrder";
import { notRead } from "../lists/notRead";
import { readOrder } from "../lines/order";
import { takeoffLines } from "../lines/takeoffLines";

type Cell = string | number;

const HEADERS = ["Run", "Row", "Each", "Times", "Amount", "Note"];

/** What a trace may be given besides the runs and the item: what its take-off was given. */
export interface TraceRanges {
  readonly shoes?: unknown;
  readonly rules?: unknown;
  readonly by?: unknown;
  readonly stock?: unknown;
  readonly counts?: unknown;
}

/**
 * The runs behind one item of a take-off, as a table with a header row: what each takes, how often, and their sum,
 * which is the line's quantity; group by group where the take-off has groups. Runs that could not be counted stand at
 * the end, for they might belong to it.
 *
 * @param item the item's name as the take-off shows it
 * @throws NotListedError when the take-off has no such item
 * @throws InputError when a range lacks a needed column, `by` names none, or stock comes with groups
 */
export function trace(runs: unknown, item: unknown, ranges: TraceRanges = {}): Cell[][] {
  if (typeof item !== "string" || item.trim() === "") {
    throw new InputError(`item must be the name of an item of the take-off; got ${quoteValue(item)}.`);
  }
  const { by, stock } = readOrder(ranges);
  const job = buildJob({ runs, ...ranges });
  const work = jobWork(job);
  const counts = countsIn(ranges.counts, job.rules);
  const all = takeoffLines(work.works, by, job.rules, stock, counts);
  const lines = all.filter((entry) => lookUpKey(entry.item.name) === lookUpKey(item));
  if (lines.length === 0) {
    throw new NotListedError(`the take-off has no item ${quoteValue(item)}; JOB.TAKEOFF lists its items.`);
  }
  const noGroup = by.map(() => "");
  return [
    [...by, ...HEADERS],
    ...lines.flatMap(lineRows),
    ...(lines.length > 1 ? [totalRow(noGroup, lines)] : []),
    ...work.problems.map(({ name, message }) => [...noGroup, `not counted: ${name}`, "", "", "", "", message]),
    ...notRead(job, job.rules, stock, counts).map((message) => [...noGroup, "not read", "", "", "", "", message]),
  ];
}

const lineRows = (line: TakeoffLine): Cell[][] => [
  ...mergedSources(line).map((source) => [
    ...line.group,
    source.rows.map(({ name }) => name).join(", "),
    rowCell(source),
    source.each,
    source.times,
    source.each * source.times,
    source.note,
  ]),
  totalRow(line.group, [line]),
];

const totalRow = (group: readonly string[], lines: readonly TakeoffLine[]): Cell[] => [
  ...group,
  ...["Total", "", "", ""],
  lines.reduce((sum, { quantity }) => sum + quantity, 0),
  lines[0]!.item.unit,
];

/** The sources of a line in the order of the rows, those of one run added up; a row of a typical is a run in each area. */
function mergedSources({ sources }: TakeoffLine): Source[] {
  const merged = new Map<string, Source>();
  for (const { rows: unsorted, ...rest } of sources) {
    const source = { ...rest, rows: [...unsorted].sort((a, b) => a.rowNumber - b.rowNumber) };
    const key = JSON.stringify([source.rows.map(({ rowNumber, name }) => [rowNumber, name]), source.note]);
    const before = merged.get(key);
    merged.set(key, before ? { ...source, each: before.each + source.each } : source);
  }
  return [...merged.values()].sort((a, b) => firstRow(a) - firstRow(b) || naturalOrder(a.note, b.note));
}

const rowCell = ({ rows }: Source): Cell =>
  rows.length === 1 ? rows[0]!.rowNumber : rows.map(({ rowNumber }) => rowNumber).join(", ");

/** What no one run stands behind comes last. */
const firstRow = (source: Source): number => source.rows[0]?.rowNumber ?? Number.MAX_SAFE_INTEGER;
