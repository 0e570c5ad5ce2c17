import type { Family } from "./types";

export const pulling: Family = {
  file: "pulling",
  title: "Pulling",
  about: "Tension, its limits and how cables lie. Planning aids: the cable maker's limits decide.",
  pages: {
    "PULL.TENSION": {
      formula: [
        "leg: T + L · W · (f · w · cos A ± sin A)",
        "bend: T · e^(w · f · a), a in radians; the bend's own weight left out",
      ],
      refused: [
        '=CONDUIT.PULL.TENSION("east 100","EMT","1/2",0,1,0.3)',
        '=CONDUIT.PULL.TENSION("east 100","EMT","1/2",0.2,1,0.7)',
      ],
    },
    "PULL.LIMIT": {
      formula: ["number · stress · circular mils; 0.8 of it for more than three; at most 10,000 lb"],
      more: ['=CONDUIT.PULL.LIMIT(3,"500")', '=CONDUIT.PULL.LIMIT(3,"500","copper","grip")'],
      refused: ['=CONDUIT.PULL.LIMIT(0,"500")', '=CONDUIT.PULL.LIMIT(3,"5000")'],
    },
    "PULL.FACTOR": {
      formula: [
        "cradled: 1 + 4/3 · (d / (D − d))²",
        "triangular, and two side by side: 1 / √(1 − (d / (D − d))²)",
        "diamond: 1 + 2 · (d / (D − d))²; four and more otherwise: 1.4",
      ],
      more: [
        '=CONDUIT.PULL.FACTOR("EMT","2",0.689,3,,"jam")',
        '=CONDUIT.PULL.FACTOR("EMT","2",0.689,2)',
        '=CONDUIT.PULL.FACTOR("EMT","2",0.689,3,,"clearance")',
      ],
      refused: ['=CONDUIT.PULL.FACTOR("EMT","2",1.2,3)', '=CONDUIT.PULL.FACTOR("EMT","2",3,1)'],
    },
  },
};
