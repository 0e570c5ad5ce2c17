import { stick } from "../figures/scenes";
import { ONE_RUN, WITHOUT_SIZE } from "../tables";
import type { Family } from "./types";

/** A run of a size that has no built-in shoe. */
const LARGE_RUN = '{"Run","Raceway","Size","Route";"F-1","EMT","2","up 40, east 90"}';

/** A feeder with its breaker. */
const FEEDER =
  '{"Run","Raceway","Size","Route","Conductors","Breaker";"F-2","EMT","2","east 80\',north 20\'","3 #4/0 THHN, 1 #4 THHN",225}';

export const jobs: Family = {
  file: "jobs",
  title: "A whole job",
  about: "The Runs table in, a table for the shop or the office out.",
  pages: {
    "JOB.SCHEDULE": {
      figure: {
        draw: () => stick("east 40.5, offset 6 up at 30, ahead 48"),
        caption: "The piece of run TH-03, before it is bent, on the built-in shoe.",
      },
      more: [
        `=CONDUIT.JOB.SCHEDULE(${ONE_RUN})`,
        `=CONDUIT.JOB.SCHEDULE(${LARGE_RUN},,{"Rule","Value";"Factory elbows above size, metal","1-1/4"})`,
      ],
      refused: [`=CONDUIT.JOB.SCHEDULE(${WITHOUT_SIZE})`, "=CONDUIT.JOB.SCHEDULE(Runs[#All],Prices[#All])"],
    },
    "JOB.CHECKS": {
      more: [
        `=CONDUIT.JOB.CHECKS(${ONE_RUN})`,
        `=CONDUIT.JOB.CHECKS({"Run","Raceway","Size","Route","Start";"A-1","EMT","1/2","east 10'","0 0 96";"A-2","EMT","3/4","north 10'","40 -60 96.5"})`,
        `=CONDUIT.JOB.CHECKS(${LARGE_RUN},,,{"Rule","Value";"Factory elbows above size, metal","large"})`,
      ],
      refused: [`=CONDUIT.JOB.CHECKS(${WITHOUT_SIZE})`, "=CONDUIT.JOB.CHECKS(Runs[#All],Shoes[#All],1999)"],
    },
    "JOB.CIRCUITS": {
      more: [`=CONDUIT.JOB.CIRCUITS(${FEEDER})`],
      refused: [`=CONDUIT.JOB.CIRCUITS(${WITHOUT_SIZE})`, "=CONDUIT.JOB.CIRCUITS(Runs[#All],Shoes[#All],1999)"],
    },
    "JOB.SETUP": {
      more: [`=CONDUIT.JOB.SETUP(${ONE_RUN})`],
      refused: [
        `=CONDUIT.JOB.SETUP(${WITHOUT_SIZE})`,
        '=CONDUIT.JOB.SETUP(Runs[#All],Shoes[#All],{"Setting","Value";"Plane","diagonal"})',
      ],
    },
  },
};
