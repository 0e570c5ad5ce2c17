import { drawCounts } from "../../../src/drawing/drawCounts";
import { bendCounts } from "../../../src/takeoff/bendCounts";
import { GUIDE_TABLES } from "../tables";
import type { Family } from "./types";

const runs = GUIDE_TABLES.find(({ name }) => name === "Runs")!.rows;
const WITHOUT_SIZE = '{"Run","Route";"A-1","up 36"}';

/** Bends of the guide's runs by kind, as the table has them. */
function countsByKind() {
  const [, ...rows] = bendCounts(
    runs.map((row) => [...row]),
    { by: "Kind" },
  );
  const counted = rows.filter(([kind, bends]) => kind !== "" && kind !== "Total" && typeof bends === "number");
  return counted.map(([kind, bends]) => ({ label: String(kind), count: Number(bends) }));
}

export const takeoff: Family = {
  file: "takeoff",
  title: "Take-off",
  about: "What to buy, what it costs, how long it takes, and what has changed.",
  pages: {
    "JOB.TAKEOFF": {
      refused: [
        `=CONDUIT.JOB.TAKEOFF(${WITHOUT_SIZE})`,
        '=CONDUIT.JOB.TAKEOFF(Runs[#All],Prices[#All],Shoes[#All],"Floor")',
      ],
    },
    "JOB.TRACE": {
      refused: ['=CONDUIT.JOB.TRACE(Runs[#All],"EMT 9 strap")', '=CONDUIT.JOB.TRACE(Runs[#All],"")'],
    },
    "JOB.RULES": { refused: ['=CONDUIT.JOB.RULES({"Rule";"Saw kerf"})'] },
    "JOB.BENDS": {
      figure: {
        draw: () => drawCounts(countsByKind(), { title: "Bends by kind" }),
        caption: "The same runs, counted by kind.",
      },
      refused: [`=CONDUIT.JOB.BENDS(${WITHOUT_SIZE})`, '=CONDUIT.JOB.BENDS(Runs[#All],"Color")'],
    },
    "JOB.CHANGES": {
      refused: [
        `=CONDUIT.JOB.CHANGES(${WITHOUT_SIZE},Runs[#All])`,
        `=CONDUIT.JOB.CHANGES(Issued[#All],${WITHOUT_SIZE})`,
      ],
    },
  },
};
