import { buildRunWith, type BuiltRun } from "../../src/shop/run/buildRun";
import { checkBuiltRun } from "../../src/shop/checks/checks";
import type { Finding } from "../../src/shop/checks/findings";
import { readEdition } from "../../src/raceway/edition";
import { RUN_COLUMNS, readRuns } from "../../src/shop/run/runsTable";
import { scheduleRun, type ScheduleRow } from "../../src/shop/schedule/schedule";
import { readShoes } from "../../src/shop/shoe/shoeBook";
import { readElbowRule } from "../../src/takeoff/amounts/elbowRule";
import { attempt } from "../components/attempt";
import { columnPlaces } from "../workbook/columns";
import type { Cell } from "../workbook/items";

/** A run as src/ works it out, or the words for why it cannot. */
export interface WorkedRun {
  built?: BuiltRun;
  schedule: ScheduleRow[];
  findings: readonly Finding[];
  /** What keeps the run from being built, and the step it names. */
  problem: string;
  step: number | undefined;
}

const NOTHING: WorkedRun = { schedule: [], findings: [], problem: "", step: undefined };

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
    const read = readRuns([headers, own])[0];
    if (!read) return NOTHING;
    if ("problem" in read) return failed(read.problem);
    const built = buildRunWith(read.run, readShoes(shoes), readElbowRule(rules));
    const findings = checkBuiltRun(built, readEdition(undefined));
    return { built, schedule: scheduleRun(built), findings, problem: "", step: undefined };
  });
  return tried.value ?? failed(tried.problem ?? "");
}

const failed = (problem: string): WorkedRun => ({ ...NOTHING, problem, step: stepOf(problem) });

/** The step that the words of an error name. */
function stepOf(words: string): number | undefined {
  const step = /\bsteps? (\d+)/.exec(words);
  return step ? Number(step[1]) : undefined;
}
