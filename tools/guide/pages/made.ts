import { ONE_RUN, WITHOUT_SIZE } from "../tables";
import type { Family } from "./types";

export const made: Family = {
  file: "made",
  title: "What was made",
  about:
    "The shop's own records: what is done, what is left, what a change leaves standing, what the shoes have become.",
  pages: {
    "JOB.PROGRESS": {
      more: [
        '=CONDUIT.JOB.PROGRESS(Runs[#All],Made[#All],"By")',
        `=CONDUIT.JOB.PROGRESS(${ONE_RUN},{"Piece","Good";"A-1/1",1},"Run")`,
      ],
      refused: [
        '=CONDUIT.JOB.PROGRESS(Runs[#All],Made[#All],"Color")',
        '=CONDUIT.JOB.PROGRESS(Runs[#All],{"Piece","Number";"TH-01/1",1})',
      ],
    },
    "JOB.DAILY": {
      more: [`=CONDUIT.JOB.DAILY(${ONE_RUN},{"Date","Piece","Good";"2026-11-02","A-1",1})`],
      refused: [`=CONDUIT.JOB.DAILY(${WITHOUT_SIZE},Made[#All])`],
    },
    "JOB.STANDING": {
      formula: [
        "shape code: raceway, size, cut length and, bend by bend, start, angle, radius and turn, to 1/16 in. and 0.1°, read from whichever end comes first by the alphabet; forty bits of two FNV-1a hashes",
        "fits: the needed bends are neighbors on the piece, as far apart (1/16 in.) and turned alike (0.25°)",
        "fewest to make again: Σ supply·price + Σ demand·price = worth of the matching, no edge worth more than its two prices",
      ],
      more: [`=CONDUIT.JOB.STANDING(${ONE_RUN},{"Piece","Good";"A-1/1",2})`],
      refused: [`=CONDUIT.JOB.STANDING(Runs[#All],Made[#All],${WITHOUT_SIZE})`],
    },
    "SHOE.LEARN": {
      formula: [
        "springback = dial reached − dial start − angle measured",
        "line of least squares; proportional to the angle where all angles lie within 15°",
        "limits at 90° = ± t · u, t of Student for 95 %, u the standard uncertainty of the line there",
      ],
      more: [
        '=CONDUIT.SHOE.LEARN({"Piece","Good","Raceway","Size","Dial reached","Angle measured";"A-1",1,"EMT","1/2",93,90;"A-1",1,"EMT","1/2",93.2,90;"A-2",1,"EMT","1/2",46.4,45;"A-2",1,"EMT","1/2",46.6,45;"A-3",1,"EMT","1/2",31,30})',
      ],
      refused: ['=CONDUIT.SHOE.LEARN({"Dial reached","Angle measured";93,90})'],
    },
    "SHOE.CHART": {
      formula: [
        "error = angle measured − angle of the run",
        "limits = mean ± 3 · (mean step) / 1.128; largest step = 3.267 · mean step",
      ],
      more: [
        `=CONDUIT.SHOE.CHART({"Piece","Good","Dial reached","Angle measured";"A-1",1,93,90;"A-1",1,93,90.5;"A-1",1,93,89.8},${ONE_RUN})`,
      ],
      refused: [`=CONDUIT.SHOE.CHART(Made[#All],${WITHOUT_SIZE})`],
    },
  },
};
