import { buildJob, isBuilt, type JobRanges, type UnbuiltRow } from "../../src/shop/job/job";
import type { BuiltRun } from "../../src/shop/run/builtRun";
import { checkRow } from "../../src/shop/checks/checks";
import type { Finding } from "../../src/shop/code/finding";
import { readEdition } from "../../src/raceway/code/edition";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import { scheduleRun, type ScheduleRow } from "../../src/shop/schedule/schedule";
import { attempt } from "../components/attempt";
import { columnPlaces } from "../workbook/columns";
import type { Cell } from "../workbook/items";
import { joinRoute, splitRoute } from "./steps";

/** A run as src/ works it out, or the words for why it cannot. */
export interface WorkedRun {
  built?: BuiltRun;
  /** The other conduits of its rack. */
  beside?: readonly BuiltRun[];
  /** As much of the run as can be built where the whole cannot: its first steps, up to the number given. */
  drawn?: { readonly built: BuiltRun; readonly upTo: number };
  schedule: readonly ScheduleRow[];
  findings: readonly Finding[];
  /** What keeps the run from being built. */
  problem: string;
  /** Step of the route it is about, and the same without that step's number. */
  step?: number;
  stepProblem?: string;
}

const NOTHING: WorkedRun = { schedule: [], findings: [], problem: "" };

/**
 * Works out one row of a Runs table with a route that may still be a draft.
 * @param cells the table, header row first; @param row 1 for the first row under the header
 * @param shoes the Shoes table's cells; undefined: the built-in shoes
 * @param rules the Rules table's cells; undefined: the built-in rules
 */
export function workOut(
  cells: readonly (readonly Cell[])[],
  row: number,
  route: string,
  shoes: readonly (readonly Cell[])[] | undefined,
  rules?: readonly (readonly Cell[])[],
): WorkedRun {
  const headers = cells[0] ?? [];
  const own = [...(cells[row] ?? [])];
  if (route.trim() === "") return NOTHING;
  const tried = attempt(() => {
    const place = columnPlaces(headers, RUN_COLUMNS).get("Route");
    if (place !== undefined) own[place] = route;
    const job = buildJob({ runs: [headers, own], shoes, rules, which: "as written" });
    const row = job.rows[0];
    if (!row) return NOTHING;
    if (!isBuilt(row))
      return {
        ...NOTHING,
        ...row,
        ...firstSteps(route, row, (first) => builtOf(headers, own, first, { shoes, rules })),
      };
    const { built } = row;
    return {
      ...NOTHING,
      built,
      beside: job.rows.slice(1).flatMap((other) => (isBuilt(other) ? [other.built] : [])),
      schedule: scheduleRun(built),
      findings: checkRow(row, readEdition(undefined), job.rules),
    };
  });
  return tried.value ?? { ...NOTHING, problem: tried.problem ?? "" };
}

/** The longest beginning of a route, before the step that is wrong or up to it, that can be built. */
function firstSteps(
  route: string,
  { step }: UnbuiltRow,
  build: (route: string) => BuiltRun | undefined,
): Pick<WorkedRun, "drawn"> {
  const steps = splitRoute(route);
  for (let upTo = Math.min(step ?? 0, steps.length - 1); upTo > 0; upTo--) {
    const built = build(joinRoute(steps.slice(0, upTo)));
    if (built) return { drawn: { built, upTo } };
  }
  return {};
}

/** A row with another route, and without the joints of its own; undefined where it cannot be built. */
function builtOf(
  headers: readonly Cell[],
  row: readonly Cell[],
  route: string,
  { shoes, rules }: Pick<JobRanges, "shoes" | "rules">,
): BuiltRun | undefined {
  const places = columnPlaces(headers, RUN_COLUMNS);
  const cells = row.map((cell, place) =>
    place === places.get("Route") ? route : place === places.get("Joints") ? "" : cell,
  );
  const [first] = buildJob({ runs: [headers, cells], shoes, rules }).rows;
  return first && isBuilt(first) ? first.built : undefined;
}
