import type { Edition } from "../raceway/code/edition";
import { InputError, NotListedError, quoteValue } from "../units/errors";
import { optional } from "../units/limits";
import { show } from "../units/show";
import table from "./data/grounding.json";
import { circularMils, sizeOfMils } from "./wireSizes";

const ALUMINUM_2020: Record<string, string> = table.aluminum2020;

/** Metal of a conductor. */
export type WireMetal = "copper" | "aluminum";

/** The metal of a conductor as an argument names it; left out: copper. */
export function readWireMetal(value: unknown): WireMetal {
  const word = optional(value, (given) => String(given).trim().toLowerCase()) ?? "copper";
  if (word === "copper" || word === "aluminum") return word;
  throw new InputError(`metal must be copper or aluminum; got ${quoteValue(value)}.`);
}

/**
 * Size of the equipment grounding conductor by the breaker; where the circuit's conductors are larger than they need be, larger
 * in proportion to their circular mils, and never larger than they are.
 *
 * @param breaker [A] @param metal of the grounding conductor
 * @param upsized the size the circuit needs and the one that is installed
 * @throws NotListedError above the table; InputError when the installed size is smaller than the needed one
 * @example groundingSize(50, "copper", { needed: "8", installed: "1" }) //=> "3"
 */
export function groundingSize(
  breaker: number,
  metal: WireMetal,
  upsized?: { readonly needed: string; readonly installed: string },
  edition: Edition = 2023,
): string {
  const row = table.rows.find(([most]) => breaker <= (most as number));
  if (!row) throw new NotListedError(`breaker must be at most 6000 A; got ${show(breaker)} A.`);
  const older = edition === 2020 && metal === "aluminum" ? ALUMINUM_2020[String(row[0])] : undefined;
  const size = older ?? (row[metal === "copper" ? 1 : 2] as string);
  if (!upsized) return size;
  const [needed, installed] = [circularMils(upsized.needed), circularMils(upsized.installed)];
  if (installed < needed) {
    throw new InputError(`installed must be at least the needed size, ${upsized.needed}; got ${upsized.installed}.`);
  }
  const larger = sizeOfMils((circularMils(size) * installed) / needed);
  return circularMils(larger) > installed && circularMils(size) <= installed ? upsized.installed : larger;
}
