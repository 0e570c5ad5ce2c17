import { WITHOUT_SIZE } from "../tables";
import type { Family } from "./types";

const BID =
  '{"Line","Value","Unit","Of";"Material","","material","";"Tax",8.25,"%","Material";"Profit",10,"margin %",""}';

export const bid: Family = {
  file: "bid",
  title: "The bid",
  about:
    "From the take-off to a price: material, labor, job costs, overhead, profit, by areas that add up to the cent.",
  pages: {
    "JOB.RECAP": {
      formula: [
        "% of a base: base · p / 100 (markup)",
        "margin %: base / (1 − p / 100) − base, which is p % of base and line together",
        "each line is rounded to the cent once and shared out to the groups, largest remainders first",
      ],
      more: [
        '=CONDUIT.JOB.RECAP(Runs[#All],Bid[#All],Prices[#All],Labor[#All],,,,"Crew")',
        `=CONDUIT.JOB.RECAP(Runs[#All],${BID},Prices[#All])`,
      ],
      refused: [
        '=CONDUIT.JOB.RECAP(Runs[#All],{"Line","Value";"Material",""})',
        `=CONDUIT.JOB.RECAP(${WITHOUT_SIZE},Bid[#All])`,
        '=CONDUIT.JOB.RECAP(Runs[#All],Bid[#All],,,,,,"Color")',
      ],
    },
  },
};
