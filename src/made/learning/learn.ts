import { readShoes, type ShoeBook } from "../../shop/shoe/shoeBook";
import { InputError, isUserError } from "../../units/errors";
import { show } from "../../units/show";
import { coverage, fitLine, fitProportion, type LineFit } from "./lineFit";
import { readMade } from "../records/madeTable";
import { byShoe, measuredBends, type LearnRanges, type MeasuredBend } from "./measuredBends";

type Cell = string | number;

/** Fewer measured bends than this say nothing. Our choice, no source. */
const FEWEST = 5;
/** Angles that lie within this tell nothing of a slope [°]: then the springback is taken as proportional. */
const LEAST_SPREAD = 15;
/** More scatter than this about the line is not one shoe's springback [°]. Our choice, no source. */
const LARGEST_SCATTER = 1.5;

export const LEARN_HEADERS = [
  ...["Raceway", "Size", "Bends measured", "Model", "Springback at 90", "Plus or minus", "Intercept", "Slope"],
  ...["Scatter", "In use", "Verdict"],
] as const;

/**
 * What the records of measured bends say of each shoe's springback, as a table with a header row: the line of least
 * squares (proportional where all angles are alike), its value at 90° with the limits that hold the true one in 95 of 100
 * cases, and whether the shoe in use lies inside. Too few records, or records that do not fit one line, are refused in the
 * shoe's own row.
 *
 * @throws InputError when a range lacks a needed column
 */
export function learn(made: unknown, ranges: LearnRanges = {}): Cell[][] {
  const shoes = readShoes(ranges.shoes);
  const book = readMade(made);
  const { bends, problems } = measuredBends(book, ranges);
  const told = [...book.problems, ...problems].map((problem): Cell[] => [
    "not read",
    ...LEARN_HEADERS.slice(2).map(() => ""),
    problem,
  ]);
  return [[...LEARN_HEADERS], ...[...byShoe(bends).values()].map((own) => shoeRow(own, shoes)), ...told];
}

function shoeRow(bends: readonly MeasuredBend[], shoes: ShoeBook): Cell[] {
  const { raceway, size } = bends[0]!;
  const answer = shoes.lookUp(raceway, size);
  const inUse = "shoe" in answer ? answer.shoe.springback : undefined;
  const place: Cell[] = [raceway, size, bends.length];
  try {
    const { model, fit } = fitOfShoe(bends, "shoe" in answer ? answer.shoe.dialStart : 0);
    const at90 = fit.at(90);
    const reach = coverage(fit.freedom) * at90.u;
    const line = [model, at90.value, reach, fit.intercept.value, fit.slope.value, fit.scatter];
    return [...place, ...line, inUse ?? "", verdict(inUse, at90.value, reach)];
  } catch (error) {
    if (!isUserError(error)) throw error;
    return [...place, "", "", "", "", "", "", inUse ?? "", error.message];
  }
}

/** @param start reading from which the dial was counted [°] */
function fitOfShoe(bends: readonly MeasuredBend[], start: number): { model: string; fit: LineFit } {
  if (bends.length < FEWEST) {
    throw new InputError(`too few: at least ${FEWEST} measured bends are needed; got ${bends.length}.`);
  }
  const points = bends.map(({ measured: { dial, angle } }) => ({ x: angle, y: dial - start - angle }));
  const sorted = points.map(({ x }) => x).sort((a, b) => a - b);
  const straight = sorted.at(-1)! - sorted[0]! >= LEAST_SPREAD;
  const fit = straight ? fitLine(points) : fitProportion(points);
  if (fit.scatter > LARGEST_SCATTER) {
    throw new InputError(
      `they do not fit one line: a bend lies ${show(fit.scatter, 2)}° from it (one standard deviation); at most ${LARGEST_SCATTER}° is taken.`,
    );
  }
  if (fit.at(90).value < 0) {
    throw new InputError(`the springback at 90° comes out below 0: the dial must be read as the bend is let go.`);
  }
  return { model: straight ? "straight line" : "proportional", fit };
}

function verdict(inUse: number | undefined, value: number, reach: number): string {
  if (inUse === undefined) return "no shoe in use to compare with";
  const away = inUse - value;
  if (Math.abs(away) <= reach) return "the shoe in use lies inside";
  return `the shoe in use is ${show(Math.abs(away), 2)}° too ${away > 0 ? "high" : "low"}: measure it anew`;
}
