import { conduit } from "../figures/scenes";
import type { Family } from "./types";

export const tables: Family = {
  file: "tables",
  title: "The trade's tables",
  about: "Dimensions, fill, supports, expansion and boxes. The code's rules are by edition: 2020 or 2023.",
  pages: {
    DATA: {
      more: ['=CONDUIT.DATA("EMT","1/2","outside diameter source")', '=CONDUIT.DATA("RMC","2","minimum radius")'],
      refused: [
        '=CONDUIT.DATA("copper","1/2","area")',
        '=CONDUIT.DATA("EMT","6","area")',
        '=CONDUIT.DATA("EMT",46024,"area")',
      ],
    },
    FILL: {
      formula: ["fill = sum of the conductors' areas / area inside the raceway"],
      more: ['=CONDUIT.FILL("EMT","1/2","9 #12 THHN","rule")', '=CONDUIT.FILL("EMT","1/2","9 #12 THHN","limit",20)'],
      refused: ['=CONDUIT.FILL("EMT","1/2","9 #12 WIRE")', '=CONDUIT.FILL("EMT","1","3 #12 THHN","ratio",0)'],
    },
    "FILL.SIZE": {
      formula: ["the smallest size for which fill ≤ limit"],
      refused: ['=CONDUIT.FILL.SIZE("EMT","90 #2 THHN")', '=CONDUIT.FILL.SIZE("EMT","some wires")'],
    },
    SUPPORTS: {
      formula: ["count = (length − 72) / spacing, rounded up, + 1; at least 1"],
      figure: {
        draw: () => {
          const path = {
            points: [
              [0, 0, 0],
              [300, 0, 0],
            ] as const,
            radii: [],
          };
          return conduit("Straight run of 25 ft", { path, straps: [36, 150, 264] }, "elevation");
        },
        caption: "25 ft of 3/4 EMT: a strap within 3 ft of each box, and none more than 10 ft from the next.",
      },
      more: ['=CONDUIT.SUPPORTS("RMC","2",480,"straight","rule")'],
      refused: ['=CONDUIT.SUPPORTS("EMT","3/4",300,"straight")', '=CONDUIT.SUPPORTS("EMT","3/4",-3)'],
    },
    EXPANSION: {
      formula: [
        "change = rate · length · temperature change; PVC 3.38 · 10⁻⁵, steel 6.5 · 10⁻⁶, aluminum 1.3 · 10⁻⁵ for 1 °F",
      ],
      more: [
        '=CONDUIT.EXPANSION("PVC 40",1200,100,"fitting")',
        '=CONDUIT.EXPANSION("RMC",1200,100)',
        '=CONDUIT.EXPANSION("PVC 80","50 ft",-40)',
      ],
      refused: ['=CONDUIT.EXPANSION("EMT",1200,100,"fitting")', '=CONDUIT.EXPANSION("PVC 40",1200,600)'],
    },
    PULLBOX: {
      formula: [
        "straight: 8 · largest trade size",
        "angle, U, splice: 6 · largest + the others in the same row",
        "between: 6 · the larger of the two",
      ],
      more: ['=CONDUIT.PULLBOX("2","straight","rule")', '=CONDUIT.PULLBOX("3","angle","cover",,"250")'],
      refused: ['=CONDUIT.PULLBOX({"3","2"},"diagonal")', '=CONDUIT.PULLBOX("thick")'],
    },
  },
};
