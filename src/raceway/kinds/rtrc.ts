import expansion from "../data/expansion.json";
import table from "../data/rtrc.json";
import supports from "../data/supports.json";
import type { RacewayRecord } from "./record";

/** Reinforced thermosetting resin conduit: its bends are bought. Table 4 has no bore for it, so its fill is not known. */
export const rtrc = {
  words: ["rtrc", "fiberglass", "fiberglassconduit", "fre", "reinforcedthermosettingresinconduit"],
  article: "355",
  sizes: table.rows,
  stick: { value: 120, source: "common stick" },
  threaded: false,
  elbows: "PVC",
  ground: "never",
  supports: { rule: "pvcSupports", spacing: supports.pvc, fromEnd: supports.fromEnd },
  expansion: { ...expansion.rtrc, rule: "rtrcExpansion" },
  styles: ["cement"],
  shoes: { deducts: {} },
} as const satisfies RacewayRecord;
