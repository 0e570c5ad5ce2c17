import type { IWorkbookData } from "@univerjs/core";
import { TABLES, RESULTS } from "../../../taskpane/workbook/items";
import { defaultNames } from "../../../taskpane/excel/names";
import { newResult, newTable, type Rows } from "../../../taskpane/workbook/newTables";
import { buildDemo } from "../../demo/buildDemo";
import { hasShoe, type JobWishes } from "./jobWishes";

/** A job of one's own, set up as the pane does it, as the data the engine opens. */
export function newJobData(wishes: JobWishes): IWorkbookData {
  const names = defaultNames();
  const rows: Record<string, Rows | undefined> = { Runs: wishes.example ? [exampleRun(wishes)] : [] };
  const sheets = [
    ...TABLES.map((table) => {
      const made = newTable(table, table, names, rows[table]);
      const shoes = made.cells.filter(
        ([raceway, size], at) =>
          table !== "Shoes" ||
          at === 0 ||
          (wishes.raceways.includes(raceway as never) && wishes.sizes.includes(size as never)),
      );
      return {
        name: table,
        table,
        columns: made.cells[0]!.map((_, at) => ({
          width: 100,
          format: made.formats[1]![at] === "@" ? "@" : undefined,
        })),
        rows: shoes.map((row) => row.map((cell) => (cell === "" ? null : cell))),
      };
    }),
    ...RESULTS.map((result) => ({
      name: result,
      columns: [],
      rows: [[newResult(result, result, names).formula]],
      result: true,
    })),
  ];
  const data = buildDemo({ name: wishes.name, sheets: sheets as never });
  return { ...data, resources: [...(data.resources ?? []), settings(wishes)] };
}

/** The unit that the pane shows lengths in. */
const settings = ({ style }: JobWishes) => ({
  name: "SHEET_RACEWAY_LEDGER_SETTINGS_PLUGIN",
  data: JSON.stringify({ "raceway-ledger.units": style }),
});

const EXAMPLE_ROUTES = {
  feet: "up 4', east 10'",
  inches: "up 48, east 120",
  mm: "up 1200 mm, east 3000 mm",
} as const;

function exampleRun({ style, raceways, sizes }: JobWishes): Record<string, string | number> {
  const pairs = raceways.flatMap((raceway) => sizes.map((size) => ({ raceway, size })));
  const { raceway, size } = pairs.find((pair) => hasShoe(pair.raceway, pair.size)) ?? { raceway: "EMT", size: "1/2" };
  return { Run: "A-1", Raceway: raceway, Size: size, Route: EXAMPLE_ROUTES[style], Quantity: 1 };
}
