import expansion from "../data/expansion.json";
import table from "../data/imc.json";
import shoes from "../data/shoes.json";
import supports from "../data/supports.json";
import type { RacewayRecord } from "./record";

/** Intermediate metal conduit. */
export const imc = {
  words: ["imc", "intermediate", "intermediatemetalconduit", "intermediatemetal"],
  article: "342",
  sizes: table.rows,
  stick: { value: 120, source: "STI stick" },
  threaded: true,
  elbows: "metal",
  supports: { rule: "supports", spacing: supports.metal, straightThreaded: supports.straightThreaded },
  expansion: { ...expansion.steel, rule: "metalExpansion" },
  styles: ["threaded", "set-screw", "compression"],
  shoes: { deducts: shoes.rows.IMC, onEmt: { sizesUp: 1, source: "IMC on EMT shoe" } },
} as const satisfies RacewayRecord;
