import { NO_CONDUIT, ROUNDING } from "../../units/tolerances";
import { arcLength } from "../../geometry/arc";
import { pathParts } from "../../geometry/path";
import { pullPath } from "../../route/problems";
import type { Pull } from "../../route/text/types";
import { InputError } from "../../units/errors";
import type { Lengths } from "../../units/formatLength";
import type { RunFittings } from "../fittings/factoryElbows";
import { askedJoints } from "./askedJoints";
import type { BuiltPull, BuiltRun, FactoryElbow, Piece, PieceBend } from "./builtRun";
import { joinZones, placedBends } from "./joinZones";
import { stretches, type Stretch, type Taken } from "./stretches";
import { fixedJoints, jointsOf, type CouplingZone } from "./pieceEnds";
import { tailNeeded, type Shoe } from "../shoe/shoe";

/** What the pulls of a run have in common. */
export interface PullMaking {
  /** Longest piece a stick gives [in]; Infinity for what is laid by hand, whose curves are no bends of the shop. */
  readonly stick: number;
  readonly shoe: Shoe;
  readonly taken: Taken;
  /** Where the pull is coupled, from its start [in], where the run's row says so. */
  readonly joints?: readonly number[];
  /** Where the pull starts along the run [in]. */
  readonly start: number;
}

/** Works a part of a run between boxes out: its elbows, and the pieces before, between and after them. */
export function buildPull(pull: Pull, pullNumber: number, piecesBefore: number, making: PullMaking): BuiltPull {
  const parts = pathParts(pullPath(pull));
  const bends = making.stick === Infinity ? [] : placedBends(pull, parts);
  const zones = joinZones(pull, parts, placedBends(pull, parts), besideBend(making));
  const pieces: Piece[] = [];
  const elbows: FactoryElbow[] = [];
  /** Developed positions where a piece or an elbow ends. */
  const ends: number[] = [];
  const asked = askedJoints(pull, parts, zones);
  const forced = asked.map(({ at }) => at);
  for (const stretch of stretches(bends, parts, making.taken)) {
    const { elbow } = stretch;
    for (const { from, to, after, bends } of pieceSpans(stretch, zones, making, forced)) {
      pieces.push({
        number: piecesBefore + pieces.length + 1,
        pull: pullNumber,
        cutLength: to - from,
        bends: bends.map((bend): PieceBend => ({ ...bend, start: Math.max(0, bend.start - from) })),
        coupledBefore: ends.length > 0,
        coupledAfter: elbow !== undefined || after < stretch.to,
      });
      ends.push(after);
    }
    if (!elbow) continue;
    const { corner, angle, radius, plane, place, straight } = elbow;
    elbows.push({ corner, angle, radius, plane, place, straight, afterPiece: piecesBefore + pieces.length });
    ends.push(elbow.to);
  }
  return { pull, parts, pieces, elbows, joints: ends.slice(0, -1), asked };
}

/** Where couplings may stand on a pull of a run that is built already, in developed positions [in]. */
export const couplingZones = ({ pull, parts }: BuiltPull, { shoe, fittings }: BuiltRun): CouplingZone[] =>
  joinZones(pull, parts, placedBends(pull, parts), roomBeside(shoe, fittings));

/** A piece on its stretch, in developed positions [in]: its ends, and the middle of the coupling after it or the stretch's end. */
interface PieceSpan {
  readonly from: number;
  readonly to: number;
  readonly after: number;
  readonly bends: readonly PieceBend[];
}

