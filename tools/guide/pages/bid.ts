import { ONE_RUN, WITHOUT_SIZE } from "../tables";
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
        `=CONDUIT.JOB.RECAP(${ONE_RUN},${BID},{"Item","Unit","Price";"EMT 1/2 conduit, 10 ft stick","each",6.4;"EMT 1/2 set-screw connector","C",48;"EMT 1/2 strap","C",31})`,
      ],
      refused: [
        '=CONDUIT.JOB.RECAP(Runs[#All],{"Line","Value";"Material",""})',
        `=CONDUIT.JOB.RECAP(${WITHOUT_SIZE},Bid[#All])`,
        '=CONDUIT.JOB.RECAP(Runs[#All],Bid[#All],,,,,,"Color")',
      ],
    },
    "JOB.ALTERNATES": {
      formula: ["an alternate = total of the recap with it alone − total of the recap without any"],
      more: [
        `=CONDUIT.JOB.ALTERNATES(${ONE_RUN},${BID},{"Item","Price";"EMT 1/2 conduit, 10 ft stick",6.4;"EMT 1/2 strap",0.31;"Sign",40},,,,,,,{"Item","Quantity","Alternate";"Sign",2,"A1"})`,
      ],
      refused: [
        `=CONDUIT.JOB.ALTERNATES(${WITHOUT_SIZE},Bid[#All])`,
        '=CONDUIT.JOB.ALTERNATES(Runs[#All],{"Line","Value";"Material",""})',
      ],
    },
    "JOB.CHANGE.ORDER": {
      formula: ["difference of a line = its amount in the recap after less its amount in the recap before"],
      more: [
        `=CONDUIT.JOB.CHANGE.ORDER(${ONE_RUN},${ONE_RUN.replace("60", "190")},${BID},{"Item","Unit","Price";"EMT 1/2 conduit, 10 ft stick","each",6.4;"EMT 1/2 strap","C",31})`,
      ],
      refused: [
        `=CONDUIT.JOB.CHANGE.ORDER(${WITHOUT_SIZE},Runs[#All],Bid[#All])`,
        '=CONDUIT.JOB.CHANGE.ORDER(Issued[#All],Runs[#All],{"Line","Value";"Material",""})',
      ],
    },
    "JOB.HOURS": {
      formula: [
        "hours in all = Σ quantity · minutes / 60 · (1 + p₁) · (1 + p₂) …, or · (1 + p₁ + p₂ …) where a rule says added",
      ],
      more: [`=CONDUIT.JOB.HOURS(${ONE_RUN},{"Operation","Hours","Unit";"conduit",4.5,"C ft";"strap",5,"C"})`],
      refused: [
        '=CONDUIT.JOB.HOURS(Runs[#All],{"Operation";"bend"})',
        '=CONDUIT.JOB.HOURS(Runs[#All],Labor[#All],,"Color")',
      ],
    },
    "JOB.OVERVIEW": {
      formula: [
        "material by class: Σ of extensions, to the cent; waste: what the cutting plan leaves and does not keep, kerfs included",
      ],
      more: [
        `=CONDUIT.JOB.OVERVIEW(${ONE_RUN},{"Item","Unit","Price";"EMT 1/2 conduit, 10 ft stick","each",6.4;"EMT 1/2 strap","C",31},{"Operation","Hours","Unit";"conduit",4.5,"C ft"})`,
      ],
      refused: [
        `=CONDUIT.JOB.OVERVIEW(${WITHOUT_SIZE})`,
        '=CONDUIT.JOB.OVERVIEW(Runs[#All],{"Item","Unit";"Box","each"})',
      ],
    },
    "CREW.RATE": {
      formula: [
        "rate = base · t + fringes + (base · t + paid fringes) · burden / 100; a crew: Σ number · rate / Σ number",
      ],
      more: [
        '=CONDUIT.CREW.RATE({"Worker","Base","Fringes","Of that paid","Burden";"Electrician",37.4,17.16,11.1,8.45})',
        '=CONDUIT.CREW.RATE({"Crew","Worker","Number","Base","Fringes";"A","Foreman",1,44,18;"A","Electrician",3,38,17},"A")',
      ],
      refused: [
        '=CONDUIT.CREW.RATE({"Worker","Base";"Electrician",0})',
        '=CONDUIT.CREW.RATE({"Crew","Worker","Base";"A","Electrician",38},"B")',
        '=CONDUIT.CREW.RATE({"Worker","Base";"Electrician",38},,"late")',
      ],
    },
  },
};
