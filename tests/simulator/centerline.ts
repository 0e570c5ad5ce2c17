/** Bent conduit as the bench left it: straights and arcs in a row, each with the frame it begins with. */
import { blend, distance, goRound, goStraight, inner, type Frame, type Point } from "./frame";

export interface Segment {
  readonly begin: Frame;
  /** Along the conduit [in]. */
  readonly length: number;
  /** Absent on a straight. Angle [°], radius [in], and how far round from the chalk line the arc curls [°]. */
  readonly arc?: { readonly angle: number; readonly radius: number; readonly azimuth: number };
}

export interface Centerline {
  readonly segments: readonly Segment[];
  /** Datum end, where the straights on both sides of each bend would meet, far end. */
  readonly points: readonly Point[];
  /** Straight conduit before, between and after the bends [in]. */
  readonly straights: readonly number[];
  readonly angles: readonly number[];
  readonly length: number;
  readonly end: Frame;
}

export const endOf = ({ begin, length, arc }: Segment): Frame =>
  arc ? goRound(begin, arc.radius, arc.angle, arc.azimuth) : goStraight(begin, length);

/** Measures a row of segments; straights that follow each other (a coupling between) count as one. */
export function measure(segments: readonly Segment[], start: Frame): Centerline {
  const bends = segments.filter(({ arc }) => arc);
  const straights = [0];
  for (const { arc, length } of segments) {
    if (arc) straights.push(0);
    else straights[straights.length - 1]! += length;
  }
  const last = segments.at(-1);
  const end = last ? endOf(last) : start;
  return {
    segments,
    points: [start.at, ...bends.map(cornerOf), end.at],
    straights,
    angles: bends.map(({ arc }) => arc?.angle ?? 0),
    length: segments.reduce((sum, { length }) => sum + length, 0),
    end,
  };
}

/** Where the line into an arc and the line out of it meet. */
function cornerOf(segment: Segment): Point {
  const [enter, leave] = [segment.begin, endOf(segment)];
  const between = blend(1, leave.at, -1, enter.at);
  const c = inner(enter.ahead, leave.ahead);
  const spread = 1 - c * c;
  const onEnter = (inner(between, enter.ahead) - c * inner(between, leave.ahead)) / spread;
  const onLeave = (c * inner(between, enter.ahead) - inner(between, leave.ahead)) / spread;
  const [p, q] = [goStraight(enter, onEnter).at, goStraight(leave, onLeave).at];
  if (!(distance(p, q) < 1e-6)) throw new Error(`the lines of a ${segment.arc?.angle}° bend miss each other`);
  return blend(0.5, p, 0.5, q);
}
