import { drawCounts } from "../../../src/drawing/job/drawCounts";
import { bendCounts } from "../../../src/takeoff/reports/bendCounts";
import { GUIDE_TABLES, ONE_RUN, WITHOUT_SIZE } from "../tables";
import type { Family } from "./types";

const runs = GUIDE_TABLES.find(({ name }) => name === "Runs")!.rows;

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
      more: [
        "=CONDUIT.JOB.TAKEOFF(Runs[#All],Prices[#All],Shoes[#All],,,,Stock[#All])",
        '=CONDUIT.JOB.TAKEOFF(Runs[#All],Prices[#All],Shoes[#All],"Area, Crew",Labor[#All],,Stock[#All],,,"yes")',
        `=CONDUIT.JOB.TAKEOFF(${ONE_RUN})`,
        `=CONDUIT.JOB.TAKEOFF(${ONE_RUN},{"Item","Unit","Price";"EMT 1/2 strap","C",31},,,,,,,,,{"Allowance","Of","Value","Unit";"Spare","straps",10,"%";"Small tools","",25,"lump sum"})`,
      ],
      refused: [
        `=CONDUIT.JOB.TAKEOFF(${WITHOUT_SIZE})`,
        '=CONDUIT.JOB.TAKEOFF(Runs[#All],Prices[#All],Shoes[#All],"Color")',
        '=CONDUIT.JOB.TAKEOFF(Runs[#All],Prices[#All],Shoes[#All],"Area",,,,,,"maybe")',
      ],
    },
    "JOB.ORDER": {
      formula: ["of all sums of packages that hold what to buy the least, and of those the fewest packages"],
      more: [
        `=CONDUIT.JOB.ORDER(${ONE_RUN},{"Item","Price","Package","On hand";"EMT 1/2 strap","","50, 100",1},,,,,{"Allowance","Of","Value","Unit";"Spare","straps",10,"%"})`,
      ],
      refused: [`=CONDUIT.JOB.ORDER(${WITHOUT_SIZE})`, '=CONDUIT.JOB.ORDER(Runs[#All],{"Item","Package";"Box",10})'],
    },
    "JOB.TRACE": {
      more: [
        '=CONDUIT.JOB.TRACE(Runs[#All],"#10 THHN conductor",Shoes[#All],,"Area")',
        `=CONDUIT.JOB.TRACE(${ONE_RUN},"EMT 1/2 strap")`,
      ],
      refused: ['=CONDUIT.JOB.TRACE(Runs[#All],"EMT 9 strap")', '=CONDUIT.JOB.TRACE(Runs[#All],"")'],
    },
    "JOB.MISSING": {
      more: [
        '=CONDUIT.JOB.MISSING(Runs[#All],{"Item","Unit","Price";"EMT 1/2 srtap","C",31})',
        `=CONDUIT.JOB.MISSING(${ONE_RUN})`,
      ],
      refused: ['=CONDUIT.JOB.MISSING(Runs[#All],{"Item","Unit";"Box","each"})'],
    },
    "JOB.RULES": {
      more: ['=CONDUIT.JOB.RULES({"Rule","Value";"Typical ROOM-A, North",3;"Saw kerf",0.05})'],
      refused: ['=CONDUIT.JOB.RULES({"Rule";"Saw kerf"})'],
    },
    "JOB.BENDS": {
      figure: {
        draw: () => drawCounts(countsByKind(), { title: "Bends by kind" }),
        caption: "The same runs, counted by kind.",
      },
      more: [`=CONDUIT.JOB.BENDS(${ONE_RUN},"Kind")`],
      refused: [`=CONDUIT.JOB.BENDS(${WITHOUT_SIZE})`, '=CONDUIT.JOB.BENDS(Runs[#All],"Color")'],
    },
    "JOB.CHANGES": {
      more: [`=CONDUIT.JOB.CHANGES(${ONE_RUN},${ONE_RUN.replace("60", "72")})`],
      refused: [
        `=CONDUIT.JOB.CHANGES(${WITHOUT_SIZE},Runs[#All])`,
        `=CONDUIT.JOB.CHANGES(Issued[#All],${WITHOUT_SIZE})`,
      ],
    },
  },
};
