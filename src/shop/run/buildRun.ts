import { outsideDiameter } from "../../raceway/dimensions";
import { usableStick } from "../../raceway/sticks";
import { isFlexible } from "../../raceway/raceway";
import { RouteError } from "../../route/text/routeError";
import type { TakeOut } from "../../rules/bodyTakeOuts";
import { bodyNamed, endKind } from "../fittings/endKind";
import { remember } from "../../memory/remember";
import { pathParts } from "../../geometry/path";
import { lengthsAsIn } from "../../route/text/ownWords";
import { pullPath, refuseShortLegs } from "../../route/problems";
import type { PullEnd, RadiusAt, ResolvedRoute, Whip } from "../../route/text/types";
import { readRoute } from "../../route/text/readRoute";
import { withAngleThatDoes } from "../../route/anglesThatDo";
import { layOut, walkRoute, type WalkedRoute } from "../../route/resolveRoute";
import { InputError, NotListedError } from "../../units/errors";
import { AS_WRITTEN, type Lengths } from "../../units/formatLength";
import { ROUNDING } from "../../units/tolerances";
import type { Shoe } from "../shoe/shoe";
import { radiusOf } from "../shoe/springback";
import type { ShoeAnswer, ShoeBook } from "../shoe/shoeBook";
import { buildPull } from "./buildPull";
import type { BuiltPull, BuiltRun } from "./builtRun";
import { isBentInShop, USUAL_FITTINGS, type FittingRule } from "../fittings/fittingRule";
import {
  byHand,
  elbowShoe,
  fittingsFor,
  fittingsOf,
  isBought,
  radiusOfElbow,
  straightOnly,
  type ElbowOrBend,
  type RunFittings,
} from "../fittings/factoryElbows";
import type { Run } from "./runsTable";

/**
 * Works a run out: route to corner points, corner points to bends on straight pieces.
 *
 * @param elbows angles at which its bends are factory elbows [°]
 * @throws InputError when the route cannot be read or cannot be built with this shoe
 */
export const buildRun = (run: Run, shoe: Shoe, elbows: readonly number[] = []): BuiltRun =>
  buildWalked(run, walkOf(run, AS_WRITTEN), shoe, { ...fittingsOf(run, USUAL_FITTINGS, true), bought: elbows });

/**
 * Works a run out with the shoe that the shop has for it. A run whose every bend is a factory elbow needs none; one with
 * other bends too has those at the radius of the shoe, and its elbows at their own. Straight conduit needs no shoe either: where none is listed, a
 * run without bends is built all the same.
 *
 * @throws InputError or NotListedError when the run cannot be built
 */
export const buildRunWith = (run: Run, shoes: ShoeBook, elbows: FittingRule = USUAL_FITTINGS): BuiltRun =>
  isFlexible(run.raceway)
    ? buildByHand(run, fittingsFor(run, elbows, true))
    : buildListed(run, shoes.lookUp(run.raceway, run.size), elbows);

const buildListed = (run: Run, answer: ShoeAnswer, rule: FittingRule): BuiltRun =>
  buildOnce(run, answer, fittingsFor(run, rule, !("notListed" in answer)), isBentInShop(run, rule));

/** Shoes and fittings of a run that are kept: with others it is built otherwise. */
const KEPT = 3;

type BuildOnce = (run: Run, answer: ShoeAnswer, elbows: RunFittings, isBent: boolean) => BuiltRun;

const buildOnce: BuildOnce = remember(
  (run, answer, elbows, isBent) => {
    const walked = walkOf(run, elbows.lengths);
    const bought = elbowShoe(run, elbows.radius);
    const isUnlisted = "notListed" in answer && !isBent;
    if (hasOnlyElbows(walked, bought, elbows))
      return { ...buildWalked(run, walked, bought, elbows), ...(isUnlisted && { unlisted: [] }) };
    if ("shoe" in answer) return buildWalked(run, walked, answer.shoe, elbows);
    if ("unusable" in answer) throw new InputError(answer.unusable);
    if (isUnlisted) {
      // Nothing of the run is missing from a bid: a bend that no elbow is listed for is bought as well, and a check says so.
      const odd = bendsOf(walked, bought).flatMap((bend) => (isBought(bend, elbows) ? [] : [bend.angle]));
      if (odd.length > 0) {
        const all = { ...elbows, bought: [...elbows.bought, ...odd] };
        return { ...buildWalked(run, walked, bought, all), unlisted: [...new Set(odd)] };
      }
    }
    const built = buildWalked(run, walked, straightOnly(run), elbows);
    if (built.pulls.some(({ parts }) => parts.bends.length > 0)) throw new NotListedError(answer.notListed);
    return built;
  },
  { most: KEPT },
);

