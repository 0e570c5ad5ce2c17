import { SAME_PLACE } from "../../units/tolerances";
/** Dividing a length of conduit into pieces that join on straight conduit only. All lengths are developed inches. */

/** A stretch of developed length, both ends included: where a coupling may stand. */
export interface JoinZone {
  readonly from: number;
  readonly to: number;
}

/** How a pull was divided: where its couplings stand, or the stretch that no stick can span. */
export type Division =
  { readonly joints: readonly number[] } | { readonly tooLong: { readonly from: number; readonly to: number } };

/**
 * Divides a developed length into the fewest pieces no longer than a stick and, if it can be, none shorter than
 * `shortestPiece`. Among those divisions the shortest piece is as short as it can be, so that the longest remnant of a
 * stick is left over; where several are equal, the short piece comes last.
 *
 * @param length [in] developed length
 * @param stick [in] longest piece that can be cut
 * @param zones where couplings may stand, in order along the length
 * @param shortestPiece [in]
 */
export function dividePull(length: number, stick: number, zones: readonly JoinZone[], shortestPiece: number): Division {
  const reach = { length, stick, zones };
  return (
    divideWith(reach, Math.min(shortestPiece, stick)) ??
    divideWith(reach, 0) ?? { tooLong: firstGap(length, stick, zones) }
  );
}

interface Reach {
  readonly length: number;
  readonly stick: number;
  readonly zones: readonly JoinZone[];
}

function divideWith(reach: Reach, shortest: number): Division | undefined {
  const { length, stick } = reach;
  // reachable[k]: where the k-th coupling can stand with every piece before it a proper length.
  const reachable = [[{ from: 0, to: 0 }]];
  for (;;) {
    const last = reachable.at(-1)!;
    if (last.some((zone) => length - zone.to <= stick + SAME_PLACE && length - zone.from >= shortest)) break;
    const next = shifted(last, shortest, stick, reach.zones);
    if (farthest(next) <= farthest(last) + SAME_PLACE) return undefined;
    reachable.push(next);
  }
  const back = [[{ from: length, to: length }]];
  const mirror = { ...reach, zones: flipped(reach.zones, length) };
  while (back.length < reachable.length) {
    const last = flipped(back[0]!, length);
    back.unshift(flipped(shifted(last, shortest, stick, mirror.zones), length));
  }
  return { joints: chain(reachable, back, shortest, stick) };
}

const farthest = (zones: readonly JoinZone[]): number => Math.max(...zones.map((zone) => zone.to));

const flipped = (zones: readonly JoinZone[], length: number): JoinZone[] =>
  zones.map((zone) => ({ from: length - zone.to, to: length - zone.from })).reverse();

/** Where a coupling can stand one piece further on: in each zone, what the places before it reach. */
function shifted(from: readonly JoinZone[], shortest: number, stick: number, zones: readonly JoinZone[]): JoinZone[] {
  const reached: JoinZone[] = [];
  for (const zone of zones) {
    for (const start of from) {
      const low = Math.max(zone.from, start.from + Math.max(shortest, SAME_PLACE));
      const high = Math.min(zone.to, start.to + stick);
      if (low > high) continue;
      const last = reached.at(-1);
      // The places come in order, so what overlaps the last stretch only makes it longer.
      if (last && low <= last.to) reached[reached.length - 1] = { from: last.from, to: Math.max(last.to, high) };
      else reached.push({ from: low, to: high });
    }
  }
  return reached;
}

/** Chooses which piece is the short one, then walks to both ends with pieces as long as they can be. */
function chain(reachable: JoinZone[][], back: JoinZone[][], shortest: number, stick: number): number[] {
  let best: { piece: number; index: number; start: number; end: number } | undefined;
  for (let index = reachable.length - 1; index >= 0; index--) {
    for (const start of reachable[index]!) {
      for (const end of back[index]!) {
        const piece = Math.max(end.from - start.to, shortest, SAME_PLACE);
        if (piece > Math.min(stick, end.to - start.from) + SAME_PLACE) continue;
        if (best && piece >= best.piece - SAME_PLACE) continue;
        const from = Math.min(start.to, end.to - piece);
        best = { piece, index, start: from, end: from + piece };
      }
    }
  }
  if (!best) throw new RangeError("a division was promised but not found");
  const joints: number[] = [];
  let at = best.start;
  for (let index = best.index; index > 0; index--) {
    joints.unshift(at);
    at = lowest(reachable[index - 1]!, at - stick);
  }
  at = best.end;
  for (let index = best.index; index < back.length - 1; index++) {
    joints.push(at);
    at = highest(back[index + 1]!, at + stick);
  }
  return joints;
}

/** The lowest place in the zones from a limit up. */
const lowest = (zones: readonly JoinZone[], limit: number): number =>
  Math.min(...zones.filter(({ to }) => to >= limit - SAME_PLACE).map(({ from }) => Math.max(from, limit)));

/** The highest place in the zones up to a limit. */
const highest = (zones: readonly JoinZone[], limit: number): number =>
  Math.max(...zones.filter(({ from }) => from <= limit + SAME_PLACE).map(({ to }) => Math.min(to, limit)));

/** The first stretch without a place for a coupling that a stick cannot span. */
function firstGap(length: number, stick: number, zones: readonly JoinZone[]): { from: number; to: number } {
  let at = 0;
  for (const zone of zones) {
    if (zone.from - at > stick) return { from: at, to: zone.from };
    at = zone.to;
  }
  return { from: at, to: length };
}
