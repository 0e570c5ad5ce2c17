import table from "../data/imc.json";
import shoes from "../data/shoes.json";
import type { RacewayRecord } from "./record";
import { rmc } from "./rmc";

/** Intermediate metal conduit: steel and threaded as rigid is. */
export const imc = {
  ...rmc,
  words: ["imc", "intermediate", "intermediatemetalconduit", "intermediatemetal"],
  article: "342",
  sizes: table.rows,
  shoes: { deducts: shoes.rows.IMC, onEmt: { sizesUp: 1, source: "IMC on EMT shoe" } },
} as const satisfies RacewayRecord;
