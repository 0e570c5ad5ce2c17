import { arcLength } from "../../geometry/arc";
import { isUsualRadius, SPECIAL_RADII } from "../../raceway/elbows";
import { racewayRecord } from "../../raceway/raceway";
import { thread } from "../../raceway/threads";
import { ROUNDING } from "../../units/tolerances";
import { runPieces, type BuiltPull, type BuiltRun, type Piece } from "../run/builtRun";
import type { Finding } from "../code/finding";

/** What a run asks of factory elbows and short pieces that no supply house or bench can give. */
export const elbowFindings = (built: BuiltRun): Finding[] => [
  ...built.pulls.flatMap((pull) => crampedElbows(built, pull)),
  ...unusualRadii(built),
  ...runPieces(built).flatMap((piece) => [...tooShort(built, piece), ...bendsAtCouplings(built, piece)]),
];

/** Elbows with less straight conduit beside them than their ends have; each such leg once. */
function crampedElbows({ run, lengths }: BuiltRun, { elbows, parts, pull }: BuiltPull): Finding[] {
  const elbowAt = (place: number) => elbows.find((elbow) => elbow.place === place);
  const named = (place: number): string => {
    const corner = pull.corners[place];
    if (!corner) return "the end of the pull";
    return `the ${elbowAt(place) ? "elbow" : "bend"} of step ${corner.step}`;
  };
  return parts.straights.flatMap((straight, index): Finding[] => {
    const beside = [elbowAt(index - 1), elbowAt(index)];
    const needed = beside.reduce((sum, elbow) => sum + (elbow?.straight.end ?? 0), 0);
    const has = (beside[0]?.straight.after ?? 0) + (beside[1]?.straight.before ?? 0);
    if (has >= needed - ROUNDING) return [];
    const short = lengths.show(needed - has);
    const both = beside[0] && beside[1] ? `, ${lengths.show(beside[0].straight.end)} each` : "";
    return [
      {
        run: run.name,
        weight: "stop",
        rule: "a factory elbow comes with straight ends",
        finding:
          `between ${named(index - 1)} and ${named(index)} are ${lengths.show(Math.max(0, straight))} of straight conduit; straight ` +
          `ends of elbows take ${lengths.show(needed)}${both}: ${short} short.`,
        fix: `Make that leg ${short} longer, or cut the elbow's end back where enough of it is left for its fitting.`,
        step: pull.corners[index]?.step ?? pull.corners[index - 1]!.step,
      },
    ];
  });
}

/** Elbows of a radius that is not usually sold. */
function unusualRadii({ run, pulls, lengths }: BuiltRun): Finding[] {
  const odd = pulls.flatMap(({ elbows }) => elbows).filter(({ radius }) => !isUsualRadius(radius, run.size));
  return [...new Map(odd.map((elbow) => [elbow.radius, elbow])).values()].map(({ radius, corner }) => ({
    run: run.name,
    weight: "look",
    rule: `special radii of elbows: ${SPECIAL_RADII.join(", ")} in. (from memory)`,
    finding: `a factory elbow of ${lengths.show(radius)} radius is not a usual one.`,
    fix: "Ask whether it can be had, or take a usual radius.",
    step: corner.step,
  }));
}

/** A piece shorter than what its threads, sockets or couplings take of it. */
function tooShort({ run, fittings, lengths }: BuiltRun, piece: Piece): Finding[] {
  const { raceway, size } = run;
  const isThreaded = racewayRecord(raceway).threaded;
  const each = isThreaded ? thread(raceway, size, "length").value : fittings.seat;
  const ends = isThreaded ? 2 : [piece.coupledBefore, piece.coupledAfter].filter(Boolean).length;
  if (piece.cutLength >= ends * each - ROUNDING) return [];
  const what = isThreaded
    ? "the thread on each end takes"
    : `${ends === 1 ? "its coupling takes" : "its couplings take, each,"}`;
  return [
    {
      run: run.name,
      weight: "stop",
      rule: "a piece must be long enough for what goes onto its ends",
      finding: `piece ${piece.number} is ${lengths.show(piece.cutLength)} long; ${what} ${lengths.show(each)}.`,
      fix:
        `Make its leg ${lengths.show(ends * each - piece.cutLength)} longer, or ${lengths.show(piece.cutLength)} shorter, so that ` +
        `what stands on both sides of it meets.`,
    },
  ];
}

/** Bends that begin where a coupling must sit. */
function bendsAtCouplings({ run, fittings: { seat }, lengths }: BuiltRun, piece: Piece): Finding[] {
  const [first, last] = [piece.bends[0], piece.bends.at(-1)];
  if (!first || !last) return [];
  const left = piece.cutLength - last.start - arcLength(last.angle, last.radius);
  const ends = [
    { coupled: piece.coupledBefore, straight: first.start, end: "datum", step: first.corner.step },
    { coupled: piece.coupledAfter, straight: left, end: "far", step: last.corner.step },
  ];
  return ends.flatMap(({ coupled, straight, end, step }): Finding[] => {
    if (!coupled || straight >= seat - ROUNDING) return [];
    return [
      {
        run: run.name,
        weight: "stop",
        rule: "a coupling needs straight conduit to sit on",
        finding:
          `piece ${piece.number}: ${lengths.show(Math.max(0, straight))} of straight conduit between a bend and the coupling on ` +
          `its ${end} end; the coupling takes ${lengths.show(seat)}.`,
        fix: `Make the leg ${lengths.show(seat - straight)} longer.`,
        step,
      },
    ];
  });
}
