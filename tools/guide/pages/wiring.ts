import type { Family } from "./types";

export const wiring: Family = {
  file: "wiring",
  title: "Conductors and boxes",
  about: "Box volume, ampacity, grounding conductors and cover. Planning aids: the code in force decides.",
  pages: {
    "BOX.FILL": {
      formula: ["allowances: 18 1.5, 16 1.75, 14 2, 12 2.25, 10 2.5, 8 3, 6 5 in³"],
      more: ['=CONDUIT.BOX.FILL("8 #12, 2 #10","1 #10","1 #12")'],
      refused: ['=CONDUIT.BOX.FILL("some wires")', '=CONDUIT.BOX.FILL("3 #4")'],
    },
    AMPACITY: {
      formula: ["table value · adjustment for the number · correction for the air around"],
      more: [
        '=CONDUIT.AMPACITY("250",3,30,75,,"aluminum")',
        '=CONDUIT.AMPACITY("12",9,45)',
        '=CONDUIT.AMPACITY("12",9,45,90,"correction")',
      ],
      refused: ['=CONDUIT.AMPACITY("12",3,90)', '=CONDUIT.AMPACITY("7")'],
    },
    "GROUND.SIZE": {
      formula: [
        "table by breaker; in proportion: cmil · installed / needed, the next size up, at most the circuit's own",
      ],
      more: ["=CONDUIT.GROUND.SIZE(200)", '=CONDUIT.GROUND.SIZE(60,"6","4")'],
      refused: ["=CONDUIT.GROUND.SIZE(7000)", '=CONDUIT.GROUND.SIZE(50,"1","8")'],
    },
    "RISER.SUPPORTS": {
      formula: ["none up to the spacing; above it rise / spacing, rounded up"],
      more: ['=CONDUIT.RISER.SUPPORTS("4/0","90\'")', '=CONDUIT.RISER.SUPPORTS("4/0",1200,"aluminum","spacing")'],
      refused: ['=CONDUIT.RISER.SUPPORTS("7",1200)', '=CONDUIT.RISER.SUPPORTS("4/0",0)'],
    },
    COVER: {
      more: ['=CONDUIT.COVER("under a road","PVC 40")', '=CONDUIT.COVER("general","RMC","rule",2020)'],
      refused: ['=CONDUIT.COVER("the moon","RMC")', '=CONDUIT.COVER("under a building","direct")'],
    },
  },
};
