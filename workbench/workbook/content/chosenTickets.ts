import {
  chooseTickets,
  type ChosenTickets,
  type TicketChoices,
  type TicketWishes as Choice,
} from "../../../src/made/counts/ticketChoice";
import { readBench } from "../../../src/shop/bench/bench";
import { buildJob } from "../../../src/shop/job/job";
import { planJobInSteps, type CutResult } from "../../../taskpane/totals/cuts/cutWork";
import type { Cell } from "../../../taskpane/workbook/items";
import type { SheetContent } from "./sheetContent";

type Table = Cell[][];

/** Which tickets go into a file. */
export interface TicketChoice {
  /** What is not said takes no part in the choice; straight pieces stand on the cutting sheet unless they are wanted. */
  choice?: Partial<Choice>;
  /** The Made table, to leave out what is made. */
  made?: Table;
  /** The Runs table as it was issued, to take only what changed since. */
  issued?: Table;
}

const EVERY: Choice = {
  ...{ area: "", date: "", crew: "", conduit: "" },
  ...{ bentOnly: true, notMade: false, changed: false },
};

/**
 * The tickets that are wanted of a job's tables, and the plan for the saw where straight pieces have none.
 * @throws Error for an area, date, crew or conduit that the job does not have
 */
export function chosenTickets(
  sheets: readonly SheetContent[],
  { choice, made, issued }: TicketChoice,
): ChosenTickets & { cuts: CutResult | undefined } {
  const table = (name: string): Table | undefined =>
    sheets.find((sheet) => sheet.name === name)?.cells.map((row) => row.map((cell) => cell?.value ?? ""));
  const [shoes, rules, bench] = [table("Shoes"), table("Rules"), table("Bench")];
  const build = (runs: unknown) => buildJob({ runs, shoes, rules });
  const runs = table("Runs") ?? [];
  const wishes = { ...EVERY, ...choice, notMade: made !== undefined, changed: issued !== undefined };
  const chosen = chooseTickets(build(runs), wishes, {
    made,
    issued: issued && build(issued),
    bench: bench && readBench(bench),
  });
  refuseUnknown(wishes, chosen.choices);
  if (chosen.straight === 0) return { ...chosen, cuts: undefined };
  const cuts = { runs, rows: chosen.rows, stock: table("Stock"), shoes, rules, made };
  return { ...chosen, cuts: planned(cuts) };
}

function planned(job: Parameters<typeof planJobInSteps>[0]): CutResult {
  const steps = planJobInSteps(job);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

function refuseUnknown(wishes: Choice, choices: TicketChoices): void {
  for (const [column, known] of Object.entries(choices) as [keyof TicketChoices, readonly string[]][]) {
    const wanted = wishes[column];
    if (wanted === "" || known.includes(wanted)) continue;
    const list = known.length > 0 ? `one of ${known.join(", ")}` : "left out: no run has one";
    throw new Error(`${column} must be ${list}; got ${wanted}.`);
  }
}
