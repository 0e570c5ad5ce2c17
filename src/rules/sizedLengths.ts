import { readRaceway, type Raceway } from "../raceway/raceway";
import { readTradeSize, type TradeSize } from "../raceway/tradeSize";
import { InputError, isUserError, quoteValue } from "../units/errors";
import { toInches } from "../units/length";
import type { Limits } from "../units/limits";

/** A length [in] for one raceway and size, for one of them, or for all. */
interface SizedLength {
  readonly raceway?: Raceway;
  readonly size?: TradeSize;
  readonly inches: number;
}

/** Lengths by what they are for; none where a rule leaves them to the program. */
export type SizedLengths = readonly SizedLength[];

/**
 * Reads a length that may differ by raceway and size: one for all, or several with what each is for.
 *
 * @throws InputError naming the rule, what is expected and the part that cannot be read
 * @example readSizedLengths("RMC 4: 24; 2: 1' 6\"", "radius", { above: 0 })
 * //=> [{ raceway: "RMC", size: "4", inches: 24 }, { size: "2", inches: 18 }]
 */
export function readSizedLengths(cell: unknown, name: string, limits: Limits = {}): SizedLengths {
  const parts = String(cell ?? "")
    .split(/[;\n]/)
    .filter((part) => part.trim() !== "");
  if (parts.length === 0)
    throw new InputError(`${name} is empty; write a length, or lengths as in EMT 1/2: 0.5; 3: 2.`);
  return parts.map((part) => {
    const [length, what = "", ...more] = part.split(":").reverse();
    if (more.length > 0)
      throw new InputError(`${name}: one colon in each part, as in EMT 1/2: 0.5; got ${quoteValue(part.trim())}.`);
    return { ...forWhat(what.trim(), name), inches: toInches(length!.trim(), name, limits) };
  });
}

/** The length for a raceway and size [in], the nearest entry first; undefined where there is none. */
export function lengthFor(lengths: SizedLengths, raceway: Raceway, size: TradeSize): number | undefined {
  const nearness = (entry: SizedLength) => (entry.raceway ? 2 : 0) + (entry.size ? 1 : 0);
  return lengths
    .filter((entry) => (entry.raceway ?? raceway) === raceway && (entry.size ?? size) === size)
    .sort((a, b) => nearness(b) - nearness(a))[0]?.inches;
}

/**
 * `EMT 1/2`, `EMT`, `1/2`, or nothing for all.
 *
 * @throws InputError for anything else
 */
export function forWhat(what: string, name: string): Omit<SizedLength, "inches"> {
  const words = what.split(/\s+/).filter((word) => word !== "");
  for (let first = words.length; first >= 0; first--) {
    const [head, tail] = [words.slice(0, first).join(" "), words.slice(first).join(" ")];
    try {
      return {
        ...(head === "" ? {} : { raceway: readRaceway(head) }),
        ...(tail === "" ? {} : { size: readTradeSize(tail) }),
      };
    } catch (error) {
      if (!isUserError(error)) throw error;
    }
  }
  throw new InputError(`${name} is for a raceway, a size or both, as in EMT 1/2: 0.5; got ${quoteValue(what)}.`);
}
