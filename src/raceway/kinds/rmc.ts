import expansion from "../data/expansion.json";
import table from "../data/rmc.json";
import shoes from "../data/shoes.json";
import supports from "../data/supports.json";
import type { RacewayRecord } from "./record";

/** Rigid metal conduit of steel. */
export const rmc = {
  words: [
    "rmc",
    "rigid",
    "rigidmetalconduit",
    "rigidmetal",
    "rigidsteel",
    "rigidconduit",
    "galvanizedrigid",
    "grc",
    "grs",
  ],
  article: "344",
  sizes: table.rows,
  stick: { value: 120, source: "STI stick" },
  threaded: true,
  elbows: "metal",
  ground: "always",
  supports: {
    rule: "supports",
    spacing: supports.metal,
    fromEnd: supports.fromEnd,
    straightThreaded: supports.straightThreaded,
  },
  expansion: { ...expansion.steel, rule: "metalExpansion" },
  styles: ["threaded", "set-screw", "compression"],
  shoes: { deducts: shoes.rows.RMC, onEmt: { sizesUp: 1, source: "rigid on EMT shoe" } },
} as const satisfies RacewayRecord;
