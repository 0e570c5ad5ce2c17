import { NotListedError, quoteValue } from "../units/errors";
import { inWords } from "../raceway/inWords";
import table from "./data/conductors.json";
import type { WireMetal } from "./groundingSize";
import { WIRE_SIZES } from "./wireSizes";

/** Insulations whose areas are listed; THHN stands for THWN and THWN-2 too, XHHW for XHHW-2. */
export type Insulation = keyof typeof table.insulations;

/** The types of conductor that are told apart: by their areas, and by what they are for. */
export type ConductorType = "THHN" | "THWN" | "THWN-2" | "XHHW" | "XHHW-2" | "bare";

/** What a conductor is for: one of the circuit, where nothing else is said. */
export type Role = "circuit" | "neutral" | "ground";

/** Conductors of one kind in a raceway. */
export interface Conductors {
  readonly count: number;
  /** AWG or kcmil: "10", "1/0", "250". */
  readonly size: string;
  readonly insulation: Insulation;
  readonly type: ConductorType;
  readonly metal: WireMetal;
  /** True for compact strands. */
  readonly compact: boolean;
  readonly role: Role;
  /** Area of each [in²]: NEC chapter 9, tables 5 and 5A; of a bare one, table 8. */
  readonly area: number;
}

const LISTED = Object.keys(table.insulations.THHN.areas);
/** Sizes listed, thinnest first: AWG to 4/0, then kcmil. */
export const CONDUCTOR_SIZES: readonly string[] = WIRE_SIZES.filter((size) => LISTED.includes(size));

/**
 * Area of one conductor [in²].
 *
 * @param where what it is called in messages
 * @throws NotListedError
 * @example conductorArea("12", "THHN") //=> 0.0133
 */
export function conductorArea(size: string, insulation: Insulation, where = "conductors", compact = false): number {
  const { areas, compact: compacts } = table.insulations[insulation];
  const listed: Record<string, number> = compact ? compacts : areas;
  const area = listed[size];
  if (area !== undefined) return area;
  const sizes = inWords(WIRE_SIZES.filter((each) => each in listed));
  throw new NotListedError(
    `${where}: no area is listed for ${compact ? "compact " : ""}${insulation} ${quoteValue(size)}; sizes are ${sizes}.`,
  );
}
