import { ARROW_LEAD, bend, markedBend, shoe } from "../figures/scenes";
import type { Family } from "./types";

export const stubs: Family = {
  file: "stubs",
  title: "Stubs and back-to-back 90s",
  about: "Where the mark of a 90 goes, measured from the end of the conduit or from the back of another 90.",
  pages: {
    "STUB.DEDUCT": {
      formula: ["deduct = R + OD/2 + arrow lead"],
      figure: {
        draw: shoe,
        caption: "A shoe of 4 in. radius for 1/2 EMT, and how far its signs stand from the arrow.",
      },
      refused: ["=CONDUIT.STUB.DEDUCT(0,0.706)", "=CONDUIT.STUB.DEDUCT(4,-0.706)"],
    },
    "STUB.MARK": {
      formula: ["mark = stub − deduct"],
      figure: {
        draw: () =>
          markedBend({ kind: "stub-up", stub: 10 }, 5 + ARROW_LEAD, [{ fromStart: -ARROW_LEAD, lineUp: "arrow" }]),
        caption: "The stub is measured from its end to the back of the finished 90.",
      },
      refused: ["=CONDUIT.STUB.MARK(4,5)", "=CONDUIT.STUB.MARK(10,-5)"],
    },
    "BACK.MARK": {
      formula: ["for the star: mark = distance", "for the arrow: mark = distance − deduct"],
      figure: {
        draw: () => bend({ kind: "back-to-back", distance: 20, stub: 12 }),
        caption: "Two 90s, measured from back to back.",
      },
      more: ["=CONDUIT.BACK.MARK(20,5)"],
      refused: ["=CONDUIT.BACK.MARK(4,5)", "=CONDUIT.BACK.MARK(0)"],
    },
  },
};
