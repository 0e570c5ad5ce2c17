import { arcAngle, cos, times } from "./angle";
import { nearestOf } from "./nearest";
import { onSpan, type Span } from "./span";
import { add, scale, type Vec3 } from "./vector";

/** A stretch of a centerline, with its chord: the centerline leaves that by no more than `bulge` [in]. */
export interface Stretch {
  readonly span: Span;
  /** From the beginning of the span [in]. */
  readonly from: number;
  readonly to: number;
  readonly ends: readonly [Vec3, Vec3];
  readonly bulge: number;
}

/** Where two centerlines come nearest. */
export interface NearestPlace {
  /** Center to center [in]. */
  readonly apart: number;
  /** The stretch of each it lies on, by its place in the list, and how far from the beginning of its span [in]. */
  readonly first: { readonly stretch: number; readonly along: number };
  readonly second: { readonly stretch: number; readonly along: number };
  /** Halfway between the two. */
  readonly point: Vec3;
}

/** How well a nearest distance is known [in]. */
export const NEAREST_TO = 1e-4;

/** A stretch of a span [in from its beginning]; undefined where it is shorter than {@link NEAREST_TO}. */
export function stretchOf(span: Span, from = 0, to = span.length): Stretch | undefined {
  return to - from > NEAREST_TO ? chordOf(span, from, to) : undefined;
}

function chordOf(span: Span, from: number, to: number): Stretch {
  const ends = [onSpan(span, from).point, onSpan(span, to).point] as const;
  // Sagitta of an arc: R·(1 − cos(A/2)) for what it turns by.
  const bulge = span.kind === "straight" ? 0 : span.radius * (1 - cos(times(arcAngle(to - from, span.radius), 0.5)));
  return { span, from, to, ends, bulge };
}

/**
 * Where two centerlines of straights and arcs come nearest, if that is nearer than `below` [in].
 *
 * Derived: a point of an arc lies within the sagitta of its chord, so two stretches are no nearer than their chords less
 * both sagittas. What that bound leaves open is halved, which quarters the sagitta, until what is open is below {@link NEAREST_TO}.
 *
 * @returns undefined where they are at least `below` apart
 */
export function nearestSpans(
  first: readonly (Stretch | undefined)[],
  second: readonly (Stretch | undefined)[],
  below: number,
): NearestPlace | undefined {
  let best: NearestPlace | undefined;
  let limit = below;
  first.forEach((stretch, one) => {
    if (stretch) second.forEach((against, other) => against && look(stretch, against, one, other));
  });
  return best;

  function look(a: Stretch, b: Stretch, one: number, other: number): void {
    const bulge = a.bulge + b.bulge;
    if (boxesApart(a, b) - bulge >= limit) return;
    const { apart, onFirst, onSecond } = nearestOf(a.ends, b.ends);
    if (apart - bulge >= limit) return;
    if (bulge <= NEAREST_TO / 2) {
      limit = apart;
      const [along, across] = [a.from + onFirst, b.from + onSecond];
      const middle = scale(add(onSpan(a.span, along).point, onSpan(b.span, across).point), 0.5);
      best = {
        apart,
        first: { stretch: one, along },
        second: { stretch: other, along: across },
        point: middle,
      };
    } else if (a.bulge >= b.bulge) for (const half of halves(a)) look(half, b, one, other);
    else for (const half of halves(b)) look(a, half, one, other);
  }
}

function halves({ span, from, to }: Stretch): [Stretch, Stretch] {
  const middle = (from + to) / 2;
  return [chordOf(span, from, middle), chordOf(span, middle, to)];
}

/** How far apart the boxes around two chords are along the axis where that is most [in]; below 0 where they overlap. */
function boxesApart({ ends: [a, b] }: Stretch, { ends: [c, d] }: Stretch): number {
  let most = -Infinity;
  for (const axis of [0, 1, 2] as const) {
    most = Math.max(
      most,
      Math.min(a[axis], b[axis]) - Math.max(c[axis], d[axis]),
      Math.min(c[axis], d[axis]) - Math.max(a[axis], b[axis]),
    );
  }
  return most;
}
