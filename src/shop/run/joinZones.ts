import { isAngle } from "../../geometry/angle";
import { arcLength } from "../../geometry/arc";
import type { PathParts } from "../../geometry/path";
import type { Pull } from "../../route/text/types";
import { SAME_ANGLE } from "../../units/tolerances";
import type { PieceBend } from "./builtRun";
import type { CouplingZone } from "./pieceEnds";

/** The bends of a pull, each with the developed position of its first tangent point. */
export function placedBends({ corners }: Pull, { bends, straights, legs }: PathParts): PieceBend[] {
  let at = 0;
  return bends.map(({ angle, radius, rotation }, place): PieceBend => {
    at += straights[place]!;
    const start = at;
    at += arcLength(angle, radius);
    return { corner: corners[place]!, angle, radius, start, plane: rotation, legBefore: legs[place]!, place };
  });
}

/**
 * Stretches of straight conduit far enough from bends and from the ends of the pull for a coupling.
 *
 * @param clear what a coupling wants beside a bend or an end [in]
 */
export function joinZones(pull: Pull, parts: PathParts, bends: readonly PieceBend[], clear: number): CouplingZone[] {
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
