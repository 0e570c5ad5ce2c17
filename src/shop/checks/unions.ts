import { racewayRecord } from "../../raceway/raceway";
import { jointBefore, type BuiltRun } from "../run/builtRun";
import type { Finding } from "../code/finding";

/**
 * Bent pieces of threaded conduit that must be turned onto a coupling between two boxes. Common practice, no source: a bent
 * piece swings as it is turned, and a piece between two fixed ends cannot be turned at all without a union.
 */
export function unionsNeeded({ run, pulls }: BuiltRun): Finding[] {
  if (!racewayRecord(run.raceway).threaded || /set-?screw|compression/i.test(run.fittings)) return [];
  const turned = pulls.flatMap((pull) =>
    pull.pieces.filter(
      (piece) => piece.coupledBefore && piece.bends.length > 0 && jointBefore(pull, piece) !== "union",
    ),
  );
  if (turned.length === 0) return [];
  const numbers = turned.map(({ number }) => number).join(", ");
  return [
    {
      run: run.name,
      weight: "look",
      rule: "threaded bent pieces between fixed ends need a union (common practice)",
      finding: `${turned.length === 1 ? "piece" : "pieces"} ${numbers}: bent, threaded and joined to conduit that is held by a box; turned onto its coupling, its free end swings.`,
      fix: "Leave room to swing it, make the joint with a union, or couple it with threadless fittings (column Fittings).",
    },
  ];
}
