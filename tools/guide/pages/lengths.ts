import type { Family } from "./types";

export const lengths: Family = {
  file: "lengths",
  title: "Lengths",
  about: "Reading lengths as the trade writes them, and writing them to a part of an inch.",
  pages: {
    LENGTH: {
      formula: ["inches = 12 · feet + inches + fraction; inches = mm / 25.4"],
      more: ['=CONDUIT.LENGTH("1028 mm")', '=CONDUIT.LENGTH("7 1/2")'],
      refused: ['=CONDUIT.LENGTH("3 yards")', '=CONDUIT.LENGTH("")'],
    },
    "LENGTH.TEXT": {
      formula: ["parts = inches · denominator, rounded to a whole number"],
      more: ['=CONDUIT.LENGTH.TEXT(40.49,8,"inches")', '=CONDUIT.LENGTH.TEXT(40.49,,"mm")'],
      refused: ["=CONDUIT.LENGTH.TEXT(40.49,5)", '=CONDUIT.LENGTH.TEXT(40.49,16,"yards")'],
    },
  },
};
