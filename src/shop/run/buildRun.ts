import { outsideDiameter } from "../../raceway/dimensions";
import { remember } from "../../memory/remember";
import { pathParts } from "../../geometry/path";
import { lengthsAsIn } from "../../route/ownWords";
import { pullPath, refuseShortLegs } from "../../route/problems";
import { readRoute } from "../../route/readRoute";
import { layOut, walkRoute, type WalkedRoute } from "../../route/resolveRoute";
import { InputError, NotListedError } from "../../units/errors";
import type { Shoe } from "../shoe/shoe";
import { radiusOf } from "../shoe/springback";
import type { ShoeBook } from "../shoe/shoeBook";
import { buildPull } from "./buildPull";
import type { BuiltRun } from "./builtRun";
import { elbowAngles, elbowShoe, isElbow, straightOnly, USUAL_ELBOWS, type ElbowRule } from "./factoryElbows";
import type { Run } from "./runsTable";

/**
 * Works a run out: route to corner points, corner points to bends on straight pieces.
 *
 * @param elbows angles at which its bends are factory elbows [°]
 * @throws InputError when the route cannot be read or cannot be built with this shoe
 */
export const buildRun = (run: Run, shoe: Shoe, elbows: readonly number[] = []): BuiltRun =>
  buildWalked(run, walkOf(run), shoe, elbows);

/**
 * Works a run out with the shoe that the shop has for it. A run whose every bend is a factory elbow needs none; one with
 * other bends too is laid out at the radius of the shoe. Straight conduit needs no shoe either: where none is listed, a
 * run without bends is built all the same.
 *
 * @throws InputError or NotListedError when the run cannot be built
 */
export const buildRunWith = (run: Run, shoes: ShoeBook, elbows: ElbowRule = USUAL_ELBOWS): BuiltRun =>
  buildOnce(run, shoes, elbows);

const buildOnce = remember((run: Run, shoes: ShoeBook, elbows: ElbowRule): BuiltRun => {
  const answer = shoes.lookUp(run.raceway, run.size);
  const angles = elbowAngles(run, elbows, !("notListed" in answer));
  const walked = walkOf(run);
  const bought = elbowShoe(run);
  if (angles.length > 0 && hasOnlyElbows(walked, bought, angles)) return buildWalked(run, walked, bought, angles);
  if ("shoe" in answer) return buildWalked(run, walked, answer.shoe, angles);
  if ("unusable" in answer) throw new InputError(answer.unusable);
  const built = buildWalked(run, walked, straightOnly(run), angles);
  if (built.pulls.some(({ parts }) => parts.bends.length > 0)) throw new NotListedError(answer.notListed);
  return built;
});

const walkOf = ({ route, raceway, size }: Run): WalkedRoute =>
  walkRoute(readRoute(route), outsideDiameter(raceway, size));

function buildWalked(run: Run, walked: WalkedRoute, shoe: Shoe, elbows: readonly number[]): BuiltRun {
  const { pulls, endsInBox } = layOut(walked, (angle) => radiusOf(shoe, angle));
  refuseShortLegs(pulls, lengthsAsIn(walked.steps));
  let pieceNumber = 0;
  return {
    run,
    shoe,
    pulls: pulls.map((pull, index) => {
      const built = buildPull(pull, index + 1, pieceNumber, { stick: run.stick, shoe, elbows });
      pieceNumber += built.pieces.length;
      return built;
    }),
    endsInBox,
  };
}

/** True when a run has bends and there is a factory elbow for each. */
function hasOnlyElbows(walked: WalkedRoute, { radius }: Shoe, angles: readonly number[]): boolean {
  const bends = layOut(walked, radius).pulls.flatMap((pull) => pathParts(pullPath(pull)).bends);
  return bends.length > 0 && bends.every(({ angle }) => isElbow(angle, angles));
}
