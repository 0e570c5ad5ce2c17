import { remember } from "../../memory/remember";
import { readRoute } from "../../route/text/readRoute";
import { writeRoute } from "../../route/text/writeRoute";
import type { JobRow } from "../../shop/job/job";
import type { Run } from "../../shop/run/runsTable";
import type { RackMember } from "../../shop/cells/rack";
import { writeStart } from "../../shop/cells/start";
import { isUserError } from "../../units/errors";
import { nominalStick } from "../../raceway/sticks";
import { formatLength } from "../../units/length";
import { labelKey } from "../amounts/lineBook";
import { lookUpKey } from "../../units/names/lookUpKey";
import { show } from "../../units/show";
import { breakerInWords } from "../../wiring/breaker";
import { placeInWords } from "../../wiring/place";
import { compareText, naturalOrder } from "../../units/names/naturalOrder";

/** One thing that changed about the runs. */
export interface RunChange {
  readonly change: "added" | "gone" | "changed";
  readonly run: string;
  /** Column of Runs that changed; empty for a run that was added or is gone. */
  readonly column: string;
  readonly before: string;
  readonly after: string;
}

/** A row with its cells as they are compared and shown. */
interface Entry {
  readonly name: string;
  readonly cells: Readonly<Record<string, string>>;
  /** All cells in one text: equal for rows that say the same. */
  readonly content: string;
  /** As it is looked up, with its job and alone. */
  readonly nameAndJob: string;
  readonly nameKey: string;
}

/**
 * What changed from one state of the Runs table to another: runs added, gone, and cells changed. Runs are paired by
 * name and job, then by name alone; the order of rows does not matter, nor does another spelling of the same route.
 */
export function runChanges(before: readonly JobRow[], after: readonly JobRow[]): RunChange[] {
  const [old, now] = withoutSameRuns(before, after);
  const pairs = pairUp(old.map(entryOf), now.map(entryOf));
  const changes = pairs.flatMap(([old, now]): RunChange[] => {
    if (!old) return [{ change: "added", run: now.name, column: "", before: "", after: now.cells["Route"] ?? "" }];
    if (!now) return [{ change: "gone", run: old.name, column: "", before: old.cells["Route"] ?? "", after: "" }];
    return changedCells(old, now);
  });
  return changes.sort((a, b) => ORDER[a.change] - ORDER[b.change] || naturalOrder(a.run, b.run));
}

/** Both without the runs that stand in both: one for one, as rows of the same cells are paired anyway. */
function withoutSameRuns(before: readonly JobRow[], after: readonly JobRow[]): [JobRow[], JobRow[]] {
  const left = new Map<Run, number>();
  for (const { run } of before) if (run) left.set(run, (left.get(run) ?? 0) + 1);
  const now = after.filter(({ run }) => {
    const count = (run && left.get(run)) ?? 0;
    if (!run || count === 0) return true;
    left.set(run, count - 1);
    return false;
  });
  const old = before.filter(({ run }) => {
    const count = (run && left.get(run)) ?? 0;
    if (!run) return true;
    left.set(run, count - 1);
    return count > 0;
  });
  return [old, now];
}

const ORDER: Record<RunChange["change"], number> = { added: 0, gone: 1, changed: 2 };

function changedCells(old: Entry, now: Entry): RunChange[] {
  const columns = new Set([...Object.keys(old.cells), ...Object.keys(now.cells)]);
  return [...columns].flatMap((column): RunChange[] => {
    const [before, after] = [old.cells[column] ?? "", now.cells[column] ?? ""];
    return before === after ? [] : [{ change: "changed", run: now.name, column, before, after }];
  });
}

type Pair = readonly [Entry, Entry] | readonly [Entry, undefined] | readonly [undefined, Entry];

