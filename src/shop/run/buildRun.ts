import { pathParts } from "../../geometry/path";
import { pathProblems, pullPath } from "../../route/problems";
import { readRoute } from "../../route/readRoute";
import { resolveRoute } from "../../route/resolveRoute";
import type { Pull } from "../../route/types";
import { InputError, isUserError, NotListedError } from "../../units/errors";
import { buildPull } from "./buildPull";
import type { BuiltRun } from "./builtRun";
import { elbowAngles, elbowShoe, isElbow, straightOnly, USUAL_ELBOWS, type ElbowRule } from "./factoryElbows";
import type { Run } from "./runsTable";
import type { Shoe } from "../shoe/shoe";
import type { ShoeBook } from "../shoe/shoeBook";

export type { BuiltPull, BuiltRun, FactoryElbow, Piece, PieceBend, PullPart } from "./builtRun";

/**
 * Works a run out: route to corner points, corner points to bends on straight pieces.
 *
 * @param elbows angles at which its bends are factory elbows [°]
 * @throws InputError when the route cannot be read or cannot be built with this shoe
 */
export function buildRun(run: Run, shoe: Shoe, elbows: readonly number[] = []): BuiltRun {
  const pulls = pullsOf(run, shoe);
  const problems = pulls.flatMap((pull) => pathProblems(pull));
  if (problems.length > 0) throw new InputError(problems.join(" "));
  let pieceNumber = 0;
  return {
    run,
    shoe,
    pulls: pulls.map((pull, index) => {
      const built = buildPull(pull, index + 1, pieceNumber, { stick: run.stick, shoe, elbows });
      pieceNumber += built.pieces.length;
      return built;
    }),
  };
}

/**
 * Works a run out with the shoe that the shop has for it. A run whose every bend is a factory elbow needs none; one with
 * other bends too is laid out at the radius of the shoe. Straight conduit needs no shoe either: where none is listed, a
 * run without bends is built all the same.
 *
 * @throws InputError or NotListedError when the run cannot be built
 */
export function buildRunWith(run: Run, shoes: ShoeBook, elbows: ElbowRule = USUAL_ELBOWS): BuiltRun {
  const angles = elbowAngles(run, elbows, () => hasShoe(run, shoes));
  if (angles.length > 0 && hasOnlyElbows(run, angles)) return buildRun(run, elbowShoe(run), angles);
  let shoe: Shoe;
  try {
    shoe = shoes.shoeFor(run.raceway, run.size);
  } catch (error) {
    if (!(error instanceof NotListedError)) throw error;
    const built = buildRun(run, straightOnly(run), angles);
    if (built.pulls.some((pull) => pull.parts.bends.length > 0)) throw error;
    return built;
  }
  return buildRun(run, shoe, angles);
}

/** A row of Shoes that cannot be used is a shoe too: it is told where it is wanted. */
function hasShoe({ raceway, size }: Run, shoes: ShoeBook): boolean {
  try {
    return shoes.shoeFor(raceway, size) !== undefined;
  } catch (error) {
    if (!isUserError(error)) throw error;
    return !(error instanceof NotListedError);
  }
}

const pullsOf = ({ route }: Run, { radius, outsideDiameter }: Shoe): Pull[] =>
  resolveRoute(readRoute(route), radius, outsideDiameter).pulls;

/** True when a run has bends and there is a factory elbow for each. */
function hasOnlyElbows(run: Run, angles: readonly number[]): boolean {
  const bends = pullsOf(run, elbowShoe(run)).flatMap((pull) => pathParts(pullPath(pull)).bends);
  return bends.length > 0 && bends.every(({ angle }) => isElbow(angle, angles));
}
