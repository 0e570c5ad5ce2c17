import expansion from "../data/expansion.json";
import coat from "../data/coat.json";
import table from "../data/rmc.json";
import type { Sourced } from "../sources";
import { rmc } from "./rmc";
import type { DimensionRows } from "./record";
import type { RacewayRecord } from "./record";

/** Rigid metal conduit with a coat of PVC: bent on the shoe of RMC one size up. */
export const coatedRmc = {
  words: ["pvccoatedrmc", "pvccoatedrigid", "pvccoated", "pvccoatedgrc", "coatedrmc", "coatedrigid", "pvcrmc"],
  article: "344",
  sizes: coated(table.rows),
  stick: { value: 120, source: "common stick" },
  threaded: true,
  elbows: "metal",
  ground: "always",
  supports: rmc.supports,
  expansion: { ...expansion.steel, rule: "metalExpansion" },
  styles: ["threaded"],
  shoes: { of: rmc.shoes, name: "RMC", sizesUp: 1 },
} as const satisfies RacewayRecord;

/** The coat is added outside, the bore stays; no wall and weight were found in print. */
function coated(rows: typeof table.rows): DimensionRows {
  return Object.fromEntries(
    Object.entries(rows).map(([size, { outsideDiameter, insideDiameter, area }]) => [
      size,
      {
        outsideDiameter: overCoat(outsideDiameter),
        insideDiameter: { ...insideDiameter, source: "RMC inside" },
        area: { ...area, source: "RMC inside" },
      },
    ]),
  );
}

/** Tables give thousandths: the sum is rounded so that it shows no more. */
function overCoat({ value }: Sourced): Sourced {
  return { value: Number((value + 2 * coat.thickness.value).toFixed(3)), source: coat.thickness.source };
}
