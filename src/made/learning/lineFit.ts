import studentT from "./data/studentT.json";

/** A value and its standard uncertainty. */
export interface Uncertain {
  readonly value: number;
  readonly u: number;
}

/** A straight line through points, y = intercept + slope·x, and how far one point lies from it. */
export interface LineFit {
  readonly intercept: Uncertain;
  readonly slope: Uncertain;
  /** Standard deviation of the points from the line. */
  readonly scatter: number;
  /** Points less what the line takes from them. */
  readonly freedom: number;
  /** The line's value at x, with the uncertainty of the line there. */
  at(x: number): Uncertain;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * The line of least squares with equal, unknown scatter of the points (NIST/SEMATECH e-Handbook 4.1.4.1; the textbook
 * formulas). Three points or more, not all at one x.
 */
export function fitLine(points: readonly Point[]): LineFit {
  const count = points.length;
  const [x, y] = [meanOf(points.map((point) => point.x)), meanOf(points.map((point) => point.y))];
  const spread = sumOf(points.map((point) => (point.x - x) ** 2));
  const slope = sumOf(points.map((point) => (point.x - x) * (point.y - y))) / spread;
  const freedom = count - 2;
  const misses = points.map((point) => point.y - y - slope * (point.x - x));
  const scatter = Math.sqrt(sumOf(misses.map((miss) => miss ** 2)) / freedom);
  const at = (wanted: number): Uncertain => ({
    value: y + slope * (wanted - x),
    u: scatter * Math.sqrt(1 / count + (wanted - x) ** 2 / spread),
  });
  return { intercept: at(0), slope: { value: slope, u: scatter / Math.sqrt(spread) }, scatter, freedom, at };
}

/** The line through 0 and least squares: y = slope·x. Two points or more. */
export function fitProportion(points: readonly Point[]): LineFit {
  const squares = sumOf(points.map(({ x }) => x ** 2));
  const slope = sumOf(points.map(({ x, y }) => x * y)) / squares;
  const freedom = points.length - 1;
  const scatter = Math.sqrt(sumOf(points.map(({ x, y }) => (y - slope * x) ** 2)) / freedom);
  const u = scatter / Math.sqrt(squares);
  return {
    ...{ intercept: { value: 0, u: 0 }, slope: { value: slope, u }, scatter, freedom },
    at: (x) => ({ value: slope * x, u: u * Math.abs(x) }),
  };
}

/** How many standard uncertainties hold the true value in 95 of 100 cases. */
export const coverage = (freedom: number): number => studentT.values[Math.min(freedom, studentT.values.length) - 1]!;

export const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
export const meanOf = (values: readonly number[]): number => sumOf(values) / values.length;