/** Pairs equal rows first, then rows of the same name and job, then of the same name; the rest stay alone. */
function pairUp(before: Entry[], after: Entry[]): Pair[] {
  const pairs: Pair[] = [];
  let [old, now] = [sorted(before), sorted(after)];
  for (const key of [contentKey, nameAndJobKey, nameKey]) {
    const waiting = new Map<string, Entry[]>();
    for (const entry of now) {
      const queue = waiting.get(key(entry));
      if (queue) queue.push(entry);
      else waiting.set(key(entry), [entry]);
    }
    const taken = new Set<Entry>();
    old = old.filter((entry) => {
      const match = waiting.get(key(entry))?.shift();
      if (!match) return true;
      taken.add(match);
      pairs.push([entry, match]);
      return false;
    });
    now = now.filter((entry) => !taken.has(entry));
  }
  return [...pairs, ...old.map((entry): Pair => [entry, undefined]), ...now.map((entry): Pair => [undefined, entry])];
}

const sorted = (entries: Entry[]): Entry[] => [...entries].sort((a, b) => compareText(a.content, b.content));
const contentKey = (entry: Entry): string => entry.content;
const nameAndJobKey = (entry: Entry): string => entry.nameAndJob;
const nameKey = (entry: Entry): string => entry.nameKey;

const entryOf = (row: JobRow): Entry =>
  row.run ? readEntry(row.run) : entry(row.name, "", { Row: `not read: ${"problem" in row ? row.problem : ""}` });

/** The cells of a run, read once: the two states share most of their runs. */
const cellsEntry = remember((run: Run) => entry(run.name, run.job, runCells(run)));

/** Each row has an entry of its own: they are told apart when they are paired. */
const readEntry = (run: Run): Entry => ({ ...cellsEntry(run) });

const entry = (name: string, job: string, cells: Entry["cells"]): Entry => ({
  ...{ name, cells, content: labelKey([name, ...Object.entries(cells).flat()]) },
  ...{ nameAndJob: labelKey([lookUpKey(name), lookUpKey(job)]), nameKey: lookUpKey(name) },
});

const runCells = (run: Run): Record<string, string> => ({
  Job: run.job,
  Area: run.area,
  Raceway: run.raceway,
  Size: run.size,
  Route: plainRoute(run.route),
  Quantity: String(run.quantity),
  From: run.from,
  To: run.to,
  Conductors: run.conductors,
  Stick: formatLength(nominalStick(run.raceway, run.size, run.stick), 64),
  Date: run.date,
  Crew: run.crew,
  Fittings: run.fittings,
  "Grounding bushing": run.groundingBushing,
  Straps: run.straps === undefined ? "" : String(run.straps),
  Start: run.start ? writeStart(run.start) : "",
  Rack: run.rack ? rackInWords(run.rack) : "",
  Joints: (run.joints ?? []).map((joint) => formatLength(joint, 64)).join(", "),
  Where: run.place ? placeInWords(run.place) : "",
  Cover: run.cover === undefined ? "" : formatLength(run.cover, 64),
  "Temperature change": run.temperatureChange === undefined ? "" : String(run.temperatureChange),
  Ambient: run.ambient === undefined ? "" : `${show(run.ambient, 1)} °C`,
  Breaker: run.breaker ? breakerInWords(run.breaker) : "",
  "Check pull": run.pull === undefined ? "" : typeof run.pull === "number" ? String(run.pull) : run.pull ? "yes" : "no",
  Phase: run.phase ?? "",
  Floor: run.floor === undefined ? "" : String(run.floor),
  Height: run.height === undefined ? "" : `${run.height} ft`,
  Alternate: run.alternate ?? "",
  Typical: run.typical ?? "",
});

/** Which conduit of a rack a run is, and where it begins from the first one. */
const rackInWords = ({ place, count, spacing, offset }: RackMember): string =>
  `${place} of ${count}, ${formatLength(spacing, 64)} apart, at ${writeStart(offset)} from the first`;

/** A route in one spelling; one that cannot be read stays as written. */
function plainRoute(route: string): string {
  try {
    return writeRoute(readRoute(route));
  } catch (error) {
    if (!isUserError(error)) throw error;
    return route;
  }
}
