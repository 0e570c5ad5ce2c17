/** Dividing a length of conduit into pieces that join on straight conduit only. All lengths are developed inches. */

/** A stretch of developed length in which a coupling may stand, both ends included. */
export interface JoinZone {
  readonly from: number;
  readonly to: number;
}

/** How a pull was divided: where its couplings stand, or the stretch that no stick can span. */
export type Division =
  | { readonly joints: readonly number[] }
  | { readonly tooLong: { readonly from: number; readonly to: number } };

/** Lengths nearer than this are the same place [in]; far below anything a tape reads. */
const SAME_PLACE = 1e-9;

/**
 * Divides a developed length into the fewest pieces no longer than a stick. Among the divisions with that many pieces,
 * the shortest piece is made as short as it can be, so that the longest remnant of a stick is left over; it never gets
 * shorter than `shortestPiece` while another division exists. Where several are equal, the short piece comes last.
 *
 * @param length [in] developed length
 * @param stick [in] longest piece that can be cut
 * @param zones where couplings may stand, in order along the length
 * @param shortestPiece [in]
 */
export function dividePull(
  length: number,
  stick: number,
  zones: readonly JoinZone[],
  shortestPiece: number,
): Division {
  if (length <= stick + SAME_PLACE) return { joints: [] };
  const forward = farthestJoints(length, stick, zones);
  if ("tooLong" in forward) return forward;
  const backward = mirrored(farthestJoints(length, stick, mirroredZones(zones, length)), length);
  const count = forward.joints.length;
  let best: readonly number[] = forward.joints;
  let bestShort = Infinity;
  for (let short = count; short >= 0; short--) {
    const before = forward.joints.slice(0, short);
    const after = backward.slice(short);
    const end = after[0] ?? length;
    if (short > 0) before[short - 1] = leaveRoom(before, short - 1, end - shortestPiece, zones);
    const from = before[short - 1] ?? 0;
    const piece = end - from;
    const joints = [...before, ...after];
    if (piece >= shortestPiece - SAME_PLACE && piece < bestShort - SAME_PLACE && fits(joints, length, stick)) {
      best = joints;
      bestShort = piece;
    }
  }
  return { joints: best };
}

/** From the start, put each coupling as far along as a stick reaches. */
function farthestJoints(length: number, stick: number, zones: readonly JoinZone[]): Division {
  const joints: number[] = [];
  let at = 0;
  while (length - at > stick + SAME_PLACE) {
    const next = lastPlaceUpTo(at + stick, zones);
    if (next === undefined || next <= at + SAME_PLACE) {
      const zoneAfter = zones.find((zone) => zone.from > at + SAME_PLACE);
      return { tooLong: { from: at, to: zoneAfter?.from ?? length } };
    }
    joints.push(next);
    at = next;
  }
  return { joints };
}

function lastPlaceUpTo(limit: number, zones: readonly JoinZone[]): number | undefined {
  let place: number | undefined;
  for (const zone of zones) {
    if (zone.from > limit) break;
    place = Math.min(zone.to, limit);
  }
  return place;
}

const mirroredZones = (zones: readonly JoinZone[], length: number): JoinZone[] =>
  zones.map((zone) => ({ from: length - zone.to, to: length - zone.from })).reverse();

const mirrored = (division: Division, length: number): number[] =>
  "joints" in division ? division.joints.map((joint) => length - joint).reverse() : [];

/** Moves a coupling back so that the piece after it keeps its shortest length, if a coupling may stand there. */
function leaveRoom(joints: readonly number[], index: number, limit: number, zones: readonly JoinZone[]): number {
  const joint = joints[index] ?? 0;
  if (joint <= limit) return joint;
  const moved = lastPlaceUpTo(limit, zones);
  return moved !== undefined && moved > (joints[index - 1] ?? 0) ? moved : joint;
}

function fits(joints: readonly number[], length: number, stick: number): boolean {
  const ends = [0, ...joints, length];
  return ends.every((end, index) => index === 0 || isPiece(end - (ends[index - 1] ?? 0), stick));
}

const isPiece = (piece: number, stick: number): boolean => piece > SAME_PLACE && piece <= stick + SAME_PLACE;
