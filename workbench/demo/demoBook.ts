import { defaultShoe } from "../../src/raceway/defaultShoes";
import type { Raceway } from "../../src/raceway/raceway";
import type { TradeSize } from "../../src/raceway/tradeSize";
import { NUMBER_FORMATS } from "../numberFormats";
import { demoBench, demoLabor, demoPrices, demoRules, demoStock, oneBendRows } from "./ferryTables";
import { demoRuns, issuedRuns } from "./ferryTerminal";
import type { DemoBook, DemoCell, DemoSheet } from "./types";

const raceways: readonly Raceway[] = ["EMT", "IMC", "RMC", "PVC-coated RMC"];
const sizes: readonly TradeSize[] = ["1/2", "3/4", "1"];

/** The formula columns that follow each run, with the letters of Route, Raceway and Size. */
const perRun: readonly [heading: string, formula: (row: number) => string][] = [
  ["Length in.", (row) => `=CONDUIT.RUN.LENGTH(F${row},D${row},E${row},Shoes!A:H,Rules!A:D)`],
  ["Degrees", (row) => `=CONDUIT.RUN.DEGREES(F${row},D${row},E${row},Shoes!A:H,Rules!A:D)`],
  ["Check", (row) => `=CONDUIT.RUN.CHECK(F${row},D${row},E${row},Shoes!A:H,,Rules!A:D)`],
];

const runs: DemoSheet = {
  name: "Runs",
  table: "Runs",
  color: "#1f4e5f",
  frozenColumns: 1,
  columns: [
    { width: 70 },
    { width: 115 },
    { width: 115 },
    { width: 165, choices: [...raceways, "PVC 40", "PVC 80"] },
    { width: 60, format: "@", align: "center", choices: [...sizes, "1-1/4", "1-1/2", "2"] },
    { width: 330, format: "@" },
    { width: 100, align: "right" },
    { width: 120 },
    { width: 125 },
    { width: 130, format: "@" },
    { width: 90, format: "yyyy-mm-dd" },
    { width: 55, align: "center" },
    { width: 95 },
    { width: 90 },
    { width: 85, format: "0.000" },
    { width: 75, format: "0.0" },
    { width: 320 },
  ],
  rows: demoRuns.map((row, at): DemoCell[] => [
    ...row,
    ...perRun.map(([heading, formula]) => (at === 0 ? heading : formula(at + 1))),
  ]),
};

const shoes: DemoSheet = {
  name: "Shoes",
  table: "Shoes",
  color: "#1f4e5f",
  columns: [
    { width: 130 },
    { width: 60, format: "@", align: "center" },
    ...Array.from({ length: 6 }, () => ({ width: 115 })),
    { width: 620 },
  ],
  rows: [
    [
      "Raceway",
      "Size",
      "Radius",
      "Deduct",
      "Springback",
      "Dial from",
      "Dial to",
      "Shortest tail",
      "Where the values come from",
    ],
    ...raceways.flatMap((raceway) => sizes.flatMap((size) => shoeRow(raceway, size))),
  ],
};

/** The built-in shoe as a row to be edited; no row where there is none. */
function shoeRow(raceway: Raceway, size: TradeSize): DemoCell[][] {
  try {
    const shoe = defaultShoe(raceway, size);
    return [[raceway, size, shoe.radius, shoe.deduct, shoe.springback, -5, 105, 2, shoe.source]];
  } catch {
    return [];
  }
}

/** A table of the user's, header row first. */
function table(name: string, rows: readonly (readonly DemoCell[])[], columns: DemoSheet["columns"]): DemoSheet {
  return { name, color: "#1f4e5f", columns, rows };
}

const sizeColumn = { width: 60, format: "@", align: "center" } as const;
const money = { width: 85, format: "0.00" } as const;

/** The columns of a result sheet by their widths [px]; a format behind a width: `[85, "0.000"]`. */
type ResultColumns = readonly (number | readonly [width: number, format: string])[];

/** A sheet with one formula that spills. Whole columns: a run added below the last one is in it at once. */
function result(name: string, formula: string, columns: ResultColumns): DemoSheet {
  return {
    name,
    color: "#5b4a1f",
    result: true,
    columns: columns.map((column) =>
      typeof column === "number" ? { width: column } : { width: column[0], format: column[1] },
    ),
    rows: [[formula, ...Array.from({ length: columns.length - 1 }, () => null)]],
  };
}

