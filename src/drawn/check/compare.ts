import { cos, toRadians } from "../../geometry/angle";
import type { Path } from "../../geometry/path";
import { pathSpans, onSpan, type Span } from "../../geometry/span";
import { add, dot, norm, subtract, type Vec3 } from "../../geometry/vector";
import type { BuiltRun } from "../../shop/run/builtRun";

/** Where what is built is farthest from what is drawn. */
export interface Farthest {
  /** [in] */
  readonly off: number;
  /** Along the drawn line from its beginning [in]. */
  readonly along: number;
}

/** A sharp corner is built as an arc of this radius [in]: next to none. */
const SHARP = 1e-6;

/**
 * Lays the run out again from its words, each bend as wide as it is drawn, and measures both ways: how far each drawn point
 * stands off what is built, and how far each end of a straight that is built stands off the drawn line.
 *
 * @param radii by pull: drawn at each bend [in], null where the built one counts; one for each bend that is built
 * @param moved from the frame of the built run to that of the drawing
 */
export function compare(
  built: BuiltRun,
  pulls: readonly (readonly Vec3[])[],
  radii: readonly (readonly (number | null)[])[],
  moved: (point: Vec3) => Vec3,
): Farthest {
  let farthest: Farthest = { off: 0, along: 0 };
  let start = 0;
  const note = (off: number, along: number) => {
    if (off > farthest.off) farthest = { off, along };
  };
  pulls.forEach((points, index) => {
    const spans = pathSpans(asDrawn(built, index, radii[index]!));
    const reached = distances(points);
    points.forEach((point, at) => {
      const to = Math.min(...spans.map((span) => offSpan(point, span, moved)));
      note(to, start + reached[at]!);
    });
    const ends = spans.flatMap((span) =>
      span.kind === "straight" && span.length > 0 ? [0, span.length].map((at) => moved(onSpan(span, at).point)) : [],
    );
    for (const end of ends) {
      const near = nearestOn(end, points, reached);
      note(near.off, start + near.along);
    }
    start += reached.at(-1)!;
  });
  return farthest;
}

function asDrawn({ pulls }: BuiltRun, index: number, radii: readonly (number | null)[]): Path {
  const { points, corners } = pulls[index]!.pull;
  let place = 0;
  const own = corners.map(({ kind, radius }) => {
    const drawn = kind === "sweep" ? null : radii[place];
    if (kind !== "sweep") place += 1;
    return drawn === null || drawn === undefined ? radius : Math.max(SHARP, drawn);
  });
  return { points, radii: own };
}

/** How far a point stands off a straight or an arc. */
function offSpan(point: Vec3, span: Span, moved: (point: Vec3) => Vec3): number {
  const [from, to] = [moved(onSpan(span, 0).point), moved(onSpan(span, span.length).point)];
  const ends = Math.min(norm(subtract(point, from)), norm(subtract(point, to)));
  if (span.kind === "straight") {
    const way = subtract(to, from);
    const length = norm(way);
    if (length === 0) return ends;
    const at = dot(subtract(point, from), way) / length;
    return at < 0 || at > length
      ? ends
      : norm(subtract(subtract(point, from), [way[0] * (at / length), way[1] * (at / length), way[2] * (at / length)]));
  }
  const center = moved(span.center);
  const normal = subtract(moved(add(span.center, span.normal)), center);
  const spoke = subtract(point, center);
  const height = dot(spoke, normal);
  const flat: Vec3 = [spoke[0] - normal[0] * height, spoke[1] - normal[1] * height, spoke[2] - normal[2] * height];
  const middle = subtract(moved(onSpan(span, span.length / 2).point), center);
  // Beside the arc where the point lies within its turn, seen from the middle.
  const within = dot(flat, middle) >= norm(flat) * norm(middle) * cos(toRadians(span.angle / 2)) - 1e-9;
  return within ? Math.hypot(norm(flat) - span.radius, height) : ends;
}

function distances(points: readonly Vec3[]): number[] {
  let sum = 0;
  return points.map((point, at) => (sum += at === 0 ? 0 : norm(subtract(point, points[at - 1]!))));
}

function nearestOn(point: Vec3, line: readonly Vec3[], reached: readonly number[]): Farthest {
  let best: Farthest = { off: Infinity, along: 0 };
  for (let at = 1; at < line.length; at += 1) {
    const [from, way] = [line[at - 1]!, subtract(line[at]!, line[at - 1]!)];
    const length = norm(way);
    const share = Math.min(1, Math.max(0, dot(subtract(point, from), way) / (length * length)));
    const foot: Vec3 = [from[0] + way[0] * share, from[1] + way[1] * share, from[2] + way[2] * share];
    const off = norm(subtract(point, foot));
    if (off < best.off) best = { off, along: reached[at - 1]! + share * length };
  }
  return best;
}
