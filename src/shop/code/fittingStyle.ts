import type { FittingStyle } from "../../raceway/kinds/record";
import { racewayRecord, type Raceway } from "../../raceway/raceway";
import { InputError, quoteValue } from "../../units/errors";
import { splitFittings } from "./throats";
import { lookUpKey } from "../../units/names/lookUpKey";

const WORDS: Record<string, FittingStyle> = {
  "set screw": "set-screw",
  setscrew: "set-screw",
  compression: "compression",
  threadless: "compression",
  raintight: "compression",
  threaded: "threaded",
  cement: "cement",
  cemented: "cement",
  "solvent cement": "cement",
  glued: "cement",
  flex: "flex",
  squeeze: "flex",
  liquidtight: "liquidtight",
  "snap on": "snap-on",
};

/**
 * Reads a Fittings cell; one that names no style gives the raceway's usual one. The word insulated is read elsewhere.
 * @throws InputError when the style is not known or the raceway does not take it
 */
export function readFittingStyle(text: string, raceway: Raceway): FittingStyle {
  const { styles } = racewayRecord(raceway);
  const said = splitFittings(text).style;
  if (said === "") return styles[0]!;
  const style = WORDS[lookUpKey(said)];
  if (style && styles.includes(style)) return style;
  throw new InputError(`Fittings must be ${styles.join(", ")} for ${raceway}; got ${quoteValue(text)}.`);
}
