import { cutFigure } from "../figures/cutFigure";
import { ONE_RUN, WITHOUT_SIZE } from "../tables";
import type { Family } from "./types";

const CELLS = [
  ["Length", "Quantity"],
  [62, 2],
  [45, 4],
  [30.5, 3],
  [28, 2],
  [12.75, 5],
  ["9 1/2", 4],
  [7, 2],
  ["1' 3\"", 1],
];

export const cuts: Family = {
  file: "cuts",
  title: "Cutting",
  about: "Which lengths come out of which stick, with the proven least number of sticks.",
  pages: {
    "JOB.CUTS": {
      more: [`=CONDUIT.JOB.CUTS(${ONE_RUN})`, "=CONDUIT.JOB.CUTS(Runs[#All],Stock[#All],Shoes[#All],,,,,Prices[#All])"],
      refused: [`=CONDUIT.JOB.CUTS(${WITHOUT_SIZE})`, "=CONDUIT.JOB.CUTS(Runs[#All],Stock[#All],Shoes[#All],3)"],
    },
    "CUT.PLAN": {
      formula: ["on every stick: sum of its pieces + a saw cut for each ≤ its length"],
      cells: CELLS,
      figure: {
        draw: () => cutFigure(CELLS.slice(1), 1 / 16),
        caption: "The plan of the example; what is left of each stick is hatched.",
      },
      more: ["=CONDUIT.CUT.PLAN({40;50},{3;2})"],
      refused: ["=CONDUIT.CUT.PLAN({130})", '=CONDUIT.CUT.PLAN({40;"long"})', "=CONDUIT.CUT.PLAN({40;50},{1})"],
    },
  },
};
