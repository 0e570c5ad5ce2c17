import { ROUNDING } from "../../units/tolerances";
import { showDegrees } from "../../units/show";
import { runPieces, type BuiltPull, type BuiltRun, type Piece } from "../run/builtRun";
import { tidyDegrees } from "../../geometry/angle";
import { dialOrWords } from "../shoe/dialOrWords";
import type { Finding } from "../code/finding";
import { testedSpringback, untested } from "../shoe/springback";
import { shortTail } from "../schedule/scheduleNotes";

/** A sweep in shots of more than this shows its corners and can kink [°]. Common practice, no source. */
const LARGEST_SHOT = 10;

/** Bends whose angle and springback the dial does not reach, or whose springback no test bend tells. */
export function pastTheDial(built: BuiltRun): Finding[] {
  const { run, shoe } = built;
  const angles = runPieces(built).flatMap(({ bends }) => bends.map((bend) => tidyDegrees(bend.angle)));
  const common = { run: run.name, weight: "stop" } as const;
  return [...new Set(angles)].flatMap((angle): Finding[] => {
    if (typeof dialOrWords(shoe, angle) === "number") return [];
    const springback = testedSpringback(shoe, angle);
    if (springback === undefined) {
      return [
        {
          ...common,
          rule: "a test bend must tell the springback",
          finding: `a bend of ${showDegrees(angle)}: ${untested(shoe, angle)}`,
          fix: "Bend a test nearer to that angle and put it under Second test in the Shoes table, or clear Second test.",
        },
      ];
    }
    return [
      {
        ...common,
        rule: "the dial must reach the angle and its springback",
        finding:
          `a bend of ${showDegrees(angle)} with ${showDegrees(springback)} springback passes the dial's end at ` +
          `${showDegrees(shoe.dialTo)}.`,
        fix: "Start the dial below zero by the springback (Dial start), or make the bend in two.",
      },
    ];
  });
}

/** Pieces whose end is too short for the shoe to hold. */
export function shortTails(built: BuiltRun, piece: Piece): Finding[] {
  return piece.bends.flatMap((bend, index): Finding[] => {
    const finding = shortTail(built, piece, index);
    if (finding === undefined) return [];
    return [
      {
        run: built.run.name,
        weight: "look",
        rule: "the shoe must be able to hold the conduit",
        finding: `piece ${piece.number}, bend ${index + 1}: ${finding}.`,
        fix: "Cut the piece longer and trim it after bending, or lengthen the leg.",
        step: bend.corner.step,
      },
    ];
  });
}

/** Sweeps in so few shots that they kink. */
export function coarseSweeps(built: BuiltRun): Finding[] {
  const firstShots = built.pulls.flatMap((pull) =>
    pull.pull.corners.flatMap((corner, index) => {
      const angle = pull.parts.bends[index]?.angle ?? 0;
      const shot = corner.kind === "sweep" && corner.place === 1 && !isBought(pull, index);
      const coarse = shot && corner.of > 1 && angle > LARGEST_SHOT + ROUNDING;
      return coarse ? [{ corner, angle }] : [];
    }),
  );
  return firstShots.map(({ corner, angle }): Finding => ({
    run: built.run.name,
    weight: "look",
    rule: `shots of a sweep of at most ${showDegrees(LARGEST_SHOT)} (common practice)`,
    finding: `step ${corner.step}: a sweep in ${corner.of} shots turns ${showDegrees(angle)} at each, and may kink.`,
    fix: `Make it in ${Math.ceil((angle * corner.of) / LARGEST_SHOT - ROUNDING)} shots or more.`,
    step: corner.step,
  }));
}

/** What the shoe's shortest tail leaves of a straight between two bends, when it is less than the shoe can hold. */
export function crowdedBends(built: BuiltRun): Finding[] {
  return built.pulls.flatMap((pull) =>
    pull.parts.straights.flatMap((straight, index): Finding[] => {
      const [before, after] = [pull.pull.corners[index - 1], pull.pull.corners[index]];
      if (!before || !after || isBought(pull, index - 1) || isBought(pull, index)) return [];
      if (before.kind === "sweep" || straight >= built.shoe.shortestTail - ROUNDING) return [];
      return [
        {
          run: built.run.name,
          weight: "look",
          rule: "bends must not overlap and the shoe must seat between them",
          finding:
            `steps ${before.step} and ${after.step}: ${built.lengths.show(straight, 2)} of straight conduit between two bends; ` +
            `the shoe needs ${built.lengths.show(built.shoe.shortestTail, 2)}.`,
          fix: "Lengthen the leg between them, use smaller angles, or see JOB.SETUP for an order that works.",
          step: after.step,
        },
      ];
    }),
  );
}

/** True when a bend of a pull is a factory elbow: the bench has nothing to do with it. */
const isBought = ({ elbows }: BuiltPull, bend: number): boolean => elbows.some(({ place }) => place === bend);
