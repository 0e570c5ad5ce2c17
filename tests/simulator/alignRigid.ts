/** Holds one shape against another: moved and turned as a whole, never mirrored or stretched. */
import { blend, distance, inner, type Point } from "./frame";

/**
 * The points of `shape` moved so that its first point, first direction and the plane of its first corner lie on those
 * of `onto`. Handedness is kept: the mirror image of a shape in three dimensions does not come to lie on it.
 */
export function alignRigid(shape: readonly Point[], onto: readonly Point[]): Point[] {
  const [from, to] = [axesOf(shape), axesOf(onto)];
  return shape.map((point) => {
    const seen = blend(1, point, -1, from.origin);
    return from.axes.reduce((moved, axis, index) => blend(1, moved, inner(seen, axis), to.axes[index]!), to.origin);
  });
}

/** Farthest that any point of `shape` lies from its fellow in `wanted`, after {@link alignRigid} [in]. */
export function misfit(shape: readonly Point[], wanted: readonly Point[]): number {
  if (shape.length !== wanted.length) return Infinity;
  return Math.max(...alignRigid(shape, wanted).map((point, index) => distance(point, wanted[index]!)));
}

function axesOf(points: readonly Point[]): { origin: Point; axes: [Point, Point, Point] } {
  const [origin, next, third] = points;
  if (!origin || !next) throw new Error("a shape needs two points or more");
  const first = unit(blend(1, next, -1, origin));
  const turned = third ? blend(1, third, -1, next) : leastAlong(first);
  const second = unit(blend(1, turned, -inner(turned, first), first));
  return {
    origin,
    axes: [
      first,
      second,
      [
        first[1] * second[2] - first[2] * second[1],
        first[2] * second[0] - first[0] * second[2],
        first[0] * second[1] - first[1] * second[0],
      ],
    ],
  };
}

const unit = (p: Point): Point => blend(1 / distance(p, [0, 0, 0]), p, 0, p);

/** A direction well off `along`: any will do for a straight shape. */
const leastAlong = (along: Point): Point => (Math.abs(along[0]) < 0.8 ? [1, 0, 0] : [0, 1, 0]);
