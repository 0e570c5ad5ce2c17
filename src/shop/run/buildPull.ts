import { isAngle } from "../../geometry/angle";
import { NO_CONDUIT, SAME_ANGLE } from "../../units/tolerances";
import { arcLength } from "../../geometry/arc";
import { pathParts, type PathParts } from "../../geometry/path";
import { couplingSeat } from "../../raceway/sticks";
import { pullPath } from "../../route/problems";
import type { Pull } from "../../route/text/types";
import { InputError } from "../../units/errors";
import { showInches } from "../../units/show";
import type { BuiltPull, FactoryElbow, Piece, PieceBend } from "./builtRun";
import type { RunElbows } from "../elbows/factoryElbows";
import { stretches, type Stretch } from "./stretches";
import { fixedJoints, jointsOf, type CouplingZone } from "./pieceEnds";
import { tailNeeded, type Shoe } from "../shoe/shoe";

/** What the pulls of a run have in common. */
export interface PullMaking {
  /** Longest piece a stick gives [in]. */
  readonly stick: number;
  readonly shoe: Shoe;
  readonly elbows: RunElbows;
  /** Where the pull is coupled, from its start [in], where the run's row says so. */
  readonly joints?: readonly number[];
  /** Where the pull starts along the run [in]. */
  readonly start: number;
}

/** Works a part of a run between boxes out: its elbows, and the pieces before, between and after them. */
export function buildPull(pull: Pull, pullNumber: number, piecesBefore: number, making: PullMaking): BuiltPull {
  const parts = pathParts(pullPath(pull));
  const bends = placedBends(pull, parts);
  const zones = joinZones(pull, parts, bends, making.shoe);
  const pieces: Piece[] = [];
  const elbows: FactoryElbow[] = [];
  /** Developed positions where a piece or an elbow ends. */
  const ends: number[] = [];
  for (const stretch of stretches(bends, parts, making.elbows)) {
    const { elbow, to } = stretch;
    let start = stretch.from;
    for (const end of pieceEnds(stretch, zones, making)) {
      pieces.push({
        number: piecesBefore + pieces.length + 1,
        pull: pullNumber,
        cutLength: end - start,
        bends: bendsOn(stretch, start, end),
        coupledBefore: ends.length > 0,
        coupledAfter: elbow !== undefined || end < to,
      });
      ends.push(end);
      start = end;
    }
    if (!elbow) continue;
    const { corner, angle, radius, plane, place, straight } = elbow;
    elbows.push({ corner, angle, radius, plane, place, straight, afterPiece: piecesBefore + pieces.length });
    ends.push(elbow.to);
  }
  return { pull, parts, pieces, elbows, joints: ends.slice(0, -1) };
}

/** Where couplings may stand on a pull that is built already, in developed positions [in]. */
export const couplingZones = ({ pull, parts }: BuiltPull, shoe: Shoe): CouplingZone[] =>
  joinZones(pull, parts, placedBends(pull, parts), shoe);

/** Where the pieces of a stretch end, in developed positions [in]; none where elbows leave no conduit between them. */
function pieceEnds({ from, to, elbow }: Stretch, zones: readonly CouplingZone[], making: PullMaking): number[] {
  const { stick, shoe, start } = making;
  const length = to - from;
  const besideElbow = from > 0 || elbow !== undefined;
  if (besideElbow && length <= NO_CONDUIT) return [];
  const clear = besideBend(shoe);
  const own = zones
    .map((zone) => ({ ...zone, from: Math.max(zone.from - from, clear), to: Math.min(zone.to, to - clear) - from }))
    .filter((zone) => zone.from <= zone.to);
  const fixed = making.joints?.filter((joint) => joint > from && joint < to).map((joint) => joint - from);
  const joints = fixed
    ? fixedJoints(fixed, length, stick, own, start + from)
    : jointsOf(length, stick, own, shortestPiece(shoe));
  if (!("tooLong" in joints)) return [...joints.map((joint) => from + joint), to];
  const [first, last] = [from + joints.tooLong.from, from + joints.tooLong.to];
  throw new InputError(
    `A stick of ${showInches(stick)} cannot span from ${showInches(first, 2)} to ${showInches(last, 2)} along the conduit: bends ` +
      `stand too close together for a coupling in between. Make a leg longer or use a longer stick.`,
  );
}

/** What a coupling needs beside a bend [in]: its own room, besides the tail the shoe holds. */
const besideBend = (shoe: Shoe): number => tailNeeded(shoe) + couplingSeat(shoe.raceway, shoe.size);

const shortestPiece = (shoe: Shoe): number => 2 * besideBend(shoe);

/** The bends of a pull, each with the developed position of its first tangent point. */
function placedBends({ corners }: Pull, { bends, straights, legs }: PathParts): PieceBend[] {
  let at = 0;
  return bends.map(({ angle, radius, rotation }, place): PieceBend => {
    at += straights[place]!;
    const start = at;
    at += arcLength(angle, radius);
    return { corner: corners[place]!, angle, radius, start, plane: rotation, legBefore: legs[place]!, place };
  });
}

/** Stretches of straight conduit far enough from bends and from the ends of the pull for a coupling. */
function joinZones(pull: Pull, parts: PathParts, bends: readonly PieceBend[], shoe: Shoe): CouplingZone[] {
  const clear = besideBend(shoe);
  const zones: CouplingZone[] = [];
  let from = 0;
  for (let index = 0; index < parts.straights.length; index++) {
    const bend = bends[index];
    const to = bend?.start ?? parts.developed;
    const parting = belongTogether(pull, parts, index);
    if (to - clear >= from + clear) zones.push({ from: from + clear, to: to - clear, parting });
    if (bend) from = to + arcLength(bend.angle, bend.radius);
  }
  return zones;
}

/** True when the bends on both sides of a straight are one offset or saddle, or a kick and its return. */
function belongTogether({ corners }: Pull, { bends }: PathParts, straight: number): boolean {
  const [before, after] = [corners[straight - 1], corners[straight]];
  if (!before || !after) return false;
  if (before.group === after.group) return true;
  const [first, second] = [bends[straight - 1]!, bends[straight]!];
  const kicks = before.kind === "bend" && after.kind === "bend" && first.angle < 90 - SAME_ANGLE;
  return kicks && isAngle(first.angle, second.angle) && isAngle(Math.abs(second.rotation), 180);
}

/** The bends that start on a piece of a stretch, measured from its start; beside an elbow that may be right at its end. */
const bendsOn = (stretch: Stretch, from: number, to: number): PieceBend[] =>
  stretch.bends
    .filter(({ start }) => (start >= from || from === stretch.from) && start < to)
    .map((bend): PieceBend => ({ ...bend, start: Math.max(0, bend.start - from) }));
