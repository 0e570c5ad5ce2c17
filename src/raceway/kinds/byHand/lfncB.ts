import table from "../../data/lfncB.json";
import supports from "../../data/supports.json";
import type { RacewayRecord } from "../record";

/** Liquidtight flexible nonmetallic conduit, type B: laid by hand. */
export const lfncB = {
  words: ["lfncb", "liquidtightnonmetallicb"],
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
