// The tables that the guide's examples read: a few runs of the demo job and what goes with them.
import { defaultShoe } from "../../src/raceway/defaultShoes";
import { demoRuns } from "../../workbench/demo/ferryTerminal";

export type GuideCell = string | number | null;

/** A named table with its header row. */
export interface GuideTable {
  readonly name: string;
  readonly rows: readonly (readonly GuideCell[])[];
}

/** PR-09 cannot be built: what a bad row does must be seen too. */
const CHOSEN = ["TH-01", "TH-03", "PR-01", "PR-09"];
const WITHOUT_JOB = [0, 2, 3, 4, 5, 6, 7, 8, 9];

const runs = demoRuns
  .filter(([name], row) => row === 0 || CHOSEN.includes(String(name)))
  .map((row, at) => [...WITHOUT_JOB.map((column) => row[column] ?? null), at === 0 ? "Crew" : at < 3 ? "A" : "B"]);

/** The runs as they were issued: one offset was lower, one run was not there yet. */
const issued = runs
  .filter(([name]) => name !== "PR-01")
  .map((row) => row.map((cell) => (typeof cell === "string" ? cell.replace("offset 6 up", "offset 4 up") : cell)));

function shoeRow(raceway: "EMT" | "RMC", size: "1/2" | "1", springback: number): GuideCell[] {
  const { radius, deduct } = defaultShoe(raceway, size);
  return [raceway, size, radius, deduct, springback];
}

export const GUIDE_TABLES: readonly GuideTable[] = [
  { name: "Runs", rows: runs },
  { name: "Issued", rows: issued },
  {
    name: "Shoes",
    rows: [["Raceway", "Size", "Radius", "Deduct", "Springback"], shoeRow("EMT", "1/2", 3), shoeRow("RMC", "1", 4)],
  },
  {
    name: "Stock",
    rows: [
      ["Raceway", "Size", "Length", "On hand"],
      ["EMT", "1/2", 120, null],
      ["EMT", "1/2", 108, 2],
      ["RMC", "1", 120, null],
    ],
  },
  {
    name: "Prices",
    rows: [
      ["Item", "Unit", "Price"],
      ["EMT 1/2 conduit, 10 ft stick", "each", 6.4],
      ["EMT 1/2 strap", "C", 31],
      ["RMC 1 conduit, 10 ft stick", "each", 38.5],
    ],
  },
  {
    name: "Labor",
    rows: [
      ["Operation", "Minutes"],
      ["conduit", 1.2],
      ["strap", 3],
      ["bend", 2.5],
    ],
  },
  {
    name: "Bid",
    rows: [
      ["Line", "Value", "Unit", "Of"],
      ["Material", null, "material", null],
      ["Sales tax", 7.5, "%", "Material"],
      ["Labor", 61.4, "per hour", null],
      ["Prime cost", null, "subtotal", null],
      ["Overhead", 12, "%", null],
      ["Profit", 8, "margin %", null],
      ["Total", null, "total", null],
    ],
  },
  {
    name: "Made",
    rows: [
      ["Date", "Piece", "Good", "Scrapped", "By", "Bend", "Dial reached", "Angle measured"],
      ["2026-11-02", "TH-01/1", 2, 0, "Ida", 1, 93, 90],
      ["2026-11-02", "TH-03/1", 1, 1, "Ida", 1, 93.5, 90.2],
      ["2026-11-03", "TH-03/1", 1, null, "Olu", 2, 31.5, 30.1],
      ["2026-11-03", "TH-01/1", 1, null, "Olu", 1, 93, 89.8],
      ["2026-11-03", "TH-01/1", 1, null, "Olu", 1, 93.2, 90.1],
    ],
  },
  {
    name: "Bench",
    rows: [
      ["Setting", "Value"],
      ["Shoe height", 36],
      ["Room above", 48],
      ["Support beyond", 60],
    ],
  },
];

/** A Runs table of one run, written into a formula. */
export const ONE_RUN = '{"Run","Raceway","Size","Route";"A-1","EMT","1/2","up 36, east 60"}';
/** One that lacks columns that every job needs. */
export const WITHOUT_SIZE = '{"Run","Route";"A-1","up 36"}';

/** The tables that a formula names, in the order in which it does. */
export const tablesIn = (formula: string): GuideTable[] =>
  [...new Set([...formula.matchAll(/(\w+)\[#All\]/g)].map(([, name]) => name))].map((name) => {
    const table = GUIDE_TABLES.find((each) => each.name === name);
    if (!table) throw new Error(`${formula}: the guide has no table ${name}.`);
    return table;
  });
