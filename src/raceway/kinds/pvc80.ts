import table from "../data/pvc80.json";
import { pvc40 } from "./pvc40";
import type { RacewayRecord } from "./record";

/** Rigid PVC conduit, schedule 80: as schedule 40, but for its dimensions. */
export const pvc80 = {
  ...pvc40,
  words: ["pvc80", "pvcsch80", "pvcsched80", "pvcschedule80", "sch80pvc", "schedule80pvc", "schedule80", "sch80"],
  sizes: table.rows,
} as const satisfies RacewayRecord;
