import expansion from "../data/expansion.json";
import table from "../data/emt.json";
import shoes from "../data/shoes.json";
import supports from "../data/supports.json";
import type { RacewayRecord } from "./record";

/** Electrical metallic tubing of steel. */
export const emt = {
  words: ["emt", "thinwall", "electricalmetallictubing"],
  article: "358",
  sizes: table.rows,
  stick: { value: 120, source: "STI stick" },
  threaded: false,
  elbows: "metal",
  ground: "always",
  supports: { rule: "supports", spacing: supports.metal, fromEnd: supports.fromEnd },
  expansion: { ...expansion.steel, rule: "metalExpansion" },
  styles: ["set-screw", "compression"],
  shoes: { deducts: shoes.rows.EMT },
} as const satisfies RacewayRecord;