const { inches, degrees } = NUMBER_FORMATS;
const takeoffColumns = [320, 60, [90, "0.0"], [85, "0.00"], [95, "#,##0.00"], [85, "0.0"], [75, "0.00"], 420] as const;
const reach = [95, NUMBER_FORMATS.room] as const;

const trace = result("Traced", "=CONDUIT.JOB.TRACE(Runs!A:N,B1,Shoes!A:H,Rules!A:D,,Stock!A:E)", [
  ...([230, 250, [75, "0.00"], 60, [85, "0.00"], 320] as const),
]);

/** The runs behind one item of the take-off, which is named above them. */
const traced: DemoSheet = {
  ...trace,
  headerRow: 2,
  noteRows: [1],
  rows: [
    ["Item of the take-off", "RMC 3/4 strap"],
    ["Write another item of Takeoff in B1 to see the runs behind it."],
    ...trace.rows,
  ],
};

/** The workbook the page opens on: a small ferry terminal's raceways. */
export const demoBook: DemoBook = {
  name: "Ferry terminal",
  sheets: [
    runs,
    shoes,
    result("Schedule", "=CONDUIT.JOB.SCHEDULE(Runs!A:N,Shoes!A:H,Rules!A:D)", [
      ...[70, 55, [95, inches] as const, 50, 150, [95, inches] as const, 70, 65, [75, degrees] as const],
      ...[[75, degrees] as const, 230, [75, degrees] as const, 320, 75, 50, 100, 85, 90, 110, 110, 125, 55],
    ]),
    result("Set-up", "=CONDUIT.JOB.SETUP(Runs!A:N,Shoes!A:H,Bench!A:B,Rules!A:D)", [
      ...[70, 55, 50, 50, [95, inches] as const, 70, 65, [75, degrees] as const, 260],
      ...[reach, reach, reach, reach, reach, 420],
    ]),
    result(
      "Takeoff",
      "=CONDUIT.JOB.TAKEOFF(Runs!A:N,Prices!A:C,Shoes!A:H,,Labor!A:B,Rules!A:D,Stock!A:E)",
      takeoffColumns,
    ),
    result("Takeoff by area", '=CONDUIT.JOB.TAKEOFF(Runs!A:N,Prices!A:C,Shoes!A:H,"Area",Labor!A:B,Rules!A:D)', [
      ...[110, ...takeoffColumns],
    ]),
    traced,
    result("Cutting plan", "=CONDUIT.JOB.CUTS(Runs!A:N,Stock!A:E,Shoes!A:H,,,Rules!A:D)", [
      ...[140, 55, 60, 115, 490, 155, 330, 480],
    ]),
    result("Bend counts", '=CONDUIT.JOB.BENDS(Runs!A:N,"Area, Raceway, Size, Kind",Shoes!A:H,Labor!A:B,Rules!A:D)', [
      ...[120, 140, 60, 150, 80, [80, "0.00"] as const, 320],
    ]),
    result("Shop load", '=CONDUIT.JOB.BENDS(Runs!A:N,"Date, Crew, Raceway, Size",Shoes!A:H,Labor!A:B,Rules!A:D)', [
      ...[95, 60, 140, 60, 80, [80, "0.00"] as const, 320],
    ]),
    result("Checks", "=CONDUIT.JOB.CHECKS(Runs!A:N,Shoes!A:H,,Rules!A:D)", [80, 80, 180, 480, 420]),
    result("Changes", "=CONDUIT.JOB.CHANGES('As issued'!A:N,Runs!A:N,Shoes!A:H,Rules!A:D,Stock!A:E)", [
      ...[110, 320, 110, 260, 260, 110],
    ]),
    table("As issued", issuedRuns, runs.columns.slice(0, 14)),
    { ...table("Stock", demoStock, [{ width: 130 }, sizeColumn, { width: 80 }, { width: 75 }, money]), table: "Stock" },
    { ...table("Prices", demoPrices, [{ width: 260 }, { width: 60 }, money]), table: "Prices" },
    { ...table("Labor", demoLabor, [{ width: 160 }, { width: 80, format: "0.0" }]), table: "Labor" },
    { ...table("Rules", demoRules, [{ width: 260 }, { width: 80 }, { width: 90 }, { width: 320 }]), table: "Rules" },
    result("Rules in force", "=CONDUIT.JOB.RULES(Rules!A:D)", [320, 160, 100, 560]),
    { ...table("Bench", demoBench, [{ width: 160 }, { width: 100 }]), table: "Bench" },
    table("One bend", oneBendRows, [{ width: 480 }, { width: 320, format: "0.0000" }, { width: 640 }]),
  ],
};
