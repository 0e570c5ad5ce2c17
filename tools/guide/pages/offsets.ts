import { offsetSpacing } from "../../../src/bends/shapes/offset";
import { setback } from "../../../src/geometry/arc";
import { ARROW_LEAD, bend, markedBend } from "../figures/scenes";
import { sideBySide } from "../figures/sideBySide";
import type { Family, Figure } from "./types";

const offset: Figure = {
  draw: () => bend({ kind: "offset", rise: 6, angle: 30 }),
  caption: "An offset of 6 in. with bends of 30° in 1/2 EMT, radius 4 in.",
};

const parallel: Figure = {
  draw: () => {
    const [rise, angle, spacing, radius] = [6, 30, 4, 4];
    const run = rise / Math.tan((angle * Math.PI) / 180);
    const neighbors = [0, 1, 2].map((place) => {
      const [x, y] = [place * setback(angle, spacing), -place * spacing];
      const corners = [
        [-14, y],
        [x, y],
        [x + run, y + rise],
        [x + run + 14, y + rise],
      ] as const;
      return { corners, radii: [radius, radius] };
    });
    return sideBySide("Three parallel offsets", neighbors, spacing, true);
  },
  caption: "Equal offsets stay evenly spaced when each next conduit's marks move on by the stagger.",
};

export const offsets: Family = {
  file: "offsets",
  title: "Offsets",
  about: "Two equal bends that move the conduit aside: marks, shrink, angle, and offsets side by side.",
  pages: {
    "OFFSET.MULTIPLIER": {
      formula: ["multiplier = 1 / sin A"],
      more: ['=CONDUIT.OFFSET.MULTIPLIER(22.5,"table")'],
      refused: ['=CONDUIT.OFFSET.MULTIPLIER(25,"table")', "=CONDUIT.OFFSET.MULTIPLIER(0)"],
    },
    "OFFSET.SPACING": {
      formula: [
        "spacing = rise / sin A − g, with the gain g = 2R · tan(A/2) − R · A · π/180°",
        "sharp corners: rise / sin A",
      ],
      figure: {
        draw: () => {
          const first = { fromStart: -ARROW_LEAD, lineUp: "arrow" } as const;
          const second = { fromStart: offsetSpacing(6, 30, 4) - ARROW_LEAD, lineUp: "arrow" } as const;
          return markedBend({ kind: "offset", rise: 6, angle: 30 }, 20, [first, second]);
        },
        caption: "Marks 1 and 2 lie 11.951 in. apart along the conduit, wherever the first one stands.",
      },
      more: ["=CONDUIT.OFFSET.SPACING(6,30)", '=CONDUIT.OFFSET.SPACING(6,30,"table")'],
      refused: [
        "=CONDUIT.OFFSET.SPACING(0,30)",
        "=CONDUIT.OFFSET.SPACING(6,120)",
        "=CONDUIT.OFFSET.SPACING(1,45,12)",
        '=CONDUIT.OFFSET.SPACING(6,25,"table")',
      ],
    },
    "OFFSET.SHRINK": {
      formula: [
        "shrink = rise · tan(A/2) − 2g, with the gain g = 2R · tan(A/2) − R · A · π/180°",
        "sharp corners: rise · tan(A/2)",
      ],
      figure: offset,
      more: ["=CONDUIT.OFFSET.SHRINK(6,30)", '=CONDUIT.OFFSET.SHRINK(6,30,"table")'],
      refused: ["=CONDUIT.OFFSET.SHRINK(-6,30)", "=CONDUIT.OFFSET.SHRINK(1,45,12)"],
    },
    "OFFSET.ANGLE": {
      formula: ["rise / sin A − g = spacing, solved for A", "sharp corners: A = arcsin(rise / spacing)"],
      figure: offset,
      more: ["=CONDUIT.OFFSET.ANGLE(6,12,4)"],
      refused: ["=CONDUIT.OFFSET.ANGLE(12,6)", '=CONDUIT.OFFSET.ANGLE(6,"table")'],
    },
    "OFFSET.STAGGER": {
      formula: ["shift = spacing · tan(A/2)"],
      figure: parallel,
      more: ["=CONDUIT.OFFSET.STAGGER(4,90)"],
      refused: ["=CONDUIT.OFFSET.STAGGER(0,30)", "=CONDUIT.OFFSET.STAGGER(4,180)"],
    },
    "OFFSET.PARALLEL": {
      formula: [
        "first mark of conduit n = (n − 1) · spacing · tan(A/2)",
        "second mark = first mark + the spacing of OFFSET.SPACING",
      ],
      figure: parallel,
      refused: ["=CONDUIT.OFFSET.PARALLEL(6,30,4,0)", "=CONDUIT.OFFSET.PARALLEL(6,30,4,2.5)"],
    },
    "OFFSET.ROLLING": {
      formula: ["true offset = √(rise² + roll²)", "plane = the angle whose tangent is roll / rise"],
      figure: {
        draw: () => bend({ kind: "rolling offset", rise: 8, roll: 12, angle: 45 }),
        caption: "Bend the true offset like any other, then lean it by the plane.",
      },
      more: ["=CONDUIT.OFFSET.ROLLING(8,-12)"],
      refused: ["=CONDUIT.OFFSET.ROLLING(0,0)", '=CONDUIT.OFFSET.ROLLING(8,"a bit")'],
    },
    "OFFSET.BOX": {
      formula: ["A from OFFSET.ANGLE(rise, second mark − first mark)", "shrink from OFFSET.SHRINK(rise, A)"],
      figure: {
        draw: () => bend({ kind: "box offset", rise: 0.523, angle: 5 }),
        caption: "The conduit lies on the surface; the knockout stands a little off it.",
      },
      more: ["=CONDUIT.OFFSET.BOX(0.523,2,8,4)"],
      refused: ["=CONDUIT.OFFSET.BOX(8)", "=CONDUIT.OFFSET.BOX(0.5,8,2)"],
    },
    "OFFSET.COMPARE": {
      formula: ["handbook off by = handbook − true arcs"],
      figure: offset,
      refused: ["=CONDUIT.OFFSET.COMPARE(6,30,0)", "=CONDUIT.OFFSET.COMPARE(1,45,12)"],
    },
  },
};
