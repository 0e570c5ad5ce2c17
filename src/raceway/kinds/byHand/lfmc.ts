import table from "../../data/lfmc.json";
import supports from "../../data/supports.json";
import type { RacewayRecord } from "../record";

/** Liquidtight flexible metal conduit: laid by hand. */
export const lfmc = {
  words: ["lfmc", "liquidtightflexiblemetalconduit", "liquidtightmetal", "liquidtightflexiblemetal"],
  article: "350",
  sizes: table.rows,
  threaded: false,
  flexible: true,
  elbows: "none",
  ground: "short lengths",
  supports: { rule: "supports", ...supports.flexibleMetal },
  styles: ["liquidtight"],
  shoes: { deducts: {} },
} as const satisfies RacewayRecord;
