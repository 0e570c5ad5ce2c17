import table from "../../data/lfncA.json";
import supports from "../../data/supports.json";
import type { RacewayRecord } from "../record";

/** Liquidtight flexible nonmetallic conduit, type A: laid by hand. */
export const lfncA = {
  words: ["lfnca", "liquidtightnonmetallica"],
  article: "356",
  sizes: table.rows,
  threaded: false,
  flexible: true,
  elbows: "none",
  ground: "never",
  supports: { rule: "supports", ...supports.liquidtightNonmetallic },
  styles: ["liquidtight"],
  shoes: { deducts: {} },
} as const satisfies RacewayRecord;
