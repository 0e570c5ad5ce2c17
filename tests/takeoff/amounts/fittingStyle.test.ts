import { RACEWAYS } from "../../../src/raceway/raceway";
import { readFittingStyle } from "../../../src/shop/code/fittingStyle";

/** Which fittings each raceway takes, the usual one first: common practice, no source. */
const TAKES = {
  EMT: ["set-screw", "compression"],
  "Aluminum EMT": ["set-screw", "compression"],
  IMC: ["threaded", "set-screw", "compression"],
  RMC: ["threaded", "set-screw", "compression"],
  "Aluminum RMC": ["threaded", "compression"],
  "Stainless RMC": ["threaded"],
  "PVC-coated RMC": ["threaded"],
  "PVC 40": ["cement"],
  "PVC 80": ["cement"],
  RTRC: ["cement"],
  FMC: ["flex"],
  LFMC: ["liquidtight"],
  "LFNC-A": ["liquidtight"],
  "LFNC-B": ["liquidtight"],
  ENT: ["snap-on"],
};
const STYLES = ["set-screw", "compression", "threaded", "cement", "flex", "liquidtight", "snap-on"];

test.each(RACEWAYS)("%s takes its styles and no other; an empty cell is the usual one", (raceway) => {
  expect(readFittingStyle("", raceway)).toBe(TAKES[raceway][0]);
  for (const style of STYLES) {
    if (TAKES[raceway].includes(style)) expect(readFittingStyle(style, raceway)).toBe(style);
    else
      expect(() => readFittingStyle(style, raceway)).toThrow(
        `must be ${TAKES[raceway].join(", ")} for ${raceway}; got`,
      );
  }
});

test.each([
  ["Set screw", "EMT", "set-screw"],
  ["SETSCREW", "EMT", "set-screw"],
  ["threadless", "RMC", "compression"],
  ["rain-tight", "EMT", undefined],
  ["raintight", "EMT", "compression"],
  ["cemented", "PVC 40", "cement"],
  ["solvent-cement", "PVC 80", "cement"],
  ["glued", "PVC 40", "cement"],
  ["squeeze", "FMC", "flex"],
  ["snap on", "ENT", "snap-on"],
  ["set-screw", "FMC", undefined],
  ["welded", "RMC", undefined],
] as const)("%s on %s: %s", (words, raceway, style) => {
  if (style) expect(readFittingStyle(words, raceway)).toBe(style);
  else expect(() => readFittingStyle(words, raceway)).toThrow(`got "${words}".`);
});
