import table from "../../data/fmc.json";
import supports from "../../data/supports.json";
import type { RacewayRecord } from "../record";

/** Flexible metal conduit: laid by hand. */
export const fmc = {
  words: ["fmc", "flex", "flexiblemetalconduit", "flexiblemetal", "flexmetal"],
  article: "348",
  sizes: table.rows,
  threaded: false,
  flexible: true,
  elbows: "none",
  ground: "short lengths",
  supports: { rule: "supports", ...supports.flexibleMetal },
  notIn: ["buried", "in concrete", "wet"],
  styles: ["flex"],
  shoes: { deducts: {} },
} as const satisfies RacewayRecord;
