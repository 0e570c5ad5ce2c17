import { resultFormula, type NamedTables } from "../../taskpane/workbook/design/formulas";
import type { Rows } from "../../taskpane/workbook/design/startRows";
import { TABLES, TABS, type ItemName, type TableName } from "../../taskpane/workbook/items";
import { isTable } from "../../taskpane/workbook/design/newSheets";
import { wishesForNew } from "../workbook/content/jobContent";
import { DEMO_ROWS } from "../demo/demoBook";

/** A workbook to try, small enough to read through. */
export interface Sample {
  /** Name of its file, without the ending. */
  file: string;
  title: string;
  /** Which of the demo job's areas it has. */
  area: string;
  /** The sheets its reader works with, tables to fill in and results; what their formulas read comes with them. */
  items: readonly ItemName[];
  /** Shop tickets of this conduit stand behind the rest. */
  tickets?: string;
}

/** One for each of those who work with a job; all three are parts of the invented ferry terminal. */
export const SAMPLES: readonly Sample[] = [
  {
    file: "estimator",
    title: "Dock lighting: from routes to a price",
    area: "Dock lighting",
    items: [
      ...(["Runs", "Counts", "Checks", "Takeoff", "Takeoff by area", "Order", "Missing", "Labor hours"] as const),
      ...(["Recap", "Crews", "Rules in force"] as const),
    ],
  },
  {
    file: "project-manager",
    title: "Ticket hall: what changed, what is made, what it costs",
    area: "Ticket hall",
    items: [
      "Runs",
      "Checks",
      "Circuits",
      "Takeoff",
      "Issued",
      "Changes",
      "Change order",
      "Made",
      "Progress",
      "Standing",
      "Overview",
    ],
  },
  {
    file: "shop",
    title: "Ticket hall: what to cut, bend and load",
    area: "Ticket hall",
    items: [
      "Runs",
      "Checks",
      "Schedule",
      "Set-up",
      "Cutting plan",
      "Bend counts",
      "Shop load",
      "Made",
      "Progress",
      "Daily",
    ],
    tickets: "EMT 3/4",
  },
];

/** The demo run that cannot be built shows how that is told; a sample to learn from does without. */
const UNBUILDABLE = "PR-09";

/** The sheets of a sample, in the order of their tabs: its own, and each table that a formula in them reads. */
export function sampleItems(sample: Sample): ItemName[] {
  const { tables } = wishesForNew();
  const rows = sampleRows(sample);
  const wanted = new Set<ItemName>();
  const add = (item: ItemName): void => {
    if (wanted.has(item)) return;
    wanted.add(item);
    const formulas = isTable(item) ? formulasIn(rows[item] ?? []) : [resultFormula(item, tables)];
    for (const formula of formulas) for (const table of tablesRead(formula, tables)) add(table);
  };
  sample.items.forEach(add);
  return TABS.filter((item) => wanted.has(item));
}

const formulasIn = (rows: Rows): string[] =>
  rows.flatMap((row) => Object.values(row).filter((cell) => String(cell).startsWith("="))).map(String);

const tablesRead = (formula: string, tables: NamedTables): TableName[] =>
  TABLES.filter((table) => formula.includes(`${tables[table].name}[`));

/** The rows of a sample's tables: those of the demo job that belong to its area. */
export function sampleRows({ area }: Sample): Partial<Record<TableName, Rows>> {
  const runs = (DEMO_ROWS.Runs ?? []).filter((row) => row["Area"] === area && row["Run"] !== UNBUILDABLE);
  const names = new Set(runs.map((row) => row["Run"]));
  const belongs = (row: Rows[number]): boolean => {
    const run = row["Run"] ?? row["Piece"];
    if (run !== undefined) return names.has(String(run).replace(/\/.*/, ""));
    return row["Area"] === undefined || row["Area"] === area;
  };
  return Object.fromEntries(Object.entries(DEMO_ROWS).map(([table, rows]) => [table, rows.filter(belongs)]));
}
