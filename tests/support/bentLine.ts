/**
 * A flat bent conduit followed by integrating its heading step by step: the second route to the closed formulas of
 * bends. Knows nothing of setbacks, gains or corners.
 */

export interface Bend {
  /** Where the arc starts along the straight conduit [in]. */
  readonly start: number;
  /** [°], positive to the left. */
  readonly angle: number;
  /** [in] */
  readonly radius: number;
}

export interface Place {
  readonly x: number;
  readonly y: number;
  /** [°] */
  readonly heading: number;
}

/** Nodes and weights of the five-point rule of Gauss and Legendre on −1 … 1 (Abramowitz and Stegun, table 25.4). */
const GAUSS = [
  [0, 0.568888888888889],
  [0.538469310105683, 0.478628670499366],
  [-0.538469310105683, 0.478628670499366],
  [0.906179845938664, 0.236926885056189],
  [-0.906179845938664, 0.236926885056189],
] as const;
/** Parts of each straight and arc: the rule's error over one stays below 1e-13 in. here. */
const PARTS = 8;

const bentLength = ({ angle, radius }: Bend): number => (Math.abs(angle) / 180) * Math.PI * radius;

/** Heading [rad] after a length along the conduit, which leaves the origin along x. */
function headingAt(bends: readonly Bend[], along: number): number {
  let heading = 0;
  for (const bend of bends) {
    const share = Math.min(Math.max((along - bend.start) / bentLength(bend), 0), 1);
    heading += (share * bend.angle * Math.PI) / 180;
  }
  return heading;
}

/** Where a point of the conduit lies after bending. */
export function placeAt(bends: readonly Bend[], along: number): Place {
  const breaks = [0, along, ...bends.flatMap((bend) => [bend.start, bend.start + bentLength(bend)])]
    .filter((at) => at >= 0 && at <= along)
    .sort((a, b) => a - b);
  const integral = (f: (heading: number) => number): number =>
    breaks.slice(1).reduce((sum, to, index) => sum + gauss((at) => f(headingAt(bends, at)), breaks[index]!, to), 0);
  return {
    x: integral(Math.cos),
    y: integral(Math.sin),
    heading: (headingAt(bends, along) * 180) / Math.PI,
  };
}

function gauss(f: (at: number) => number, from: number, to: number): number {
  const half = (to - from) / PARTS / 2;
  let sum = 0;
  for (let part = 0; part < PARTS; part += 1) {
    const middle = from + (2 * part + 1) * half;
    for (const [node, weight] of GAUSS) sum += weight * half * f(middle + node * half);
  }
  return sum;
}
