import { along, dot, norm, subtract, type Vec3 } from "./vector";

/** Where two straight lines between points come nearest [in]: how far along each, and how far apart. */
export interface Nearest {
  readonly onFirst: number;
  readonly onSecond: number;
  readonly apart: number;
}

const clamp = (value: number, most: number): number => Math.min(Math.max(value, 0), most);

/**
 * Where two segments come nearest.
 *
 * Derived: the squared distance is convex in both places, so its minimum lies inside or, with one place held to its end,
 * on the other segment.
 *
 * @param first its ends @param second its ends, each longer than 0
 */
export function nearestOf(first: readonly [Vec3, Vec3], second: readonly [Vec3, Vec3]): Nearest {
  const [a, b] = [subtract(first[1], first[0]), subtract(second[1], second[0])];
  const [lengthA, lengthB] = [norm(a), norm(b)];
  const between = subtract(first[0], second[0]);
  const [u, v] = [a.map((part) => part / lengthA), b.map((part) => part / lengthB)] as unknown as [Vec3, Vec3];
  const [cosine, alongU, alongV] = [dot(u, v), dot(u, between), dot(v, between)];
  const slant = 1 - cosine * cosine;
  const free = slant > 1e-12 ? clamp((cosine * alongV - alongU) / slant, lengthA) : 0;
  const onSecond = clamp(free * cosine + alongV, lengthB);
  const onFirst = clamp(onSecond * cosine - alongU, lengthA);
  const [p, q] = [along(first[0], u, onFirst), along(second[0], v, onSecond)];
  return { onFirst, onSecond, apart: norm(subtract(p, q)) };
}
