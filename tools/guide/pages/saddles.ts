import { saddleSpacing } from "../../../src/bends/shapes/saddle";
import { ARROW_LEAD, bend, markedBend } from "../figures/scenes";
import type { Family, Figure } from "./types";

const three: Figure = {
  draw: () => bend({ kind: "three-bend saddle", height: 4, angle: 45 }),
  caption: "The crest of the center bend clears the obstacle; each outer bend has half of its angle.",
};

const marked: Figure = {
  draw: () => {
    const spacing = saddleSpacing(4, 45, 4);
    const marks = [
      { fromStart: -ARROW_LEAD, lineUp: "arrow" },
      { fromStart: spacing, lineUp: "notch" },
      { fromStart: 2 * spacing + ARROW_LEAD, lineUp: "arrow" },
    ] as const;
    return markedBend({ kind: "three-bend saddle", height: 4, angle: 45 }, 20, marks);
  },
  caption:
    "Mark 2 is the middle of the center bend. It is 12.003 in. along the conduit from there to the outer end of each " +
    "outer bend; on this shoe the arrow's marks 1 and 3 stand 0.647 in. farther out.",
};

export const saddles: Family = {
  file: "saddles",
  title: "Saddles",
  about: "Over an obstacle and back to the same line: three bends, or four over something wide.",
  pages: {
    "SADDLE.SPACING": {
      formula: [
        "corner = height + R · (1/cos(A/2) − 1)",
        "spacing = T′ + corner / sin(A/2) − g′ − g/2",
        "T′ and g′ are setback and gain of an outer bend (A/2), g the gain of the center bend (A)",
        "sharp corners: height / sin(A/2)",
      ],
      figure: marked,
      more: [
        "=CONDUIT.SADDLE.SPACING(4,45)",
        '=CONDUIT.SADDLE.SPACING(4,45,"table")',
        '=CONDUIT.SADDLE.SPACING(4,45,4,"corner")',
      ],
      refused: [
        "=CONDUIT.SADDLE.SPACING(0.1,45,20)",
        '=CONDUIT.SADDLE.SPACING(4,40,"table")',
        '=CONDUIT.SADDLE.SPACING(4,45,4,"top")',
      ],
    },
    "SADDLE.SHRINK": {
      formula: [
        "shrink = corner · tan(A/4) − g′ − g/2, the letters as in SADDLE.SPACING",
        "sharp corners: height · tan(A/4)",
      ],
      figure: three,
      more: ["=CONDUIT.SADDLE.SHRINK(4,45,4)"],
      refused: ["=CONDUIT.SADDLE.SHRINK(0,45)", "=CONDUIT.SADDLE.SHRINK(0.1,45,20)"],
    },
    "SADDLE.FOUR": {
      formula: [
        "marks 1 and 2, 3 and 4: the spacing of OFFSET.SPACING",
        "marks 2 and 3: width + R · A · π/180° (sharp corners: width)",
      ],
      figure: {
        draw: () => bend({ kind: "four-bend saddle", height: 3, over: 12, angle: 30 }),
        caption: "Two equal offsets; the conduit is straight over the whole width.",
      },
      more: ["=CONDUIT.SADDLE.FOUR(3,12,30,4)"],
      refused: ["=CONDUIT.SADDLE.FOUR(3,-1,30)", "=CONDUIT.SADDLE.FOUR(0.5,12,45,8)"],
    },
    "SADDLE.COMPARE": {
      formula: ["crest made = height + error of the spacing · sin(A/2)"],
      figure: three,
      refused: ["=CONDUIT.SADDLE.COMPARE(4,45,40)", "=CONDUIT.SADDLE.COMPARE(4,0,4)"],
    },
  },
};