/** The pieces of a stretch; none where elbows leave no conduit between them. */
function pieceSpans(
  stretch: Stretch,
  zones: readonly CouplingZone[],
  making: PullMaking,
  forced: readonly number[],
): PieceSpan[] {
  const { from, to, lead, trail, bends, elbow } = stretch;
  const { fittings } = making.taken;
  const besideElbow = from > 0 || elbow !== undefined;
  if (besideElbow && to - trail - from - lead <= NO_CONDUIT) return [];
  refuseTakeOut(stretch, fittings.lengths);
  // From here on the conduit is seen with half a gap at each end, so that every piece is its span less one gap.
  const half = fittings.gap / 2;
  const [begin, end] = [from + lead - half, to - trail + half];
  const clear = besideBend(making);
  const own = zones
    .map((zone) => ({
      ...zone,
      from: Math.max(zone.from, from + clear) - begin,
      to: Math.min(zone.to, to - clear) - begin,
    }))
    .filter((zone) => zone.from <= zone.to);
  const here = forced.filter((at) => at > from && at < to);
  const places = [...jointsIn(stretch, [begin, end], own, making, here), end];
  return places.map((after, index): PieceSpan => {
    const before = places[index - 1] ?? begin;
    // Beside an elbow a bend may be right at the end.
    const on = bends.filter(({ start }) => (start >= before || index === 0) && start < after);
    return { from: before + half, to: after - half, after: index === places.length - 1 ? to : after, bends: on };
  });
}

/** Where the joints of a stretch are, in developed positions [in]: those the route asks for, and couplings between them. */
function jointsIn(
  stretch: Stretch,
  [begin, end]: readonly [number, number],
  zones: readonly CouplingZone[],
  making: PullMaking,
  forced: readonly number[],
): number[] {
  if (forced.length > 0) {
    const ends = [begin, ...forced, end];
    return ends.slice(1).flatMap((to, index) => {
      const from = ends[index]!;
      const own = zones.flatMap((zone) => clipped(zone, from - begin, to - begin));
      const joints = jointsIn({ ...stretch, from, to }, [from, to], own, making, []);
      return to === end ? joints : [...joints, to];
    });
  }
  const { gap, lengths } = making.taken.fittings;
  const { show } = lengths;
  const stick = making.stick + gap;
  const fixed = making.joints
    ?.filter((joint) => joint > stretch.from && joint < stretch.to)
    .map((joint) => joint - begin);
  const joints = fixed
    ? fixedJoints(fixed, end - begin, stick, zones, making.start + begin, lengths)
    : jointsOf(end - begin, stick, zones, 2 * besideBend(making) + gap);
  if (!("tooLong" in joints)) return joints.map((joint) => begin + joint);
  const [first, last] = [begin + joints.tooLong.from, begin + joints.tooLong.to];
  throw new InputError(
    `A stick of ${show(making.stick)} cannot span from ${show(first, 2)} to ${show(last, 2)} along the conduit: bends ` +
      `stand too close together for a coupling in between. Make a leg longer or use a longer stick.`,
  );
}

/** A zone between two joints, measured from the first. */
const clipped = (zone: CouplingZone, from: number, to: number): CouplingZone[] => {
  const [low, high] = [Math.max(zone.from, from) - from, Math.min(zone.to, to) - from];
  return low > high ? [] : [{ ...zone, from: low, to: high }];
};

/** @throws InputError where the fittings at the ends of a pull take more than the straight conduit there */
function refuseTakeOut({ from, to, lead, trail, bends, elbow }: Stretch, { show }: Lengths): void {
  const [first, last] = [bends[0], bends.at(-1)];
  const isWhole = from === 0 && elbow === undefined && !first;
  const ends = [
    { isEnd: from === 0, takes: isWhole ? lead + trail : lead, has: (first?.start ?? to) - from, where: "start" },
    {
      isEnd: !elbow,
      takes: trail,
      has: to - (last ? last.start + arcLength(last.angle, last.radius) : from),
      where: "end",
    },
  ];
  for (const { isEnd, takes, has, where } of ends) {
    if (!isEnd || takes <= 0 || takes <= has - (isWhole ? NO_CONDUIT : -ROUNDING)) continue;
    throw new InputError(
      `Fittings take ${show(takes)} out at the ${isWhole ? "ends" : where} of a pull, but the straight conduit there is ` +
        `${show(has)} (rules Take-out at a box, a hub, a body).`,
    );
  }
}

/** What a coupling needs beside a bend [in]: its own room, besides the tail the shoe holds. */
const roomBeside = (shoe: Shoe, { seat }: RunFittings): number => tailNeeded(shoe) + seat;

const besideBend = ({ shoe, taken }: PullMaking): number => roomBeside(shoe, taken.fittings);
