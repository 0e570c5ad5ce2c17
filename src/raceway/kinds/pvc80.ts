import expansion from "../data/expansion.json";
import table from "../data/pvc80.json";
import supports from "../data/supports.json";
import type { RacewayRecord } from "./record";

/** Rigid PVC conduit, schedule 80. */
export const pvc80 = {
  words: ["pvc80", "pvcsch80", "pvcsched80", "pvcschedule80", "sch80pvc", "schedule80pvc", "schedule80", "sch80"],
  article: "352",
  sizes: table.rows,
  stick: { value: 120, source: "common stick" },
  threaded: false,
  elbows: "PVC",
  supports: { rule: "pvcSupports", spacing: supports.pvc },
  expansion: { ...expansion.pvc, rule: "expansion" },
  styles: ["cement"],
  shoes: { deducts: {} },
} as const satisfies RacewayRecord;