/** A run of what is laid by hand: measured along its curves, one length from box to box, nothing for the bender to do. */
const buildByHand = remember(
  (run: Run, fittings: RunFittings): BuiltRun => {
    const steps = readRoute(run.route);
    const asked = steps.findIndex(({ kind }) => kind === "elbow");
    if (asked >= 0) throw new RouteError(asked + 1, `${run.raceway} is laid by hand: it has no elbows.`);
    const curves = steps.map((step) => (step.kind === "sweep" ? { ...step, shots: 1 } : step));
    const walked = walkRoute(curves, outsideDiameter(run.raceway, run.size), fittings.lengths.show);
    return buildWalked(run, walked, byHand(run), fittings);
  },
  { most: KEPT },
);

const walkOf = ({ route, raceway, size }: Run, { show }: Lengths): WalkedRoute =>
  walkRoute(readRoute(route), outsideDiameter(raceway, size), show);

/** Of a fitting: where the run comes in, or goes on. */
type Side = keyof TakeOut;

function buildWalked(run: Run, walked: WalkedRoute, shoe: Shoe, fittings: RunFittings): BuiltRun {
  const { bell, lengths } = fittings;
  const radiusAt: RadiusAt = (angle, elbow) =>
    isBought({ angle, corner: { elbow } }, fittings)
      ? radiusOfElbow(run, fittings, angle, elbow)
      : isFlexible(run.raceway)
        ? shoe.radius
        : radiusOf(shoe, angle);
  const { pulls, endsInBox } = laidOut(walked, radiusAt, lengths);
  const stick = bell === 0 ? run.stick : usableStick(run.raceway, run.size, run.stick, bell);
  const ofBody = (letters: string | undefined, side: Side): number =>
    (letters === undefined ? undefined : fittings.bodies[letters]?.[side]) ?? fittings.takeOut.body;
  const takeOut = (name: string, side: Side): number => {
    const kind = endKind(name);
    if (kind === "body") return ofBody(bodyNamed(name), side);
    return kind ? fittings.takeOut[kind] : 0;
  };
  /** What the fitting takes where a pull ends, or where the next one starts. */
  const atEnd = (end: PullEnd, name: string, side: Side, whip?: Whip): number => {
    if (whip) return whip.toBox ? takeOut("", side) : 0;
    if (end === "whip") return 0;
    return end === "box" || end === "open" ? takeOut(name, side) : ofBody(end, side);
  };
  let [pieceNumber, start] = [0, 0];
  const built = pulls.map((pull, index) => {
    const before = pulls[index - 1];
    const making = {
      ...{
        stick: isFlexible(run.raceway) ? Infinity : stick,
        shoe,
        start,
        joints: run.joints?.map((joint) => joint - start),
      },
      taken: {
        fittings,
        start: before ? atEnd(before.end, "", "out", before.whip) : takeOut(run.from, "out"),
        end: atEnd(pull.end, index === pulls.length - 1 ? run.to : "", "in"),
      },
    };
    const made = buildPull(pull, index + 1, pieceNumber, making);
    pieceNumber += made.pieces.length;
    start += made.parts.developed;
    return made;
  });
  refuseLostJoints(run, built, start, lengths);
  return { run: stick === run.stick ? run : { ...run, stick }, shoe, fittings, lengths, pulls: built, endsInBox };
}

/** Lays a run out. @throws RouteError that says which angle would do, where one would */
function laidOut(walked: WalkedRoute, radiusAt: RadiusAt, { show }: Lengths): ResolvedRoute {
  try {
    const route = layOut(walked, radiusAt, show);
    refuseShortLegs(route.pulls, lengthsAsIn(walked.steps, show));
    return route;
  } catch (error) {
    throw withAngleThatDoes(error, walked, radiusAt);
  }
}

/** Joints that the row asks for and that stand in a factory elbow, at a box or past the run's end. @throws InputError */
function refuseLostJoints({ joints = [] }: Run, pulls: readonly BuiltPull[], length: number, { tape }: Lengths): void {
  let start = 0;
  const made = pulls.flatMap((pull) => {
    const own = pull.joints.map((joint) => joint + start);
    start += pull.parts.developed;
    return own;
  });
  const lost = joints.find((joint) => !made.some((one) => Math.abs(one - joint) < ROUNDING));
  if (lost === undefined) return;
  const why = lost < length ? "is at a box or in a factory elbow" : `is past the run's end at ${tape(length)}`;
  throw new InputError(`Joints: ${tape(lost)} ${why}.`);
}

/** A run's bends, laid out with a shoe. */
const bendsOf = (walked: WalkedRoute, shoe: Shoe): ElbowOrBend[] =>
  layOut(walked, (angle, elbow) => elbow?.radius ?? radiusOf(shoe, angle)).pulls.flatMap((pull) =>
    pathParts(pullPath(pull)).bends.map(({ angle }, place) => ({ angle, corner: pull.corners[place]! })),
  );

/** True when a run has bends and there is a factory elbow for each. */
function hasOnlyElbows(walked: WalkedRoute, bought: Shoe, fittings: RunFittings): boolean {
  const asks = walked.steps.some(({ kind }) => kind === "elbow");
  if (fittings.bought.length === 0 && !asks) return false;
  const bends = bendsOf(walked, bought);
  return bends.length > 0 && bends.every((bend) => isBought(bend, fittings));
}
