import { sizeInWords } from "../../wiring/wireSizes";
import type { Conductors } from "../../wiring/conductors";
import { readConductors } from "../../wiring/readConductors";
import type { Run } from "../../shop/run/runsTable";
import type { Amount } from "./amount";
import type { Item } from "./item";
import { wireTerminations } from "./operationAmounts";
import type { RuleBook } from "../../rules/rules";

/**
 * Conductors of a run [ft]: its length, and make-up at its two ends and at each box between; and its terminations, where those are counted.
 *
 * @param length developed length of the conduit [in]
 * @param between boxes between its ends
 * @throws InputError or NotListedError when the Conductors cell cannot be read
 */
export function conductorAmounts(run: Run, length: number, between: number, rules: RuleBook): Amount[] {
  if (run.conductors === "") return [];
  const ends = 2 * rules.number("Conductor make-up at each end");
  const boxes = between * rules.number("Conductor make-up at each pull box");
  const feet = (length + ends + boxes) / 12;
  const kinds = readConductors(run.conductors, "Conductors");
  return [
    ...kinds.map((kind) => ({ item: conductorItem(kind), each: kind.count * feet })),
    ...wireTerminations(
      kinds.map((kind) => ({ item: conductorItem(kind), each: kind.count })),
      rules,
    ),
  ];
}

function conductorItem({ size, insulation, compact, metal }: Conductors): Item {
  return {
    name: `${sizeInWords(size)} ${insulation}${compact ? " compact" : ""}${metal === "aluminum" ? " aluminum" : ""} conductor`,
    kind: "conductor",
    unit: "ft",
    bought: true,
  };
}
