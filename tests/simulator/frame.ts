/**
 * The simulator's own geometry. It shares nothing with src/, so that a mistake there cannot hide here.
 *
 * A frame rides along the conduit: where its center is, which way it runs, and where the chalk line is that was snapped
 * along the straight stick. Bending does not twist conduit, so the chalk line stays where it is on the surface and the
 * frame turns as little as it can. `ahead`, `chalk` and `side` are right-handed: turning from chalk toward side is
 * clockwise for someone at the datum end who looks toward the far end.
 */
export type Point = readonly [number, number, number];

export interface Frame {
  readonly at: Point;
  readonly ahead: Point;
  readonly chalk: Point;
  readonly side: Point;
}

export const BENCH: Frame = { at: [0, 0, 0], ahead: [1, 0, 0], chalk: [0, 1, 0], side: [0, 0, 1] };

/** `a·p + b·q`. */
export const blend = (a: number, p: Point, b: number, q: Point): Point => [
  a * p[0] + b * q[0],
  a * p[1] + b * q[1],
  a * p[2] + b * q[2],
];

export const inner = (p: Point, q: Point): number => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];

export const distance = (p: Point, q: Point): number => Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);

export const radians = (degrees: number): number => degrees * (Math.PI / 180);

/** The frame `length` [in] further along straight conduit. */
export const goStraight = (frame: Frame, length: number): Frame => ({
  ...frame,
  at: blend(1, frame.at, length, frame.ahead),
});

/** The frame at the end of an arc of `angle` [°] that curls toward the line `azimuth` [°] round from the chalk line. */
export function goRound(frame: Frame, radius: number, angle: number, azimuth: number): Frame {
  const [cosine, sine] = [Math.cos(radians(angle)), Math.sin(radians(angle))];
  const [c, s] = [Math.cos(radians(azimuth)), Math.sin(radians(azimuth))];
  const inside = blend(c, frame.chalk, s, frame.side);
  const axis = blend(-s, frame.chalk, c, frame.side);
  const insideAfter = blend(cosine, inside, -sine, frame.ahead);
  return {
    at: blend(1, blend(1, frame.at, radius * sine, frame.ahead), radius * (1 - cosine), inside),
    ahead: blend(cosine, frame.ahead, sine, inside),
    chalk: blend(c, insideAfter, -s, axis),
    side: blend(s, insideAfter, c, axis),
  };
}
