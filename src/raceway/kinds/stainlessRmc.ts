import table from "../data/rmc.json";
import { bores } from "./bores";
import type { RacewayRecord } from "./record";
import { rmc } from "./rmc";

/** Rigid metal conduit of stainless steel: bent on the shoes of RMC; no weight and no expansion were found in print. */
export const stainlessRmc = {
  words: ["stainlessrmc", "rmcstainless", "stainlessrigid", "rigidstainless", "stainlesssteelrmc", "ssrmc"],
  article: "344",
  sizes: bores(table.rows, "RMC of other metal"),
  stick: { value: 120, source: "STI stick" },
  threaded: true,
  elbows: "metal",
  ground: "always",
  supports: rmc.supports,
  styles: ["threaded"],
  shoes: { of: rmc.shoes, name: "RMC", sizesUp: 0 },
} as const satisfies RacewayRecord;
