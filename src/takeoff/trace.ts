import { readRuns } from "../shop/runsTable";
import { readShoes } from "../shop/shoeBook";
import { InputError, NotListedError, quoteValue } from "../units/errors";
import { jobWork } from "./jobWork";
import type { Source, TakeoffLine } from "./lineBook";
import { lookUpKey } from "./lookUpKey";
import { naturalOrder } from "./naturalOrder";
import { readRules } from "./rules";
import { notRead } from "./notRead";
import { takeoffLines } from "./takeoffLines";

type Cell = string | number;

const HEADERS = ["Run", "Row", "Each", "Times", "Amount", "Note"];

/**
 * The runs behind one line of a take-off, as a table with a header row: what each takes, how often, and their sum,
 * which is the line's quantity. Runs that could not be counted stand at the end, for they might belong to it.
 *
 * @param item the item's name as the take-off shows it
 * @throws NotListedError when the take-off has no such item
 */
export function trace(runs: unknown, item: unknown, shoeRange?: unknown, ruleRange?: unknown): Cell[][] {
  if (typeof item !== "string" || item.trim() === "") {
    throw new InputError(`item must be the name of an item of the take-off; got ${quoteValue(item)}.`);
  }
  const rules = readRules(ruleRange);
  const shoes = readShoes(shoeRange);
  const rows = readRuns(runs);
  const job = jobWork(rows, shoes, rules);
  const line = takeoffLines(job.works, [], rules).find((entry) => lookUpKey(entry.item.name) === lookUpKey(item));
  if (!line) throw new NotListedError(`the take-off has no item ${quoteValue(item)}; JOB.TAKEOFF lists its items.`);
  return [
    HEADERS,
    ...mergedSources(line).map((source) => [
      source.runs.map((run) => run.name).join(", "),
      rowCell(source),
      source.each,
      source.times,
      source.each * source.times,
      source.note,
    ]),
    ["Total", "", "", "", line.quantity, line.item.unit],
    ...job.problems.map(({ name, message }) => [`not counted: ${name}`, "", "", "", "", message]),
    ...notRead(rows, shoes, rules).map((message) => ["not read", "", "", "", "", message]),
  ];
}

/** The sources of a line in the order of the rows, those of one run added up. */
function mergedSources({ sources }: TakeoffLine): Source[] {
  const merged = new Map<string, Source>();
  for (const { runs: unsorted, ...rest } of sources) {
    const source = { ...rest, runs: [...unsorted].sort((a, b) => a.rowNumber - b.rowNumber) };
    const key = JSON.stringify([source.runs.map((run) => run.rowNumber), source.note]);
    const before = merged.get(key);
    merged.set(key, before ? { ...source, each: before.each + source.each } : source);
  }
  return [...merged.values()].sort((a, b) => firstRow(a) - firstRow(b) || naturalOrder(a.note, b.note));
}

const rowCell = ({ runs }: Source): Cell =>
  runs.length === 1 ? runs[0]!.rowNumber : runs.map((run) => run.rowNumber).join(", ");

/** What no one run stands behind comes last. */
const firstRow = (source: Source): number => source.runs[0]?.rowNumber ?? Number.MAX_SAFE_INTEGER;
