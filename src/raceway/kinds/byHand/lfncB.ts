import table from "../../data/lfncB.json";
import type { RacewayRecord } from "../record";
import { lfncA } from "./lfncA";

/** Liquidtight flexible nonmetallic conduit, type B: as type A, but for its dimensions. */
export const lfncB = {
  ...lfncA,
  words: ["lfncb", "liquidtightnonmetallicb"],
  sizes: table.rows,
} as const satisfies RacewayRecord;
