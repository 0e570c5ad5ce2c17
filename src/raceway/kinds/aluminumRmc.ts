import expansion from "../data/expansion.json";
import weights from "../data/aluminumRmc.json";
import table from "../data/rmc.json";
import type { TradeSize } from "../tradeSize";
import { bores } from "./bores";
import type { DimensionRows, RacewayRecord } from "./record";
import { rmc } from "./rmc";

/** Rigid metal conduit of aluminum: bent on the shoes of RMC; how far it springs back is to be measured. */
export const aluminumRmc = {
  ...rmc,
  words: ["aluminumrmc", "rmcaluminum", "aluminumrigid", "rigidaluminum", "alrmc", "aluminiumrmc", "arc"],
  sizes: weighed(bores(table.rows, "RMC of other metal")),
  expansion: { ...expansion.aluminum, rule: "metalExpansion" },
  styles: ["threaded", "compression"],
  shoes: { of: rmc.shoes, name: "RMC", sizesUp: 0 },
} as const satisfies RacewayRecord;

function weighed(rows: DimensionRows): DimensionRows {
  const { source } = weights;
  return Object.fromEntries(
    Object.entries(rows).map(([size, row]) => [
      size,
      { ...row, weight: { value: weights.rows[size as TradeSize], source } },
    ]),
  );
}
