import expansion from "../data/expansion.json";
import table from "../data/pvc40.json";
import supports from "../data/supports.json";
import type { RacewayRecord } from "./record";

/** Rigid PVC conduit, schedule 40. */
export const pvc40 = {
  words: ["pvc40", "pvcsch40", "pvcsched40", "pvcschedule40", "sch40pvc", "schedule40pvc", "schedule40", "sch40"],
  article: "352",
  sizes: table.rows,
  stick: { value: 120, source: "common stick" },
  threaded: false,
  elbows: "PVC",
  ground: "never",
  supports: { rule: "pvcSupports", spacing: supports.pvc, fromEnd: supports.fromEnd },
  expansion: { ...expansion.pvc, rule: "expansion" },
  styles: ["cement"],
  shoes: { deducts: {} },
} as const satisfies RacewayRecord;
