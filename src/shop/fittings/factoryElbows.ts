import { isAngle, type Degrees } from "../../geometry/angle";
import { outsideDiameter } from "../../raceway/dimensions";
import { elbowStraightEnd, standardElbowRadius } from "../../raceway/elbows";
import { isFromMemory } from "../../raceway/sources";
import { minimumRadius } from "../../raceway/minimumRadius";
import { racewayRecord, type Raceway } from "../../raceway/raceway";
import { couplingSeat } from "../../raceway/sticks";
import type { TradeSize } from "../../raceway/tradeSize";
import { sameContent } from "../../memory/contents";
import { remember } from "../../memory/remember";
import { takeOutsFor, type TakeOut } from "../../rules/bodyTakeOuts";
import { lengthFor, type SizedLengths } from "../../rules/sizedLengths";
import { RouteError } from "../../route/text/routeError";
import type { AskedElbow, RouteCorner } from "../../route/text/types";
import { InputError, NotListedError } from "../../units/errors";
import type { Lengths } from "../../units/formatLength";
import { showDegrees } from "../../units/show";
import { ROUNDING } from "../../units/tolerances";
import type { EndKind } from "./endKind";
import { elbowAngles, type FittingRule } from "./fittingRule";
import type { Shoe } from "../shoe/shoe";

/** What elbows are for. */
interface OfSize {
  readonly raceway: Raceway;
  readonly size: TradeSize;
}

/** The factory elbows of one run, and what its other fittings take. Lengths [in], angles [°]. */
export interface RunFittings {
  /** Angles at which its bends are bought; none when the shop bends its size. */
  readonly bought: readonly number[];
  /** Angles that elbows are made in. */
  readonly angles: readonly number[];
  /** Radius of those that the route gives none. */
  readonly radius: number;
  /** Straight conduit at each end of one; 0 where neither a print nor the shop says. */
  readonly end: number;
  /** True where that end is from memory, and not the shop's own. */
  readonly endFromMemory: boolean;
  /** Straight conduit that lies in a coupling; what is left between two conduits there. */
  readonly seat: number;
  readonly gap: number;
  /** What of a stick of 10 or 20 ft is its bell. */
  readonly bell: number;
  /** How far the conduit ends before what it goes to; negative where it goes on into it. */
  readonly takeOut: Readonly<Record<EndKind, number>>;
  /** The same of a conduit body, by its letters, where the shop has measured it. */
  readonly bodies: Readonly<Record<string, TakeOut>>;
  /** How lengths of the run are told. */
  readonly lengths: Lengths;
}

/** The fittings of a run. @param listed false where no shoe is listed for it */
export function fittingsOf(run: OfSize, rule: FittingRule, listed: boolean): RunFittings {
  const { raceway, size } = run;
  const own = (lengths: SizedLengths) => lengthFor(lengths, raceway, size);
  const ownEnd = own(rule.ends);
  return {
    bought: elbowAngles(run, rule, listed),
    angles: rule.angles,
    radius: own(rule.radius) ?? standardElbowRadius(size).value,
    ...(ownEnd === undefined ? listedEnd(run) : { end: ownEnd, endFromMemory: false }),
    seat: own(rule.seat) ?? couplingSeat(raceway, size),
    gap: own(rule.gap) ?? 0,
    bell: racewayRecord(raceway).elbows === "PVC" ? (own(rule.bell) ?? 0) : 0,
    takeOut: {
      box: own(rule.takeOut.box) ?? 0,
      hub: own(rule.takeOut.hub) ?? 0,
      body: own(rule.takeOut.body) ?? 0,
    },
    bodies: takeOutsFor(rule.bodies, raceway, size),
    lengths: rule.lengths,
  };
}

/** The same, the same object where rules say the same of a raceway and size: an edit of one leaves the runs of others alone. */
export function fittingsFor(run: OfSize, rule: FittingRule, listed: boolean): RunFittings {
  const known = knownFittings(rule);
  const key = `${run.raceway} ${run.size} ${listed}`;
  const fittings = known.get(key) ?? sameFittings(fittingsOf(run, rule, listed));
  known.set(key, fittings);
  return fittings;
}

const sameFittings = sameContent<RunFittings>();
const knownFittings = remember((_: FittingRule) => new Map<string, RunFittings>());

/** As listed; 0, and from no list, for EMT. */
function listedEnd({ raceway, size }: OfSize): Pick<RunFittings, "end" | "endFromMemory"> {
  try {
    const { value, source } = elbowStraightEnd(raceway, size);
    return { end: value, endFromMemory: isFromMemory(source) };
  } catch (error) {
    if (error instanceof NotListedError) return { end: 0, endFromMemory: false };
    throw error;
  }
}

/** What says whether a bend is bought: its angle [°], and whether the route asks for an elbow there. */
export interface ElbowOrBend {
  readonly angle: Degrees;
  readonly corner: Pick<RouteCorner, "elbow">;
}

/** True when a bend of a run is bought as a factory elbow. */
export const isBought = ({ angle, corner }: ElbowOrBend, { bought }: RunFittings): boolean =>
  corner.elbow !== undefined || isElbow(angle, bought);

const isElbow = (angle: Degrees, angles: readonly number[]): boolean => angles.some((listed) => isAngle(angle, listed));

/**
 * The radius of a factory elbow [in].
 *
 * @param asked the elbow that the route asks for, if it does
 * @throws InputError below the code's least radius, and where the route asks for one of an angle that none has
 */
export function radiusOfElbow(run: OfSize, elbows: RunFittings, angle: Degrees, asked?: AskedElbow): number {
  const radius = asked?.radius ?? elbows.radius;
  const least = standardElbowRadius(run.size).value;
  const { show } = elbows.lengths;
  if (radius < least - ROUNDING) {
    const limit = `of ${run.raceway} ${run.size} must be at least ${show(least)} (NEC chapter 9, table 2); got ${show(radius)}`;
    if (asked && asked.radius !== null) throw new RouteError(asked.step, `the radius of an elbow ${limit}`);
    throw new InputError(`Factory elbow radius ${limit}`);
  }
  if (asked && !isElbow(angle, elbows.angles)) {
    const made = elbows.angles.map((each) => showDegrees(each)).join(", ");
    const words = `there is no factory elbow of ${showDegrees(angle)}, only of ${made} (rule Factory elbow angles).`;
    throw new RouteError(asked.step, words);
  }
  return radius;
}

/** What a run is laid out with when every bend of it is a factory elbow: their radius [in], and nothing to hold. */
export const elbowShoe = (run: OfSize, radius: number): Shoe =>
  noShoe(run, radius, "no shoe: every bend is a factory elbow");

/** What is laid by hand is laid out with: the code's least radius for it, which may be wider in the field. */
export const byHand = (run: OfSize): Shoe =>
  noShoe(run, minimumRadius(run.size, "other"), "no shoe: laid by hand, at the least radius of the code");

/** What straight conduit is laid out with. */
export const straightOnly = (run: OfSize): Shoe =>
  noShoe(run, minimumRadius(run.size, "other"), "no shoe: straight conduit");

function noShoe({ raceway, size }: OfSize, radius: number, source: string): Shoe {
  const outside = outsideDiameter(raceway, size);
  return {
    ...{ raceway, size, radius, outsideDiameter: outside, deduct: radius + outside / 2, springback: 0 },
    ...{ dialFrom: 0, dialTo: 90, dialStart: 0, shortestTail: 0, source },
  };
}
