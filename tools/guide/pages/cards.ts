import type { Family } from "./types";

const ROUTE = "up 36, east 60, offset 6 up at 30, ahead 40";

export const cards: Family = {
  file: "cards",
  title: "Cards",
  about:
    "A bend or a run as one cell with fields, where Excel shows cards (Microsoft 365 and the web); elsewhere, and here, " +
    "the value that stands for it.",
  pages: {
    "BEND.CARD": {
      formula: [
        "gain = sum over the bends of 2R · tan(A/2) − R · A · π/180°",
        "shrink = length along the corners − advance − gain",
      ],
      more: [
        `=CONDUIT.BEND.CARD("${ROUTE}","EMT","1/2")`,
        `=CONDUIT.BEND.CARD("${ROUTE}","EMT","1/2",,2)`,
        '=CONDUIT.BEND.CARD("east 40, saddle 4 up at 45, ahead 40","EMT","1/2")',
        '=CONDUIT.BEND.CARD("up 36, east 60","PVC 40","1/2")',
      ],
      refused: [
        `=CONDUIT.BEND.CARD("${ROUTE}","EMT","1/2",,3)`,
        '=CONDUIT.BEND.CARD("up 36","EMT","1/2")',
        '=CONDUIT.BEND.CARD("up 36, sideways 60","EMT","1/2")',
      ],
    },
    "RUN.CARD": {
      more: [
        `=CONDUIT.RUN.CARD("${ROUTE}","EMT","1/2",Shoes[#All])`,
        '=CONDUIT.LENGTH.TEXT(CONDUIT.RUN.CARD("up 36, east 60","EMT","1/2"))',
      ],
      refused: ['=CONDUIT.RUN.CARD("up 36, sideways 60","EMT","1/2")', '=CONDUIT.RUN.CARD("up 36","EMT","1/2",,1999)'],
    },
  },
};
