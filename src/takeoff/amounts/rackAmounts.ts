import { dimension } from "../../raceway/dimensions";
import type { RackMember } from "../../shop/cells/rack";
import { isUserError } from "../../units/errors";
import { show } from "../../units/show";
import type { BuiltRun } from "../../shop/run/builtRun";
import type { RuleBook } from "../../rules/rules";
import { conductorsWeight } from "../../wiring/cableWeight";
import { readConductors } from "../../wiring/readConductors";
import { someOf, type Amount } from "./amount";
import { sizedItem, type Item } from "./item";

const plain = (kind: "trapeze" | "strut" | "threaded rod", unit: Item["unit"]): Item => ({
  ...{ name: kind, kind, unit, bought: true },
});

/**
 * What holds a rack, counted with its longest conduit: trapezes as far apart as supports may be, strut from conduit to
 * conduit and beyond the outer ones, rods, and a strap for each conduit. Common practice, no source.
 *
 * @param hangers supports of the conduit, box to box
 * @param apart farthest between them [in]
 */
export function rackAmounts(
  built: BuiltRun,
  rack: RackMember,
  hangers: number,
  apart: number,
  rules: RuleBook,
): Amount[] {
  if (!rack.longest) return [];
  const { run, shoe } = built;
  const { count, spacing } = rack;
  const strut = (count - 1) * spacing + shoe.outsideDiameter + 2 * rules.number("Strut beyond the outer conduit");
  const note = loadInWords(built, count, apart);
  return someOf([
    { item: plain("trapeze", "each"), each: hangers, note },
    { item: plain("strut", "ft"), each: (hangers * strut) / 12 },
    { item: plain("threaded rod", "each"), each: hangers * rules.number("Rods of a trapeze") },
    { item: sizedItem(run, "strap", "strut strap"), each: hangers * count },
  ]);
}

/** What a trapeze carries at most, in words: the conduits and their conductors over one spacing. */
function loadInWords({ run }: BuiltRun, count: number, apart: number): string {
  try {
    const conduit = dimension(run.raceway, run.size, "weight").value / 100;
    const wires = run.conductors === "" ? 0 : conductorsWeight(readConductors(run.conductors, "Conductors"));
    const pounds = (count * (conduit + wires) * apart) / 12;
    return `${run.name.replace(/-\d+$/, "")}: ${show(pounds, 1)} lb on each at most, ${run.conductors === "" ? "conduit alone" : "conduit and conductors"}, strut left out`;
  } catch (error) {
    if (!isUserError(error)) throw error;
    return `load not known: ${error.message}`;
  }
}
