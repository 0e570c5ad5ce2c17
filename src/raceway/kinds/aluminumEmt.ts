import expansion from "../data/expansion.json";
import table from "../data/emt.json";
import supports from "../data/supports.json";
import { bores } from "./bores";
import type { RacewayRecord } from "./record";

/** Electrical metallic tubing of aluminum: the code's article and table 4 are those of EMT, so that bore and outside are; no wall and weight were found in print, and no shoe: measure your own. */
export const aluminumEmt = {
  words: ["aluminumemt", "emtaluminum", "aluminiumemt", "alemt"],
  article: "358",
  sizes: bores(table.rows, "EMT aluminum"),
  stick: { value: 120, source: "common stick" },
  threaded: false,
  elbows: "metal",
  ground: "always",
  supports: { rule: "supports", spacing: supports.metal, fromEnd: supports.fromEnd },
  expansion: { ...expansion.aluminum, rule: "metalExpansion" },
  styles: ["set-screw", "compression"],
  shoes: { deducts: {} },
} as const satisfies RacewayRecord;
