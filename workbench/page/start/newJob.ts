import type { IWorkbookData } from "@univerjs/core";
import { ruleRows, shoeRows, startRows } from "../../../taskpane/workbook/design/startRows";
import { EXTRAS, TABS } from "../../../taskpane/workbook/items";
import { setUpContent } from "../../workbook/content/jobContent";
import { openData } from "../../workbook/openData";
import { hasShoe, type JobWishes } from "./jobWishes";

/** A job of one's own, set up as the pane does it, as the data the engine opens. */
export function newJobData(wishes: JobWishes): IWorkbookData {
  const { raceways, sizes, plane } = wishes;
  const content = setUpContent(
    TABS.filter((item) => !EXTRAS.includes(item)),
    {
      rows: {
        Runs: wishes.example ? [exampleRun(wishes)] : [],
        Rules: ruleRows(wishes.style),
        Shoes: shoeRows(raceways, sizes),
        Bench: startRows("Bench").map((row) => (row.Setting === "Plane" ? { ...row, Value: plane } : row)),
      },
    },
  );
  const data = openData(content);
  return { ...data, name: wishes.name };
}

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
