import { TABS, type Cell, type TableName } from "../../taskpane/workbook/items";
import { startRows } from "../../taskpane/workbook/design/startRows";
import { recordsIn, setUpContent } from "../workbook/content/jobContent";
import type { SheetContent } from "../workbook/content/sheetContent";
import {
  demoAllowances,
  demoBid,
  demoCosts,
  demoCounts,
  demoCrews,
  demoFactors,
  demoRates,
  demoSupplies,
} from "./ferryBid";
import { demoBench, demoLabor, demoMade, demoPrices, demoRules, demoStock } from "./ferryTables";
import { demoRuns, issuedRuns } from "./ferryTerminal";

export const DEMO_NAME = "Ferry terminal";

/** What the owner may add: priced when the rule Alternates in the job names it; invented. */
const DEMO_ALTERNATE = {
  ...{ Item: "Floodlight on pole", Unit: "each", Quantity: 2, Area: "Dock lighting", Phase: "1" },
  ...{ Alternate: "A1", Note: "invented: two more, if the owner wants them" },
};

/** What two test bends of its shoe told the demo's shop; invented, as its Made rows are: 93 for a 90, 31 for a 30. */
const MEASURED = {
  ...{ Springback: 3, "Second test": "30 at 31" },
  ...{ Measured: "2026-10-30, radius ± 0.11 in., deduct ± 0.06 in.", Source: "two test bends" },
};

/** The shoes a shop starts with, the first of them measured. */
const demoShoes = startRows("Shoes").map((row, at): Record<string, Cell> => (at === 0 ? { ...row, ...MEASURED } : row));

/** Rows of the demo job; what is not named here stands as Set up makes it. */
export const DEMO_ROWS: Partial<Record<TableName, Record<string, Cell>[]>> = {
  Runs: recordsIn(demoRuns),
  Shoes: demoShoes,
  Made: recordsIn(demoMade),
  Issued: recordsIn(issuedRuns),
  Stock: recordsIn(demoStock),
  Prices: recordsIn(demoPrices).map((row) => ({ ...row, ...demoSupplies[String(row["Item"])] })),
  Labor: recordsIn(demoLabor),
  Rules: recordsIn(demoRules),
  Bench: recordsIn(demoBench),
  Counts: [...recordsIn(demoCounts), DEMO_ALTERNATE],
  Factors: recordsIn(demoFactors),
  Crews: recordsIn(demoCrews),
  Costs: recordsIn(demoCosts),
  Allowances: recordsIn(demoAllowances),
  Bid: recordsIn(demoBid).map((row) => {
    const rate = demoRates[String(row["Line"])];
    return rate ? { ...row, Value: rate } : row;
  }),
};

/** The item whose runs Traced tells. */
export const DEMO_ITEM = "RMC 3/4 strap";

/** The workbook the page opens on, a small ferry terminal's raceways: what Set up makes, with these rows. */
export const demoContent = (): SheetContent[] => setUpContent(TABS, { rows: DEMO_ROWS, traced: DEMO_ITEM });
