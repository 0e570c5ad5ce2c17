import table from "../../data/ent.json";
import supports from "../../data/supports.json";
import type { RacewayRecord } from "../record";

/** Electrical nonmetallic tubing: pliable, laid by hand. */
export const ent = {
  words: ["ent", "electricalnonmetallictubing"],
  article: "362",
  sizes: table.rows,
  threaded: false,
  flexible: true,
  elbows: "none",
  ground: "never",
  supports: { rule: "supports", ...supports.tubingNonmetallic },
  notIn: ["buried"],
  styles: ["snap-on"],
  shoes: { deducts: {} },
} as const satisfies RacewayRecord;
